package org.shedboard.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;

/** What lies between terminals and their server: carries on what is said, until it is cut in the middle of that. */
final class CutNetwork implements AutoCloseable {
    private static final int WAITING = 50;
    /** More than is said at once. */
    private static final int LONGEST_REST = 3000;

    private static final int CHUNK = 1024;

    private final ServerSocket door;
    private final int server;
    private final Set<Wire> wires = ConcurrentHashMap.newKeySet();
    private final AtomicInteger cuts = new AtomicInteger();

    /** @param server the port of this machine at which the server listens */
    CutNetwork(int server) throws IOException {
        this.door = new ServerSocket(0, WAITING, InetAddress.getLoopbackAddress());
        this.server = server;
        run(this::accept);
    }

    private static void run(Runnable work) {
        Thread thread = new Thread(work, "network");
        thread.setDaemon(true);
        thread.start();
    }

    int port() {
        return door.getLocalPort();
    }

    /** How many connections were cut while both ends wanted to go on. */
    int cuts() {
        return cuts.get();
    }

    /** Cuts about a third of the connections that there are: each after so many bytes more, to or fro, that it may be in the middle of a word. */
    void cut(Random random) {
        for (Wire wire : wires) {
            if (random.nextInt(3) == 0) {
                wire.endsAfter(random.nextInt(LONGEST_REST));
            }
        }
    }

    private void accept() {
        while (!door.isClosed()) {
            try {
                Socket terminal = door.accept();
                join(terminal);
            } catch (IOException closed) {
                return;
            }
        }
    }

    private void join(Socket terminal) throws IOException {
        try {
            Wire wire = new Wire(terminal, new Socket(InetAddress.getLoopbackAddress(), server));
            wires.add(wire);
            run(() -> wire.carry(wire.terminal, wire.server));
            run(() -> wire.carry(wire.server, wire.terminal));
        } catch (IOException nobodyServes) {
            terminal.close();
        }
    }

    @Override
    public void close() throws IOException {
        door.close();
        wires.forEach(Wire::end);
    }

    /** One connection. */
    private final class Wire {
        private final Socket terminal;
        private final Socket server;
        private final AtomicInteger left = new AtomicInteger(Integer.MAX_VALUE);

        private Wire(Socket terminal, Socket server) {
            this.terminal = terminal;
            this.server = server;
        }

        private void endsAfter(int bytes) {
            left.set(bytes);
            if (bytes == 0) {
                cuts.incrementAndGet();
                end();
            }
        }

        private void carry(Socket from, Socket to) {
            byte[] chunk = new byte[CHUNK];
            try {
                InputStream in = from.getInputStream();
                OutputStream out = to.getOutputStream();
                int read = in.read(chunk);
                while (read >= 0) {
                    int count = read;
                    int allowed =
                            left.getAndUpdate(rest -> rest == Integer.MAX_VALUE ? rest : Math.max(0, rest - count));
                    out.write(chunk, 0, Math.min(count, allowed));
                    if (count >= allowed) {
                        cuts.incrementAndGet();
                        break;
                    }
                    read = in.read(chunk);
                }
            } catch (IOException gone) {
                // one end has left, so the other is let go too
            }
            end();
        }

        private void end() {
            wires.remove(this);
            for (Socket end : new Socket[] {terminal, server}) {
                try {
                    end.close();
                } catch (IOException closed) {
                    // it was closed already
                }
            }
        }
    }
}
