package org.shedboard.store;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.Random;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.wire.Credentials;
import org.shedboard.wire.Fingerprint;
import org.shedboard.wire.Ticket;

/**
 * Several terminals of one server change the same things at random, over a network that cuts their connections at random moments, and the
 * server is killed now and then. A terminal that is told of a failure goes on with its next change, not knowing whether the one before was
 * made. {@code -Dproof.scale=10} cuts ten times as often.
 */
@Timeout(600)
class CutConnectionsTest {
    private static final long SEED = 20261128;
    private static final int TERMINALS = 3;
    private static final int CUTS = 15 * Integer.getInteger("proof.scale", 1);
    /** The server is killed with every so manieth cut. */
    private static final int KILL_EVERY = 6;

    private static final int LONGEST_PEACE_MILLIS = 200;

    @TempDir
    private Path home;

    @TempDir
    private Path away;

    private final Random random = new Random(SEED);
    private final Queue<String> acknowledged = new ConcurrentLinkedQueue<>();
    private final ExecutorService threads = Executors.newFixedThreadPool(TERMINALS);
    private final AtomicBoolean isOver = new AtomicBoolean();

    @Test
    void the_outcome_is_that_of_the_acknowledged_changes_one_after_another() throws Exception {
        Store.create(home).close();
        int cuts;
        ShopProcess server = ShopProcess.at(home);
        String[] said = server.ask("serve 0").split(" ");
        try (CutNetwork network = new CutNetwork(Integer.parseInt(said[0]))) {
            Ticket ticket = new Ticket(new Fingerprint(said[1]), new Credentials(said[2], said[3]));
            List<Future<?>> terminals = new ArrayList<>();
            for (int i = 0; i < TERMINALS; i++) {
                terminals.add(terminal("terminal" + i, network, ticket));
            }
            for (int i = 1; i <= CUTS; i++) {
                awaitChange();
                Thread.sleep(random.nextInt(LONGEST_PEACE_MILLIS));
                network.cut(random);
                if (i % KILL_EVERY == 0) {
                    server.kill();
                    server = ShopProcess.at(home);
                    server.ask("serve " + said[0]);
                }
            }
            isOver.set(true);
            for (Future<?> terminal : terminals) {
                terminal.get();
            }
            cuts = network.cuts();
        } finally {
            isOver.set(true);
            threads.shutdown();
            server.close();
        }
        assertTrue(cuts > CUTS / 2, cuts + " cuts");
        assertTrue(acknowledged.size() > CUTS, acknowledged.size() + " changes");
        try (Store store = Store.open(home)) {
            DeedModel.check(store, acknowledged);
        }
    }

    /** Whatever was cut, changes are made again after it. */
    private void awaitChange() throws InterruptedException {
        int before = acknowledged.size();
        while (acknowledged.size() == before && !isOver.get()) {
            Thread.sleep(1);
        }
    }

    private Future<?> terminal(String name, CutNetwork network, Ticket ticket) throws IOException {
        Address.AtServer address = new Address.AtServer(away.resolve(name), "127.0.0.1", network.port());
        ticket.keepIn(address.ticketFile());
        Random own = new Random(random.nextInt());
        return threads.submit(() -> change(address, name, own));
    }

    private void change(Address address, String name, Random own) {
        Store store = null;
        for (int i = 1; !isOver.get(); i++) {
            Deed deed = Deed.drawn(own, name + "-" + i);
            try {
                store = store == null ? Store.open(address) : store;
                deed.in(store);
                acknowledged.add(deed.id());
            } catch (StoreFailure failure) {
                if (!failure.is(StoreFailure.Kind.BROKEN) && !failure.is(StoreFailure.Kind.UNREACHABLE)) {
                    isOver.set(true);
                    throw failure;
                }
            }
        }
        if (store != null) {
            store.close();
        }
    }
}
