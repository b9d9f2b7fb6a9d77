package org.shedboard.store;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.SQLException;

/** Working through the process that has the file open: the database over loopback, and a word with the owner for each sync. */
final class Guest implements Link.Tie {
    private static final int GREETING_MILLIS = 2000;
    /** How long the owner may be silent before it counts as gone; longer than anybody waits for a lock. */
    private static final int SILENT_MILLIS = 20_000;

    private static final String SETTINGS = ";IFEXISTS=TRUE;LOCK_TIMEOUT=10000;NETWORK_TIMEOUT=" + SILENT_MILLIS;

    private final Socket socket;
    private final BufferedReader in;

    private Guest(Socket socket) throws IOException {
        this.socket = socket;
        this.in = new BufferedReader(new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8));
    }

    /** Connects to the owner that put up this notice; fails as broken when nobody, or somebody else, answers. */
    static Link join(Notice notice, Schema schema) {
        Guest guest = greet(notice);
        try {
            Sql reading = connect(notice, Connection.TRANSACTION_REPEATABLE_READ);
            return guest.link(reading, notice, schema);
        } catch (StoreFailure failure) {
            guest.close();
            throw failure;
        }
    }

    private Link link(Sql reading, Notice notice, Schema schema) {
        try {
            expectSameSchema(reading, schema);
            return new Link(reading, connect(notice, Connection.TRANSACTION_READ_COMMITTED), this, false);
        } catch (StoreFailure failure) {
            reading.close();
            throw failure;
        }
    }

    /** Talking to the sync port first makes sure that the owner of the notice is there before the database is asked. */
    private static Guest greet(Notice notice) {
        Socket socket = new Socket();
        try {
            socket.connect(new InetSocketAddress(SyncServer.loopback(), notice.syncPort()), GREETING_MILLIS);
            socket.setSoTimeout(GREETING_MILLIS);
            socket.setTcpNoDelay(true);
            Guest guest = new Guest(socket);
            if (!SyncServer.GREETING.equals(guest.ask(notice.secret()))) {
                throw new IOException("somebody else answers");
            }
            socket.setSoTimeout(SILENT_MILLIS);
            return guest;
        } catch (IOException problem) {
            close(socket);
            throw broken(problem);
        }
    }

    private static Sql connect(Notice notice, int isolation) {
        String url =
                "jdbc:h2:tcp://127.0.0.1:%s/%s%s".formatted(Integer.toString(notice.port()), notice.secret(), SETTINGS);
        try {
            return new Sql(Home.connect(url, Ownership.GUEST, Ownership.GUEST), isolation);
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
