package org.shedboard.store;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import org.h2.api.Trigger;

/**
 * Asked by the database before a clock entry is changed. Whoever works as a terminal of another machine may say when one that still runs
 * has ended, and nothing else. Public, for the database makes it by its name, which stands in the file.
 */
public final class HoursStay implements Trigger {
    /** Not one of the database's own states. */
    private static final String STATE = "SB001";

    private int ended;

    @Override
    public void init(Connection connection, String schema, String trigger, String table, boolean before, int type)
            throws SQLException {
        try (ResultSet columns = connection.getMetaData().getColumns(null, schema, table, "TO_AT")) {
            columns.next();
            ended = columns.getInt("ORDINAL_POSITION") - 1;
        }
    }

    @Override
    public void fire(Connection connection, Object[] old, Object[] next) throws SQLException {
        Object[] wanted = old.clone();
        wanted[ended] = next[ended];
        boolean onlyEnds = old[ended] == null && Arrays.equals(wanted, next);
        if (!onlyEnds && isTerminal(connection)) {
            throw new SQLException(
                    "hours that have ended are not changed, but corrected by an entry of their own", STATE);
        }
    }

    private static boolean isTerminal(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet user = statement.executeQuery("SELECT CURRENT_USER")) {
            user.next();
            return user.getString(1).equalsIgnoreCase(Rights.TERMINAL);
        }
    }
}
