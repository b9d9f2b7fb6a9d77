package org.shedboard.store;

import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.h2.tools.Server;

/** Being the one process that has the file open: brings the schema up to date, serves guests, syncs, and closes all in order. */
final class Ownership implements Link.Tie {
    /** Name and password of the user guests work as. Neither protects anything; the secret in the notice does. */
    static final String GUEST = "terminal";

    /** The homes this process owns: within one process the database would let a second owner in. */
    private static final Set<Home> OWN = ConcurrentHashMap.newKeySet();

    private final Home home;
    private final Sql admin;
    private final Checkpoints checkpoints;
    private final Server server;
    private final SyncServer syncServer;

    private Ownership(Home home, Sql admin) throws SQLException, IOException {
        String secret = Notice.newSecret();
        this.home = home;
        this.admin = admin;
        this.checkpoints = Checkpoints.ready(admin);
        this.server = serve(home, secret);
        this.syncServer = SyncServer.start(secret, checkpoints);
        new Notice(server.getPort(), syncServer.port(), secret).post(home);
    }

    /** Opens the file; fails as busy when somebody has it. */
    static Link take(Home home, Schema schema, boolean mayMake) {
        if (!OWN.add(home)) {
            throw new StoreFailure(StoreFailure.Kind.BUSY, "this program has the records open already");
        }
        try {
            return open(home, schema, mayMake);
        } catch (SQLException problem) {
            OWN.remove(home);
            throw StoreFailure.from(problem);
        } catch (StoreFailure failure) {
            OWN.remove(home);
            throw failure;
        }
    }

    private static Link open(Home home, Schema schema, boolean mayMake) throws SQLException {
        Sql admin = new Migrator(home, schema).open(mayMake);
        try {
            Connection reading = home.connect(false);
            Connection writing = home.connect(false);
            home.keepToOwner();
            return new Link(
                    new Sql(reading, Connection.TRANSACTION_REPEATABLE_READ),
                    new Sql(writing, Connection.TRANSACTION_READ_COMMITTED),
                    new Ownership(home, admin),
                    true);
        } catch (SQLException | IOException | StoreFailure problem) {
            admin.run("SHUTDOWN");
            throw asFailure(problem);
        }
    }

    private static StoreFailure asFailure(Exception problem) {
        if (problem instanceof IOException unusable) {
            return Home.unusable(unusable);
        }
        return problem instanceof SQLException refused ? StoreFailure.from(refused) : (StoreFailure) problem;
    }

    /** On loopback only, and only this database, which answers to the secret for a name. */
    private static Server serve(Home home, String secret) throws SQLException {
        return Server.createTcpServer(
                        "-tcpPort",
                        "0",
                        "-tcpDaemon",
                        "-baseDir",
                        home.directory().toString(),
                        "-ifExists",
                        "-key",
                        secret,
                        home.database())
                .start();
    }

    @Override
    public void sync() {
        checkpoints.await();
    }

    @Override
    public void close() {
        Undisturbed.run("closing the records", this::closeInOrder);
    }

    private void closeInOrder() {
        Notice.takeDown(home);
        syncServer.close();
        server.stop();
        try {
            shutDown();
        } finally {
            home.keepToOwner();
            OWN.remove(home);
        }
    }

    private void shutDown() {
        try {
            if (home.isToCompact()) {
                admin.run("SHUTDOWN COMPACT");
                home.unmarkToCompact();
            } else {
                admin.run("SHUTDOWN");
            }
        } catch (StoreFailure failure) {
            if (!failure.is(StoreFailure.Kind.BROKEN)) {
                letGo(failure);
                throw failure;
            }
        }
    }

    /** Lets the file go without writing to it, when it could not be closed in order. */
    private void letGo(StoreFailure reason) {
        try {
            admin.run("SHUTDOWN IMMEDIATELY");
        } catch (StoreFailure failure) {
            reason.addSuppressed(failure);
        }
    }
}
