package org.shedboard.store;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.SQLException;

/** Working through the process that has the file open: the database as a guest, and a word with the owner for each sync. */
final class Guest implements Link.Tie {
    private static final int GREETING_MILLIS = 2000;
    /** How long the owner may be silent before it counts as gone; longer than anybody waits for a lock. */
    private static final int SILENT_MILLIS = 20_000;

    static final String LOCK_MILLIS = "10000";

    private static final String SETTINGS =
            ";IFEXISTS=TRUE;LOCK_TIMEOUT=" + LOCK_MILLIS + ";NETWORK_TIMEOUT=" + SILENT_MILLIS;

    private final Way way;
    private final Socket socket;
    private final BufferedReader in;

    private Guest(Way way, Socket socket) throws IOException {
        this.way = way;
        this.socket = socket;
        this.in = new BufferedReader(new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8));
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
            return greet(way, way.line());
        } catch (IOException problem) {
            throw broken(problem);
        }
    }

    private static Guest greet(Way way, Socket socket) throws IOException {
        try {
            socket.setSoTimeout(GREETING_MILLIS);
            Guest guest = new Guest(way, socket);
            if (!SyncServer.GREETING.equals(guest.answer())) {
                throw new IOException("somebody else answers");
            }
            socket.setSoTimeout(SILENT_MILLIS);
            return guest;
        } catch (IOException problem) {
            close(socket);
            throw problem;
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

    private synchronized String ask(String line) throws IOException {
        socket.getOutputStream().write((line + "\n").getBytes(StandardCharsets.UTF_8));
        return answer();
    }

    private String answer() throws IOException {
        String answer = in.readLine();
        if (answer == null) {
            throw new IOException("the owner has left");
        }
        return answer;
    }

    @Override
    public void sync() {
        try {
            String answer = ask(SyncServer.ASK);
            if (!SyncServer.DONE.equals(answer)) {
                throw new StoreFailure(
                        StoreFailure.Kind.valueOf(answer), "the change was made but could not be made safe");
            }
        } catch (IOException problem) {
            throw broken(problem);
        }
    }

    @Override
    public Sql another() {
        return connect(way, Connection.TRANSACTION_REPEATABLE_READ);
    }

    private static StoreFailure broken(IOException problem) {
        return new StoreFailure(StoreFailure.Kind.BROKEN, "the program that has the records open has gone", problem);
    }

    @Override
    public void close() {
        close(socket);
    }

    private static void close(Socket socket) {
        try {
            socket.close();
        } catch (IOException problem) {
            throw broken(problem);
        }
    }
}
