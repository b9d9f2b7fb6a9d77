package org.shedboard.store;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import org.shedboard.wire.Credentials;
import org.shedboard.wire.Fingerprint;
import org.shedboard.wire.Ticket;

/** A terminal that goes on changing things while its server, another process, is killed and started again. */
final class ServedKills implements AutoCloseable {
    private static final String HOST = "127.0.0.1";
    private static final int LONGEST_MILLIS = 400;

    private final Path home;
    private final Random random;
    private final int port;
    private final Store terminal;
    private ShopProcess server;

    /** @param away where the terminal keeps its own things */
    ServedKills(Path home, Path away, Random random) throws IOException {
        this.home = home;
        this.random = random;
        this.server = ShopProcess.at(home);
        String[] said = server.ask("serve 0").split(" ");
        this.port = Integer.parseInt(said[0]);
        Address.AtServer address = new Address.AtServer(away, HOST, port);
        new Ticket(new Fingerprint(said[1]), new Credentials(said[2], said[3])).keepIn(address.ticketFile());
        this.terminal = Store.open(address);
    }

    /**
     * What came of one kill.
     *
     * @param acknowledged how many changes the terminal was told are saved, before the kill and after
     * @param there the numbers of those that the journal has, in its order
     */
    record Count(int acknowledged, List<Integer> there) {}

    Count kill(String name) throws IOException, InterruptedException {
        AtomicInteger acknowledged = new AtomicInteger();
        AtomicBoolean isOver = new AtomicBoolean();
        Thread changing = new Thread(() -> {
            while (!isOver.get()) {
                ShopProcess.countOne(terminal, name, acknowledged.get() + 1);
                acknowledged.incrementAndGet();
            }
        });
        changing.start();
        await(changing, acknowledged, 0);
        Thread.sleep(random.nextInt(LONGEST_MILLIS));
        server.kill();
        int before = acknowledged.get();
        server = ShopProcess.at(home);
        server.ask("serve " + port);
        await(changing, acknowledged, before);
        isOver.set(true);
        changing.join();
        return new Count(acknowledged.get(), numbers(name));
    }

    private static void await(Thread changing, AtomicInteger acknowledged, int before) throws InterruptedException {
        while (changing.isAlive() && acknowledged.get() <= before) {
            Thread.sleep(1);
        }
    }

    private List<Integer> numbers(String name) {
        return terminal.read(reader -> reader.journal(0)).stream()
                .map(row -> row.what().split(" "))
                .filter(words -> words[0].equals(name))
                .map(words -> Integer.valueOf(words[1]))
                .toList();
    }

    @Override
    public void close() throws IOException {
        terminal.close();
        server.close();
    }
}
