package org.shedboard.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.Properties;
import java.util.regex.Pattern;
import org.postgresql.Driver;

/**
 * Where a PostgreSQL database is, and which of its schemas holds the shop. A password is never a part of it: it would stand in the
 * list of the machine's processes. The driver finds it in PGPASSWORD or in the file of passwords.
 */
record DatabaseUrl(String text, String schema) {
    private static final String USUAL_SCHEMA = "shop";
    private static final String SCHEMA = "currentSchema";
    /** What needs no quotes in SQL; PostgreSQL keeps 63 letters of a name and its own begin with pg_. */
    private static final Pattern PLAIN = Pattern.compile("(?!pg_)[a-z][a-z0-9_]{0,62}");

    private static final Pattern SECRET = Pattern.compile("[?&](ssl)?password=", Pattern.CASE_INSENSITIVE);

    private static final int CONNECT_SECONDS = 10;
    /** No statement of ours takes so long; a server that is silent for longer counts as gone. */
    private static final int SILENT_SECONDS = 120;

    DatabaseUrl {
        if (!PLAIN.matcher(schema).matches()) {
            throw bad("%s cannot name a shop in a database: small letters, digits and _ can".formatted(schema));
        }
    }

    /** Never repeats what it was given, which may hold a password. */
    static DatabaseUrl parse(String text) {
        // read here, for what the driver makes of an address has the password of its own file in it
        if (SECRET.matcher(text).find()) {
            throw bad("a password does not belong in an address; say it in PGPASSWORD or in ~/.pgpass");
        }
        Properties parts = parts(text);
        return new DatabaseUrl(text, parts.getProperty(SCHEMA, USUAL_SCHEMA));
    }

    private static Properties parts(String text) {
        Properties parts =
                text.startsWith("jdbc:postgresql:") && !text.contains("@") ? Driver.parseURL(text, null) : null;
        if (parts == null) {
            throw bad("the address of a database is jdbc:postgresql://HOST/DATABASE?user=USER&currentSchema=SHOP");
        }
        return parts;
    }

    private static StoreFailure bad(String message) {
        return new StoreFailure(StoreFailure.Kind.BAD_ADDRESS, message);
    }

    /** The same database, and another schema of it. */
    DatabaseUrl with(String otherSchema) {
        String others = text.replaceAll("(?<=[?&])" + SCHEMA + "=[^&]*&?", "").replaceAll("[?&]$", "");
        String sign = others.contains("?") ? "&" : "?";
        return new DatabaseUrl(others + sign + SCHEMA + "=" + otherSchema, otherSchema);
    }

    /** Host, database and shop, as a person is told of it. */
    String said() {
        Properties parts = parts(text);
        return "%s/%s, shop %s".formatted(parts.getProperty("PGHOST"), parts.getProperty("PGDBNAME"), schema);
    }

    /** The class is named, for asking the list of drivers would load every one of them whenever any database is opened. */
    Connection connect() throws SQLException {
        Properties settings = new Properties();
        settings.setProperty(SCHEMA, schema);
        settings.setProperty("ApplicationName", "shedboard");
        settings.setProperty("connectTimeout", Integer.toString(CONNECT_SECONDS));
        settings.setProperty("socketTimeout", Integer.toString(SILENT_SECONDS));
        settings.setProperty("tcpKeepAlive", "true");
        settings.setProperty("reWriteBatchedInserts", "true");
        fromEnvironment(settings, "PGUSER", "user");
        fromEnvironment(settings, "PGPASSWORD", "password");
        return new Driver().connect(text, settings);
    }

    private static void fromEnvironment(Properties settings, String variable, String setting) {
        String said = System.getenv(variable);
        if (said != null) {
            settings.setProperty(setting, said);
        }
    }
}
