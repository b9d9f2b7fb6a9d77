package org.shedboard.testing;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.UUID;
import org.shedboard.store.Address;

/**
 * Where a test has its records: in a file in its own directory or, where the tests run with {@code shedboard.db=postgresql}, in a
 * schema of its own on a real PostgreSQL, which is made when the records are.
 */
public final class Records {
    private static final boolean ON_POSTGRES = "postgresql".equals(System.getProperty("shedboard.db"));

    private Records() {}

    /** The address of the shop that this directory stands for; another directory is another shop. */
    public static Address at(Path home) {
        if (!ON_POSTGRES) {
            return new Address.InHome(home);
        }
        PostgresServer.demand();
        return onPostgres(home);
    }

    public static Address.AtDatabase onPostgres(Path home) {
        UUID name = UUID.nameUUIDFromBytes(home.toString().getBytes(StandardCharsets.UTF_8));
        String schema = "t" + name.toString().replace("-", "");
        return new Address.AtDatabase(home, PostgresServer.url() + "&currentSchema=" + schema);
    }

    /** What a counted main is told: a directory, the address of a database, or {@code postgresql} for one made for the occasion. */
    public static Address named(String argument) {
        if (argument.equals("postgresql")) {
            return new Address.AtDatabase(Path.of("."), PostgresServer.urlOfNew());
        }
        return argument.startsWith("jdbc:")
                ? new Address.AtDatabase(Path.of("."), argument)
                : new Address.InHome(Path.of(argument));
    }
}
