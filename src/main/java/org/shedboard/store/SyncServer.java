package org.shedboard.store;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Makes the commits of guests durable, which the database itself does for its owner only. A guest says the secret, is greeted, and
 * then says {@link #ASK} whenever it has committed; the answer is {@link #DONE} or the kind of failure.
 */
final class SyncServer implements AutoCloseable {
    static final String GREETING = "shedboard";
    static final String ASK = "sync";
    static final String DONE = "durable";

    private static final int WAITING_GUESTS = 50;
    private static final int GREETING_MILLIS = 5000;

    private final ServerSocket door;
    private final Set<Socket> guests = ConcurrentHashMap.newKeySet();
    private final byte[] secret;
    private final Checkpoints checkpoints;

    private SyncServer(ServerSocket door, String secret, Checkpoints checkpoints) {
        this.door = door;
        this.secret = secret.getBytes(StandardCharsets.UTF_8);
        this.checkpoints = checkpoints;
    }

    static SyncServer start(String secret, Checkpoints checkpoints) throws IOException {
        SyncServer server = new SyncServer(new ServerSocket(0, WAITING_GUESTS, loopback()), secret, checkpoints);
        run("guests", server::accept);
        return server;
    }

    /** This machine and no other, whichever of its two loopback addresses Java prefers. */
    static InetAddress loopback() throws IOException {
        return InetAddress.getByAddress(new byte[] {127, 0, 0, 1});
    }

    int port() {
        return door.getLocalPort();
    }

    private static void run(String name, Runnable work) {
        Thread thread = new Thread(work, name);
        thread.setDaemon(true);
        thread.start();
    }

    private void accept() {
        while (!door.isClosed()) {
            try {
                Socket guest = door.accept();
                guests.add(guest);
                run("guest", () -> serve(guest));
            } catch (IOException closed) {
                return;
            }
        }
    }

    private void serve(Socket guest) {
        try (guest;
                BufferedReader in =
                        new BufferedReader(new InputStreamReader(guest.getInputStream(), StandardCharsets.UTF_8));
                BufferedWriter out =
                        new BufferedWriter(new OutputStreamWriter(guest.getOutputStream(), StandardCharsets.UTF_8))) {
            guest.setTcpNoDelay(true);
            guest.setSoTimeout(GREETING_MILLIS);
            if (knowsSecret(in.readLine())) {
                guest.setSoTimeout(0);
                say(out, GREETING);
                answer(in, out);
            }
        } catch (IOException gone) {
            // the guest left, or we are closing: either way there is nobody to tell
        } finally {
            guests.remove(guest);
        }
    }

    private boolean knowsSecret(String said) {
        return said != null && MessageDigest.isEqual(secret, said.getBytes(StandardCharsets.UTF_8));
    }

    private void answer(BufferedReader in, BufferedWriter out) throws IOException {
        while (ASK.equals(in.readLine())) {
            try {
                checkpoints.await();
                say(out, DONE);
            } catch (StoreFailure failure) {
                say(out, failure.kind().name());
            }
        }
    }

    private static void say(BufferedWriter out, String line) throws IOException {
        out.write(line + "\n");
        out.flush();
    }

    @Override
    public void close() {
        try {
            door.close();
            for (Socket guest : guests) {
                guest.close();
            }
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }
}
