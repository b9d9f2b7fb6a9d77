package org.shedboard.store;

import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;

/** The way on the same machine, by what the notice in the home says. */
record Loopback(Notice notice) implements Way {
    private static final int CONNECT_MILLIS = 2000;

    @Override
    public Socket line() throws IOException {
        Socket socket = to(notice.syncPort());
        socket.getOutputStream().write((notice.secret() + "\n").getBytes(StandardCharsets.UTF_8));
        return socket;
    }

    /** A connection on which nothing is said yet to where the database answers. */
    Socket toDatabase() throws IOException {
        return to(notice.port());
    }

    private static Socket to(int port) throws IOException {
        Socket socket = new Socket();
        try {
            socket.connect(new InetSocketAddress(SyncServer.loopback(), port), CONNECT_MILLIS);
            socket.setTcpNoDelay(true);
            return socket;
        } catch (IOException problem) {
            socket.close();
            throw problem;
        }
    }

    @Override
    public Connection database() throws SQLException {
        String url = Guest.url(notice.port(), notice.secret());
        return DriverManager.getConnection(url, Rights.GUEST, Rights.GUEST);
    }
}
