package org.shedboard.store;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;

/**
 * Every table of a shop written anew: what was erased from it stands in its file until then. While a table is written anyone else who
 * wants it waits.
 */
final class DatabaseRewriting {
    private final DatabaseUrl url;

    DatabaseRewriting(DatabaseUrl url) {
        this.url = url;
    }

    /** On a connection of its own, for it cannot be a part of a transaction. */
    void run() {
        try (Connection connection = url.connect();
                Statement statement = connection.createStatement()) {
            statement.execute("SET lock_timeout TO '10s'");
            for (String table : tables(statement)) {
                statement.execute("VACUUM (FULL) " + table);
            }
        } catch (SQLException problem) {
            throw StoreFailure.from(problem);
        }
    }

    private List<String> tables(Statement statement) throws SQLException {
        List<String> tables = new ArrayList<>();
        try (ResultSet rows =
                statement.executeQuery("SELECT tablename FROM pg_tables WHERE schemaname = current_schema()")) {
            while (rows.next()) {
                tables.add(rows.getString(1));
            }
        }
        return tables;
    }
}
