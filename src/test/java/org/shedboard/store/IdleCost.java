package org.shedboard.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicLong;

/**
 * Counts what it costs a terminal to look whether anything has changed, when nothing has: bytes on the wire, both ways, as they are
 * encrypted, and milliseconds. Told for a journal of few rows and of many, which have to be the same. Arguments: looks, rows.
 */
public final class IdleCost {
    private static final InetAddress LOOPBACK = InetAddress.getLoopbackAddress();

    private final AtomicLong bytes = new AtomicLong();

    private IdleCost() {}

    public static void main(String[] arguments) throws IOException {
        new IdleCost().run(Integer.parseInt(arguments[0]), Integer.parseInt(arguments[1]));
    }

    private void run(int looks, int rows) throws IOException {
        Path home = Files.createTempDirectory("idle-cost");
        Store.create(home).close();
        try (Served served = Served.at(home);
                ServerSocket counter = new ServerSocket(0, 50, LOOPBACK)) {
            Address.AtServer direct = served.joined(Files.createTempDirectory("idle-terminal"));
            start(() -> count(counter, direct.port()));
            Address.AtServer counted = new Address.AtServer(direct.home(), direct.host(), counter.getLocalPort());
            try (Store terminal = Store.open(counted)) {
                look(terminal, looks, "few rows");
                for (int i = 1; i <= rows; i++) {
                    ShopProcess.countOne(served.owner(), "row", i);
                }
                look(terminal, looks, rows + " rows");
            }
        }
    }

    private void look(Store terminal, int looks, String name) {
        terminal.glance(Reader::lastJournal);
        long before = bytes.get();
        long began = System.nanoTime();
        for (int i = 0; i < looks; i++) {
            terminal.glance(Reader::lastJournal);
        }
        double millis = (System.nanoTime() - began) / 1e6 / looks;
        long each = (bytes.get() - before) / looks;
        System.out.printf(Locale.ROOT, "%-12s %d bytes and %.2f ms a look%n", name, each, millis);
    }

    private static void start(Runnable work) {
        Thread thread = new Thread(work, "counter");
        thread.setDaemon(true);
        thread.start();
    }

    private void count(ServerSocket door, int port) {
        try {
            while (true) {
                Socket terminal = door.accept();
                Socket server = new Socket(LOOPBACK, port);
                terminal.setTcpNoDelay(true);
                server.setTcpNoDelay(true);
                start(() -> carry(terminal, server));
                start(() -> carry(server, terminal));
            }
        } catch (IOException closed) {
            // the counting is over
        }
    }

    private void carry(Socket from, Socket to) {
        byte[] buffer = new byte[1 << 14];
        try (from;
                to;
                InputStream in = from.getInputStream();
                OutputStream out = to.getOutputStream()) {
            for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
                bytes.addAndGet(read);
                out.write(buffer, 0, read);
            }
        } catch (IOException ended) {
            // one of the two has gone
        }
    }
}
