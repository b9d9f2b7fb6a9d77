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
 * Makes the commits of guests durable, which the database itself does for its owner only, and gives them their turns. A guest says the
 * secret, is greeted, and then says {@link #ASK} whenever it has committed; the answer is {@link #DONE} or the kind of failure. Over
 * another line it says {@link #TURN}, is told {@link #YOURS} when it may change something, and says {@link #OVER} when it has.
 */
final class SyncServer implements AutoCloseable {
    static final String GREETING = "shedboard";
    static final String ASK = "sync";
    static final String DONE = "durable";
    static final String TURN = "turn";
    static final String YOURS = "yours";
    static final String OVER = "over";

    private static final int WAITING_GUESTS = 50;
    private static final int GREETING_MILLIS = 5000;

    private final ServerSocket door;
    private final Set<Socket> guests = ConcurrentHashMap.newKeySet();
    private final byte[] secret;
    private final Checkpoints checkpoints;
    private final Turns turns;

    private SyncServer(ServerSocket door, String secret, Checkpoints checkpoints, Turns turns) {
        this.door = door;
        this.secret = secret.getBytes(StandardCharsets.UTF_8);
        this.checkpoints = checkpoints;
        this.turns = turns;
    }

    static SyncServer start(String secret, Checkpoints checkpoints, Turns turns) throws IOException {
        SyncServer server = new SyncServer(new ServerSocket(0, WAITING_GUESTS, loopback()), secret, checkpoints, turns);
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
                answer(guest, in, out);
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

    private void answer(Socket guest, BufferedReader in, BufferedWriter out) throws IOException {
        String wanted = in.readLine();
        while (ASK.equals(wanted) || TURN.equals(wanted)) {
            if (ASK.equals(wanted)) {
                say(out, sync());
            } else {
                giveTurn(guest, in, out);
            }
            wanted = in.readLine();
        }
    }

    private String sync() {
        try {
            checkpoints.await();
            return DONE;
        } catch (StoreFailure failure) {
            return failure.kind().name();
        }
    }

    /** Whoever falls silent while it has the turn loses it, and the line. */
    private void giveTurn(Socket guest, BufferedReader in, BufferedWriter out) throws IOException {
        String last = turns.during(() -> {
            say(out, YOURS);
            guest.setSoTimeout(Turns.LONGEST_MILLIS);
            return in.readLine();
        });
        if (!OVER.equals(last)) {
            throw new IOException("the guest has left");
        }
        guest.setSoTimeout(0);
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
