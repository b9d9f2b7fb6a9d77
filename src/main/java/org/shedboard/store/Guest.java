package org.shedboard.store;

import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.function.Supplier;
import org.shedboard.wire.WireFailure;

/** Working through the process that has the file open: the database as a guest, and a word with the owner for each turn and sync. */
final class Guest implements Link.Tie {
    static final String LOCK_MILLIS = "10000";

    private static final String SETTINGS =
            ";IFEXISTS=TRUE;LOCK_TIMEOUT=" + LOCK_MILLIS + ";NETWORK_TIMEOUT=" + SyncLine.SILENT_MILLIS;

    private final Way way;
    private final SyncLine sync;
    private final TurnLine turns;

    private Guest(Way way, SyncLine sync) {
        this.way = way;
        this.sync = sync;
        this.turns = new TurnLine(way);
    }

    /** Where the driver finds a database of this name on this machine. */
    static String url(int port, String database) {
        return "jdbc:h2:tcp://127.0.0.1:%s/%s%s".formatted(Integer.toString(port), database, SETTINGS);
    }

    /** Connects to the owner; fails as broken when nobody, or somebody else, answers. */
    static Link join(Way way, Schema schema) {
        Guest guest = greet(way);
        try {
            Sql reading = connect(way, Connection.TRANSACTION_REPEATABLE_READ);
            return guest.link(reading, way, schema);
        } catch (RuntimeException failure) {
            guest.close();
            throw failure;
        }
    }

    private Link link(Sql reading, Way way, Schema schema) {
        try {
            expectSameSchema(reading, schema);
            return new Link(reading, connect(way, Connection.TRANSACTION_READ_COMMITTED), this, false);
        } catch (RuntimeException failure) {
            reading.close();
            throw failure;
        }
    }

    /** Talking to whoever syncs first makes sure that the owner is there before the database is asked. */
    private static Guest greet(Way way) {
        try {
            return new Guest(way, SyncLine.open(way));
        } catch (IOException problem) {
            throw broken(problem);
        }
    }

    private static Sql connect(Way way, int isolation) {
        try {
            return new Sql(way.database(), isolation);
        } catch (SQLException problem) {
            throw StoreFailure.from(problem);
        }
    }

    private static void expectSameSchema(Sql reading, Schema schema) {
        if (!reading.inOne(schema::missing).isEmpty()) {
            throw new StoreFailure(
                    StoreFailure.Kind.UNREACHABLE,
                    "an older program has this shop open; close it there, then start this one again");
        }
    }

    @Override
    public void sync() {
        try {
            String answer = sync.ask(SyncServer.ASK);
            if (!SyncServer.DONE.equals(answer)) {
                throw new StoreFailure(
                        StoreFailure.Kind.valueOf(answer), "the change was made but could not be made safe");
            }
        } catch (IOException problem) {
            throw broken(problem);
        }
    }

    @Override
    public <T> T inTurn(Supplier<T> work) {
        try {
            return turns.during(work);
        } catch (IOException problem) {
            throw broken(problem);
        } catch (WireFailure problem) {
            throw afterJoining(problem);
        }
    }

    @Override
    public Sql another() {
        try {
            return connect(way, Connection.TRANSACTION_REPEATABLE_READ);
        } catch (WireFailure problem) {
            throw afterJoining(problem);
        }
    }

    /** A server that answered before and does not now is waited for like any owner that goes. */
    private static StoreFailure afterJoining(WireFailure problem) {
        return problem.kind() == WireFailure.Kind.UNREACHABLE ? broken(problem) : ServerDoor.asFailure(problem);
    }

    private static StoreFailure broken(Exception problem) {
        return new StoreFailure(StoreFailure.Kind.BROKEN, "the program that has the records open has gone", problem);
    }

    @Override
    public void close() {
        turns.close();
        try {
            sync.close();
        } catch (IOException problem) {
            throw broken(problem);
        }
    }
}
