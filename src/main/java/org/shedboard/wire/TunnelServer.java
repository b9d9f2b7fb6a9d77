package org.shedboard.wire;

import java.io.DataInputStream;
import java.io.IOException;
import java.io.UTFDataFormatException;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.time.Duration;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Semaphore;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLSocket;
import javax.net.ssl.SSLSocketFactory;

/**
 * The server's end of the tunnels. Whoever comes has to speak TLS, then say the name and the password; only then is anything behind it
 * so much as told that somebody is there.
 */
public final class TunnelServer implements AutoCloseable {
    /** So many at a time may be on their way in; others are turned away until one of them is in, or gone. */
    private static final int STRANGERS = 20;

    private static final int WAITING = 50;
    private static final int PATIENCE_MILLIS = 10_000;

    private final ServerSocket door;
    private final SSLSocketFactory secure;
    private final Password password;
    private final Inside inside;
    private final Pause pause;
    private final Guesses guesses = new Guesses();
    private final Semaphore strangers = new Semaphore(STRANGERS);
    private final Set<Socket> connections = ConcurrentHashMap.newKeySet();

    /** What lies behind the server. */
    public interface Inside {
        /**
         * A connection to what is wanted, to carry the terminal's bytes to from here on.
         *
         * @param kind as the terminal named it
         * @param terminal what it says, as far as that has to be known for it
         * @throws IOException when there is no such thing, or the terminal does not say what it should
         */
        Socket connect(String kind, DataInputStream terminal) throws IOException;
    }

    /** Lets time go by. */
    interface Pause {
        void of(Duration duration) throws InterruptedException;
    }

    private TunnelServer(ServerSocket door, SSLContext context, Password password, Inside inside, Pause pause) {
        this.door = door;
        this.secure = context.getSocketFactory();
        this.password = password;
        this.inside = inside;
        this.pause = pause;
    }

    /** Listens there; port 0 is any that is free. */
    public static TunnelServer start(InetSocketAddress where, ShopKey key, Password password, Inside inside)
            throws IOException {
        return start(where, key, password, inside, duration -> Thread.sleep(duration.toMillis()));
    }

    static TunnelServer start(InetSocketAddress where, ShopKey key, Password password, Inside inside, Pause pause)
            throws IOException {
        ServerSocket door = new ServerSocket();
        try {
            door.setReuseAddress(true);
            door.bind(where, WAITING);
        } catch (IOException taken) {
            door.close();
            throw taken;
        }
        TunnelServer server = new TunnelServer(door, key.context(), password, inside, pause);
        Splice.run("door", server::accept);
        return server;
    }

    public InetSocketAddress address() {
        return (InetSocketAddress) door.getLocalSocketAddress();
    }

    private void accept() {
        while (!door.isClosed()) {
            try {
                Socket plain = door.accept();
                connections.add(plain);
                // a door that is being closed may let one more in
                if (!door.isClosed() && strangers.tryAcquire()) {
                    Splice.run("stranger", () -> meet(plain));
                } else {
                    leave(plain);
                }
            } catch (IOException closed) {
                // closing the door ends the loop; a stranger who left at once does not
            }
        }
    }

    private void meet(Socket plain) {
        try {
            plain.setSoTimeout(PATIENCE_MILLIS);
            plain.setTcpNoDelay(true);
            plain.setKeepAlive(true);
            letIn(plain, (SSLSocket) secure.createSocket(plain, null, true));
        } catch (IOException gone) {
            leave(plain);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            leave(plain);
        } finally {
            strangers.release();
        }
    }

    private void letIn(Socket plain, SSLSocket terminal) throws IOException, InterruptedException {
        terminal.setUseClientMode(false);
        DataInputStream in = new DataInputStream(terminal.getInputStream());
        if (!Tunnel.GREETING.equals(in.readUTF())) {
            throw new UTFDataFormatException("not one of ours");
        }
        Credentials said = new Credentials(in.readUTF(), in.readUTF());
        String kind = in.readUTF();
        if (!password.isThatOf(said)) {
            pause.of(guesses.wrongFrom(plain.getInetAddress()));
            terminal.getOutputStream().write(0);
            leave(plain);
            return;
        }
        guesses.rightFrom(plain.getInetAddress());
        terminal.getOutputStream().write(Tunnel.LET_IN);
        carry(plain, terminal, inside.connect(kind, in));
    }

    private void carry(Socket plain, SSLSocket terminal, Socket target) throws IOException {
        terminal.setSoTimeout(0);
        connections.add(target);
        Splice.start(terminal, target, () -> leave(plain, target));
        if (door.isClosed()) {
            leave(plain, target);
        }
    }

    private void leave(Socket... ended) {
        for (Socket socket : ended) {
            connections.remove(socket);
            Splice.close(socket);
        }
    }

    /** Whoever is in is put out. */
    @Override
    public void close() {
        try {
            door.close();
        } catch (IOException closed) {
            // nobody comes in any more, which is all that is wanted
        }
        connections.forEach(each -> leave(each));
    }
}
