package org.shedboard.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;

/** Being the one process that has the file open: brings the schema up to date, syncs, and closes it in order. */
final class Ownership implements Link.Tie {
    private final Sql admin;
    private final Checkpoints checkpoints;

    private Ownership(Sql admin) {
        this.admin = admin;
        this.checkpoints = new Checkpoints(admin);
    }

    /** Opens the file; fails as busy when another process has it. */
    static Link take(Home home, Schema schema, boolean mayMake) {
        try {
            Sql admin = sqlOf(home.connect(mayMake));
            bringUp(admin, home, schema);
            return new Link(
                    sqlFor(home.connect(false), Connection.TRANSACTION_REPEATABLE_READ),
                    sqlOf(home.connect(false)),
                    new Ownership(admin),
                    true);
        } catch (SQLException problem) {
            throw StoreFailure.from(problem);
        }
    }

    private static Sql sqlOf(Connection connection) {
        return sqlFor(connection, Connection.TRANSACTION_READ_COMMITTED);
    }

    private static Sql sqlFor(Connection connection, int isolation) {
        return new Sql(connection, isolation);
    }

    private static void bringUp(Sql admin, Home home, Schema schema) {
        List<Migration> missing;
        try {
            missing = admin.inOne(schema::missing);
        } catch (StoreFailure failure) {
            admin.run("SHUTDOWN IMMEDIATELY");
            throw failure;
        }
        missing.forEach(migration -> schema.apply(admin, migration));
        if (!missing.isEmpty()) {
            admin.run("CHECKPOINT SYNC");
        }
    }

    @Override
    public void sync() {
        checkpoints.await();
    }

    @Override
    public void close() {
        admin.run("SHUTDOWN");
    }
}
