package org.shedboard.store;

import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.LocalDateTime;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import org.h2.tools.Server;

/** Being the one process that has the file open: brings the schema up to date, serves guests, syncs, and closes all in order. */
final class Ownership implements Link.Tie {
    /** The homes this process owns: within one process the database would let a second owner in. */
    private static final Set<Home> OWN = ConcurrentHashMap.newKeySet();

    private final Home home;
    private final Sql admin;
    private final ChangeWriter changes;
    private final Turns turns = new Turns();
    private final Checkpoints checkpoints;
    private final Server server;
    private final SyncServer syncServer;

    private Ownership(Home home, Sql admin, boolean isNew) throws SQLException, IOException {
        String secret = Notice.newSecret();
        this.home = home;
        this.admin = admin;
        this.changes = ChangeWriter.ready(home, admin, isNew);
        this.checkpoints = Checkpoints.ready(
                admin, new Sql(home.connect(false), Connection.TRANSACTION_READ_COMMITTED), turns, home, changes);
        writeLeftOver();
        this.server = serve(home, secret);
        this.syncServer = SyncServer.start(secret, checkpoints, turns);
        new Notice(server.getPort(), syncServer.port(), secret).post(home);
    }

    /** Changes that were committed and not written to the day's file when all ended. Where that cannot be done, reading goes on. */
    private void writeLeftOver() {
        try {
            checkpoints.await();
        } catch (StoreFailure toldAtTheNextChange) {
            // kept by the checkpoints, which pass it on to whoever wants to be sure of a change
        }
    }

    /** Opens the file; fails as busy when somebody has it. */
    static Link take(Home home, Schema schema, Intent intent) {
        if (!OWN.add(home)) {
            throw new StoreFailure(StoreFailure.Kind.BUSY, "this program has the records open already");
        }
        try {
            return open(home, schema, intent);
        } catch (SQLException problem) {
            OWN.remove(home);
            throw StoreFailure.from(problem).whileOpening();
        } catch (StoreFailure failure) {
            OWN.remove(home);
            throw failure;
        }
    }

    private static Link open(Home home, Schema schema, Intent intent) throws SQLException {
        boolean isNew = !home.hasShop();
        Sql admin = new Migrator(home, schema).open(intent);
        try {
            Connection reading = home.connect(false);
            Connection writing = home.connect(false);
            home.keepToOwner();
            return new Link(
                    new Sql(reading, Connection.TRANSACTION_REPEATABLE_READ),
                    new Sql(writing, Connection.TRANSACTION_READ_COMMITTED),
                    new Ownership(home, admin, isNew),
                    true);
        } catch (SQLException | IOException | RuntimeException problem) {
            StoreFailure failure = asFailure(problem);
            letGo(admin, failure);
            throw failure;
        }
    }

    private static StoreFailure asFailure(Exception problem) {
        if (problem instanceof IOException unusable) {
            return Home.unusable(unusable);
        }
        if (problem instanceof SQLException refused) {
            return StoreFailure.from(refused).whileOpening();
        }
        return problem instanceof StoreFailure failure ? failure.whileOpening() : StoreFailure.damaged(problem);
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
    public <T> T inTurn(Supplier<T> work) {
        return turns.during(work::get);
    }

    @Override
    public Sql another() {
        try {
            return new Sql(home.connect(false), Connection.TRANSACTION_REPEATABLE_READ);
        } catch (SQLException problem) {
            throw StoreFailure.from(problem);
        }
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
            changes.close();
            shutDown();
        } catch (IOException problem) {
            throw StoreFailure.from(problem);
        } finally {
            home.keepToOwner();
            OWN.remove(home);
        }
    }

    private void shutDown() {
        try {
            if (home.isToCompact()) {
                forgetChanges();
                admin.run("SHUTDOWN COMPACT");
                home.unmarkToCompact();
            } else {
                admin.run("SHUTDOWN");
            }
        } catch (StoreFailure failure) {
            if (!failure.is(StoreFailure.Kind.BROKEN)) {
                letGo(admin, failure);
                throw failure;
            }
        }
    }

    /** What was erased from the records stands in the files of changes still; a backup makes up for them before they go. */
    private void forgetChanges() {
        ChangeFiles files = new ChangeFiles(home);
        if (!files.files().isEmpty()) {
            home.createBackups();
            try (Sql sql = another()) {
                BackupFile.make(sql, home, home.backups(), LocalDateTime.now(sql.inOne(ChangeFiles::zone)));
            }
            files.dropAll();
        }
        admin.inOne(sql -> {
            changes.dropAllWritten(sql);
            return null;
        });
    }

    /** Lets the file go without writing to it, when it could not be closed in order. */
    private static void letGo(Sql admin, StoreFailure reason) {
        try {
            admin.run("SHUTDOWN IMMEDIATELY");
        } catch (StoreFailure failure) {
            reason.addSuppressed(failure);
        }
    }
}
