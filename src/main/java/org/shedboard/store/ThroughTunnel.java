package org.shedboard.store;

import java.io.DataInputStream;
import java.io.IOException;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import org.shedboard.wire.Splice;
import org.shedboard.wire.Tunnel;

/** The way through a server's tunnel. The database's driver knows nothing of it: it speaks to a door of this process on loopback. */
record ThroughTunnel(Tunnel tunnel) implements Way {
    /** What a terminal can want of a server. */
    static final String RECORDS = "records";

    static final String SYNC = "sync";

    private static final int DRIVER_MILLIS = 5000;

    @Override
    public Socket line() {
        return tunnel.open(SYNC);
    }

    /** The door is open for one connection, and only for the one that knows what it is called. */
    @Override
    public Connection database() throws SQLException {
        Socket server = tunnel.open(RECORDS);
        String name = Notice.newSecret();
        try (ServerSocket door = new ServerSocket(0, 1, SyncServer.loopback())) {
            door.setSoTimeout(DRIVER_MILLIS);
            Thread porter = new Thread(() -> letDriverIn(door, name, server), "porter");
            porter.setDaemon(true);
            porter.start();
            return DriverManager.getConnection(Guest.url(door.getLocalPort(), name), Rights.TERMINAL, "");
        } catch (IOException problem) {
            Splice.close(server);
            throw new SQLException("no way to the tunnel", "08000", problem);
        } catch (SQLException problem) {
            Splice.close(server);
            throw problem;
        }
    }

    private static void letDriverIn(ServerSocket door, String name, Socket server) {
        boolean isIn = false;
        try {
            while (!isIn) {
                isIn = tryLetIn(door.accept(), name, server);
            }
        } catch (IOException nobody) {
            Splice.close(server);
        }
    }

    private static boolean tryLetIn(Socket driver, String name, Socket server) throws IOException {
        try {
            driver.setTcpNoDelay(true);
            driver.setSoTimeout(DRIVER_MILLIS);
            Knock knock = Knock.read(new DataInputStream(driver.getInputStream()));
            driver.setSoTimeout(0);
            if (MessageDigest.isEqual(bytes(name), bytes(knock.database()))) {
                server.getOutputStream().write(knock.as(Rights.TERMINAL, RECORDS));
                Splice.start(driver, server);
                return true;
            }
        } catch (IOException stranger) {
            // somebody else of this machine, who is not spoken to
        }
        Splice.close(driver);
        return false;
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
