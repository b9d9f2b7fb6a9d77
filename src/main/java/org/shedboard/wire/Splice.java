package org.shedboard.wire;

import java.io.IOException;
import java.net.Socket;

/** Two connections made into one: what comes in at one goes out at the other, until either ends. */
public final class Splice {
    private final Socket one;
    private final Socket other;
    private final Runnable ended;

    private Splice(Socket one, Socket other, Runnable ended) {
        this.one = one;
        this.other = other;
        this.ended = ended;
    }

    /** Carries on threads of its own. */
    public static void start(Socket one, Socket other) {
        start(one, other, () -> {});
    }

    /** @param ended told when it is over, maybe more than once */
    static void start(Socket one, Socket other, Runnable ended) {
        Splice splice = new Splice(one, other, ended);
        run("from terminal", () -> splice.carry(one, other));
        run("to terminal", () -> splice.carry(other, one));
    }

    static void run(String name, Runnable work) {
        Thread thread = new Thread(work, name);
        thread.setDaemon(true);
        thread.start();
    }

    private void carry(Socket from, Socket to) {
        try {
            from.getInputStream().transferTo(to.getOutputStream());
        } catch (IOException ended) {
            // one of the two has gone, and so will the other
        } finally {
            close(one);
            close(other);
            ended.run();
        }
    }

    /** Ends a connection, in whatever state it is. */
    public static void close(Socket socket) {
        try {
            socket.close();
        } catch (IOException gone) {
            // it is closed already, as far as anybody can
        }
    }
}
