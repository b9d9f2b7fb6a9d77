package org.shedboard.store;

import java.sql.Connection;
import java.util.List;
import java.util.Map;

/**
 * A shop being taken over into a schema of a PostgreSQL database that has none. All of it is read as it is at one moment, while
 * nobody can change it, written in one transaction, and compared there before that is committed: what fails leaves nothing. Where
 * it comes from nothing is changed.
 */
final class Moving {
    /** While one database is at work for minutes, the other is not to take its silent guest for one that is gone. */
    private static final String PATIENT = "SET LOCAL idle_in_transaction_session_timeout TO 0";

    private final Schema schema = new Schema(Migration.all());
    private final DatabaseUrl url;

    Moving(DatabaseUrl url) {
        this.url = url;
    }

    List<Moved> from(Address address) {
        Link source = Door.to(address, schema, Intent.LOOK).enter();
        try (Sql target = DatabaseDoor.open(url, Connection.TRANSACTION_READ_COMMITTED)) {
            return source.write(held -> source.read(still -> {
                if (address instanceof Address.AtDatabase) {
                    List.of(held, still).forEach(sql -> sql.run(PATIENT));
                }
                return target.inOne(sql -> take(still, sql));
            }));
        } finally {
            source.close();
        }
    }

    private List<Moved> take(Sql still, Sql target) {
        target.run(PATIENT);
        DatabaseDoor.expectSafe(target, url);
        new DatabaseSteps(url, schema).make(target);
        Tables tables = Tables.of(still);
        tables.copy(still, target);
        tables.goOnNumbering(target);
        return compare(tables.digests(still), Tables.of(target).digests(target));
    }

    private static List<Moved> compare(Map<String, String> were, Map<String, String> are) {
        were.forEach((table, digest) -> {
            if (!digest.equals(are.get(table))) {
                throw new StoreFailure(
                        StoreFailure.Kind.DAMAGED,
                        "the table %s did not arrive as it was; nothing was taken over".formatted(table));
            }
        });
        return were.entrySet().stream()
                .map(each -> moved(each.getKey(), each.getValue()))
                .toList();
    }

    private static Moved moved(String table, String digest) {
        String[] parts = digest.split(":");
        return new Moved(table, Long.parseLong(parts[0]), parts[1]);
    }
}
