package org.shedboard.store;

import java.sql.Connection;
import java.sql.SQLException;
import org.h2.api.Trigger;

/**
 * Asked by the database before a setting is changed. Where backups are copied to is said at the machine that makes them, for it is a
 * place among its files: no terminal of another machine may. Public, for the database makes it by its name, which stands in the file.
 */
public final class PlaceStays implements Trigger {
    /** Not one of the database's own states. */
    private static final String STATE = "SB002";

    @Override
    public void fire(Connection connection, Object[] old, Object[] next) throws SQLException {
        if ((names(old) || names(next)) && HoursStay.isTerminal(connection)) {
            throw new SQLException("where backups go is said at the machine that makes them", STATE);
        }
    }

    /** The row is of whatever columns the table has; in one of them stands the name. */
    private static boolean names(Object[] row) {
        if (row != null) {
            for (Object cell : row) {
                if (Store.SECOND_PLACE.equals(cell)) {
                    return true;
                }
            }
        }
        return false;
    }
}
