package org.shedboard.store;

import java.nio.file.Path;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * The records of one shop, in the directory that is its home. Threads may share it: reads and changes each go one after another, and
 * do not wait for one another.
 *
 * <p>An interrupt makes the database close its file under whoever works on it. Nothing is lost by that: the file is opened again and
 * the work goes on. But the database swallows some interrupts, so a thread that works here is to be stopped by other means. No
 * interrupt reaches the closing of the file.
 */
public final class Store implements AutoCloseable {
    /** How often work is begun anew because the owner of the file went away under it; more than that is no accident. */
    private static final int TRIES = 5;

    static {
        // read once, when the database's classes are loaded: without it guests' doors would stand on every network of
        // the machine
        System.setProperty("h2.bindAddress", "127.0.0.1");
    }

    private final Home home;
    private final Door door;
    private final boolean looksOnly;
    /** Null while there is no way to the records. */
    private Link link;

    private boolean isClosed;

    private Store(Home home, Door door, boolean looksOnly) {
        this.home = home;
        this.door = door;
        this.looksOnly = looksOnly;
        this.link = door.enter();
    }

    public static boolean exists(Path home) {
        return Home.at(home).hasShop();
    }

    /** Makes the directory of a home, for its owner's eyes only, unless it is there. */
    public static void makeHome(Path home) {
        Home.at(home).create();
    }

    /** Takes the records out of this home for good; nobody may have them open. */
    public static void remove(Path home) {
        Home.at(home).remove();
    }

    /** Opens the records in this home; fails when there are none. */
    public static Store open(Path home) {
        return open(home, new Schema(Migration.all()));
    }

    static Store open(Path home, Schema schema) {
        return open(home, schema, false);
    }

    /** Opens the records in this home for nothing but reading: every change through it fails. */
    public static Store openToLook(Path home) {
        return open(home, new Schema(Migration.all()), true);
    }

    private static Store open(Path home, Schema schema, boolean looksOnly) {
        Home place = Home.at(home);
        place.expectShop();
        return new Store(place.real(), new Door(place.real(), schema, false), looksOnly);
    }

    /** Makes empty records in this home; fails when there are some. */
    public static Store create(Path home) {
        if (exists(home)) {
            throw new StoreFailure(
                    StoreFailure.Kind.SHOP_EXISTS, "there is a shop in %s already".formatted(home.toAbsolutePath()));
        }
        return openOrCreate(home);
    }

    public static Store openOrCreate(Path home) {
        Home place = Home.at(home);
        place.create();
        return new Store(place.real(), new Door(place.real(), new Schema(Migration.all()), true), false);
    }

    /** Whether this process has the file open itself; another one of this machine may work through it. */
    public synchronized boolean isOwner() {
        return link != null && link.isOwner();
    }

    /** What the work makes of the records as they are at one moment. The work may be done again, so it must only read. */
    public <T> T read(Function<Reader, T> work) {
        return persist(way -> way.read(sql -> work.apply(new Reader(sql))));
    }

    /**
     * Does the work as one change with one row in the journal, and returns when it would survive a power cut. Nothing of it is
     * left when the work throws. It may be done again from the start, so it must not do anything else.
     *
     * @param what the change in a few words, for the journal
     */
    public <T> T change(Stamp stamp, String what, Function<Tx, T> work) {
        expectToWork();
        return persist(new Attempt<>(stamp, what, work)::over);
    }

    /**
     * Has the file written anew when it is closed, for what was erased from the records stands in it for some time yet. Whichever process
     * closes it does so, also when this one ends before.
     */
    public void compactWhenClosed() {
        expectToWork();
        home.markToCompact();
    }

    private void expectToWork() {
        if (looksOnly) {
            throw new StoreFailure(StoreFailure.Kind.LOOK_ONLY, "this terminal only looks; nothing is changed from it");
        }
    }

    /** A change that has nothing to tell. */
    public void save(Stamp stamp, String what, Consumer<Tx> work) {
        change(stamp, what, tx -> {
            work.accept(tx);
            return null;
        });
    }

    /**
     * Does the work over whatever way there is to the records, anew when the one it went over breaks. On a full disk the database
     * gives up reading too, until it is opened again; so it is, by the next call.
     */
    private <T> T persist(Function<Link, T> work) {
        boolean isInterrupted = Thread.interrupted();
        try {
            for (int i = 1; ; i++) {
                Link way = link();
                try {
                    return work.apply(way);
                } catch (StoreFailure failure) {
                    isInterrupted |= Thread.interrupted();
                    leave(way, failure, i);
                }
            }
        } finally {
            if (isInterrupted) {
                Thread.currentThread().interrupt();
            }
        }
    }

    /** After a failure over this way: returns when it is worth trying over another, and otherwise passes the failure on. */
    private void leave(Link way, StoreFailure failure, int tries) {
        if (failure.spoilsLink()) {
            drop(way, failure);
        }
        if (!failure.is(StoreFailure.Kind.BROKEN) || tries == TRIES) {
            throw failure;
        }
    }

    private synchronized Link link() {
        if (isClosed) {
            throw new IllegalStateException("the store is closed");
        }
        if (link == null) {
            link = door.enter();
        }
        return link;
    }

    /** Gives up a way that broke, unless another thread has done so. */
    private synchronized void drop(Link broken, StoreFailure reason) {
        if (link != broken) {
            return;
        }
        link = null;
        try {
            broken.close();
        } catch (StoreFailure failure) {
            reason.addSuppressed(failure);
        }
    }

    @Override
    public synchronized void close() {
        isClosed = true;
        if (link != null) {
            Link last = link;
            link = null;
            last.close();
        }
    }
}
