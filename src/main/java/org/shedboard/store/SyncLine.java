package org.shedboard.store;

import java.io.BufferedReader;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.Socket;
import java.nio.charset.StandardCharsets;

/** A guest's line to the owner of the file, see {@link SyncServer}. */
final class SyncLine implements Closeable {
    private static final int GREETING_MILLIS = 2000;
    /** How long the owner may be silent before it counts as gone; longer than anybody waits for a lock. */
    static final int SILENT_MILLIS = 20_000;

    private final Socket socket;
    private final BufferedReader in;

    private SyncLine(Socket socket) throws IOException {
        this.socket = socket;
        this.in = new BufferedReader(new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8));
    }

    /** Opens one; fails when nobody, or somebody else, answers. */
    static SyncLine open(Way way) throws IOException {
        Socket socket = way.line();
        try {
            socket.setSoTimeout(GREETING_MILLIS);
            SyncLine line = new SyncLine(socket);
            if (!SyncServer.GREETING.equals(line.hear())) {
                throw new IOException("somebody else answers");
            }
            socket.setSoTimeout(SILENT_MILLIS);
            return line;
        } catch (IOException problem) {
            socket.close();
            throw problem;
        }
    }

    synchronized String ask(String word) throws IOException {
        say(word);
        return hear();
    }

    void say(String word) throws IOException {
        socket.getOutputStream().write((word + "\n").getBytes(StandardCharsets.UTF_8));
    }

    private String hear() throws IOException {
        String answer = in.readLine();
        if (answer == null) {
            throw new IOException("the owner has left");
        }
        return answer;
    }

    @Override
    public void close() throws IOException {
        socket.close();
    }
}
