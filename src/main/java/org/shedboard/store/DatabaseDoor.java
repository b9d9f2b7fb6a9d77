package org.shedboard.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * The way in to a shop's schema in a PostgreSQL database. Every terminal connects by itself: nobody owns anything, and a commit is
 * durable when the server says that it is made.
 */
final class DatabaseDoor implements Door, Link.Tie {
    private static final long PATIENCE_NANOS = TimeUnit.SECONDS.toNanos(10);
    private static final int PAUSE_MILLIS = 200;

    /**
     * Whoever changes something may have to wait for an import to finish. A terminal that loses its network in the middle of a change
     * would hold everybody's lock for hours, until the server noticed. A server may leave it to its users whether a commit waits
     * for the disk; ours does.
     */
    private static final String SETTINGS = """
            SELECT set_config('lock_timeout', '10s', false), set_config('idle_in_transaction_session_timeout', '60s', false),
            CASE current_setting('synchronous_commit') WHEN 'off' THEN set_config('synchronous_commit', 'on', false) END""";

    private static final Map<String, String> REQUIREMENTS = Map.of(
            "SELECT 1 WHERE CAST(current_setting('server_version_num') AS INTEGER) >= 150000",
            "the database at %s is older than PostgreSQL 15",
            "SELECT 1 WHERE current_setting('fsync') = 'on'",
            "the database at %s does not force what it saves to its disk (fsync is off) and would lose changes",
            "SELECT 1 WHERE current_setting('server_encoding') = 'UTF8'",
            "the database at %s cannot hold every letter; make one with ENCODING 'UTF8'");

    private final DatabaseUrl url;
    private final DatabaseSteps steps;
    private Intent intent;
    /** Whoever was in once waits for a server that starts again; whoever never was hears at once that there is none. */
    private boolean wasIn;

    private boolean isToCompact;

    private DatabaseDoor(DatabaseUrl url, DatabaseSteps steps, Intent intent) {
        this.url = url;
        this.steps = steps;
        this.intent = intent;
    }

    static DatabaseDoor to(DatabaseUrl url, Schema schema, Intent intent) {
        return new DatabaseDoor(url, new DatabaseSteps(url, schema), intent);
    }

    @Override
    public Link enter() {
        return enter(0);
    }

    /** Waits for a server that starts again, once this terminal has been in. */
    @Override
    public Link enterPatiently() {
        return enter(wasIn ? PATIENCE_NANOS : 0);
    }

    private Link enter(long patience) {
        long until = System.nanoTime() + patience;
        while (true) {
            try {
                Link link = connect();
                wasIn = true;
                intent = intent.again();
                return link;
            } catch (StoreFailure failure) {
                expectWorthWaiting(failure, until);
            }
        }
    }

    private void expectWorthWaiting(StoreFailure failure, long until) {
        if (!failure.is(StoreFailure.Kind.BROKEN)) {
            throw failure;
        }
        if (System.nanoTime() >= until) {
            throw new StoreFailure(
                    StoreFailure.Kind.UNREACHABLE,
                    "the database at %s does not answer; see whether it runs and can be reached from here"
                            .formatted(url.said()),
                    failure);
        }
        Door.pause(PAUSE_MILLIS);
    }

    private Link connect() {
        Sql writing = open(url, Connection.TRANSACTION_READ_COMMITTED);
        try {
            writing.inOne(one -> {
                expectSafe(one, url);
                return null;
            });
            steps.take(writing, intent);
            return new Link(open(url, Connection.TRANSACTION_REPEATABLE_READ), writing, this, false);
        } catch (StoreFailure failure) {
            writing.close();
            throw failure;
        }
    }

    static Sql open(DatabaseUrl url, int isolation) {
        try {
            Sql sql = new Sql(url.connect(), isolation);
            sql.inOne(one -> {
                one.run(SETTINGS);
                return null;
            });
            return sql;
        } catch (SQLException problem) {
            throw StoreFailure.from(problem);
        }
    }

    /** What a server has to be so that what is saved there is safe, and comes back as it was. */
    static void expectSafe(Sql sql, DatabaseUrl url) {
        REQUIREMENTS.forEach((question, complaint) -> {
            if (sql.findNumber(question).isEmpty()) {
                throw new StoreFailure(StoreFailure.Kind.UNSAFE, complaint.formatted(url.said()));
            }
        });
    }

    @Override
    public void compactWhenClosed() {
        isToCompact = true;
    }

    /** There is no owner of a file to write them down. */
    @Override
    public boolean keepsChangeLines() {
        return false;
    }

    @Override
    public Sql another() {
        return open(url, Connection.TRANSACTION_REPEATABLE_READ);
    }

    /** Nothing: the commit has waited for the server's disk. */
    @Override
    public void sync() {}

    @Override
    public void close() {
        if (isToCompact) {
            new DatabaseRewriting(url).run();
            isToCompact = false;
        }
    }
}
