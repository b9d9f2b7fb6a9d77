package org.shedboard.store;

import java.util.List;

/**
 * What the database lets its users do. Guests of this machine work for the same person as the owner of the file and may change whatever
 * they like. Terminals of other machines get no more than their work needs: none of them owns a schema or administers anything, what
 * was done and when they may add to but not change, and an hour that has ended stays as it is.
 */
final class Rights {
    /** Name and password of the user that guests of this machine work as. Neither protects anything; the secret in the notice does. */
    static final String GUEST = "guest";

    /** The same for terminals of other machines, as whom only the server's own end of a tunnel can connect. */
    static final String TERMINAL = "terminal";

    private static final String JOURNAL = "JOURNAL";
    private static final String HOURS = "CLOCK_ENTRY";
    private static final String HISTORY = "SCHEMA_HISTORY";
    /** Changes on their way to the day's file; the owner of the file takes them away. */
    private static final String CHANGES = "CHANGE_LINE";

    private Rights() {}

    /** Gives each user what is theirs on all tables there are; run again it leaves the same. */
    static void grant(Sql sql) {
        make(sql, GUEST);
        make(sql, TERMINAL);
        sql.run("GRANT SELECT, INSERT, UPDATE, DELETE ON SCHEMA PUBLIC TO " + GUEST);
        sql.run("REVOKE ALL ON SCHEMA PUBLIC FROM " + TERMINAL);
        for (String table : tables(sql)) {
            sql.run("REVOKE ALL ON %s FROM %s".formatted(table, TERMINAL));
            sql.run("GRANT %s ON %s TO %s".formatted(ofTerminal(table), table, TERMINAL));
        }
        sql.run("CREATE TRIGGER IF NOT EXISTS clock_entry_stays BEFORE UPDATE ON clock_entry FOR EACH ROW CALL \"%s\""
                .formatted(HoursStay.class.getName()));
    }

    private static void make(Sql sql, String user) {
        sql.run("CREATE USER IF NOT EXISTS %1$s PASSWORD '%1$s'".formatted(user));
    }

    /** Ending an hour that runs is the one thing about hours that is changed; {@link HoursStay} sees to it that nothing else is. */
    private static String ofTerminal(String table) {
        return switch (table) {
            case HISTORY -> "SELECT";
            case JOURNAL, CHANGES -> "SELECT, INSERT";
            case HOURS -> "SELECT, INSERT, UPDATE";
            default -> "SELECT, INSERT, UPDATE, DELETE";
        };
    }

    private static List<String> tables(Sql sql) {
        return sql.texts("""
                SELECT table_name FROM information_schema.tables
                WHERE table_schema = 'PUBLIC' AND table_type = 'BASE TABLE'
                ORDER BY table_name""");
    }
}
