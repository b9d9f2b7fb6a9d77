package org.shedboard.store;

import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * The records of one shop, wherever its address says. Threads may share it: reads and changes each go one after another, and
 * do not wait for one another.
 *
 * <p>An interrupt makes the database close its file under whoever works on it. Nothing is lost by that: the file is opened again and
 * the work goes on. But the database swallows some interrupts, so a thread that works here is to be stopped by other means. No
 * interrupt reaches the closing of the file.
 */
public final class Store implements AutoCloseable {
    /** How often work is begun anew because the owner of the file went away under it; more than that is no accident. */
    private static final int TRIES = 5;

    /** The setting that names the second place for backups. */
    public static final String SECOND_PLACE = "backup.second";

    static {
        // read once, when the database's classes are loaded: without it guests' doors would stand on every network of
        // the machine
        System.setProperty("h2.bindAddress", "127.0.0.1");
    }

    private final Home home;
    /** Whether the records are among this machine's own files. */
    private final boolean isHere;

    private final Door door;
    private final boolean looksOnly;
    /** Null while there is no way to the records. */
    private Link link;

    private boolean isClosed;

    private Store(Address address, Schema schema, Intent intent) {
        this.home = Home.at(address.home());
        this.isHere = address instanceof Address.InHome;
        this.door = Door.to(address, schema, intent);
        this.looksOnly = intent == Intent.LOOK;
        this.link = door.enter();
    }

    /** Whether there are records at this address; those elsewhere than on this machine are taken to be there until they are opened. */
    public static boolean exists(Address address) {
        return Door.hasShop(address);
    }

    public static boolean exists(Path home) {
        return exists(new Address.InHome(home));
    }

    /** Makes the directory of a home, for its owner's eyes only, unless it is there. */
    public static void makeHome(Path home) {
        Home.at(home).create();
    }

    /** Takes the records out of this home for good; nobody may have them open. */
    public static void remove(Path home) {
        Home.at(home).remove();
    }

    /** Opens the records at this address; fails when there are none. */
    public static Store open(Address address) {
        return open(address, new Schema(Migration.all()));
    }

    /** Opens the records at this address for nothing but reading: every change through it fails, and older ones are left as they are. */
    public static Store openToLook(Address address) {
        return new Store(address, new Schema(Migration.all()), Intent.LOOK);
    }

    public static Store openToLook(Path home) {
        return openToLook(new Address.InHome(home));
    }

    /** Opens the records in this home; fails when there are none. */
    public static Store open(Path home) {
        return open(new Address.InHome(home));
    }

    static Store open(Path home, Schema schema) {
        return open(new Address.InHome(home), schema);
    }

    private static Store open(Address address, Schema schema) {
        return new Store(address, schema, Intent.WORK);
    }

    /** Makes empty records at this address; fails when there are some. */
    static Store create(Address address) {
        expectNone(address);
        return openOrCreate(address);
    }

    /** Makes empty records in this home; fails when there are some. */
    static Store create(Path home) {
        return create(new Address.InHome(home));
    }

    public static Store openOrCreate(Path home) {
        return openOrCreate(new Address.InHome(home));
    }

    public static Store openOrCreate(Address address) {
        return new Store(address, new Schema(Migration.all()), Intent.MAKE);
    }

    /**
     * Makes a shop of what was written by {@link #export}, in an empty home or in a database that has none by that name.
     *
     * @return how many rows were read
     */
    public static long load(Address to, InputStream records) {
        return arrive(to, arrival -> {
            long rows = RecordsFile.read(records, arrival.home(), new Schema(Migration.all()))
                    .rows();
            arrival.bringForward();
            arrival.expectSound();
            return rows;
        });
    }

    /**
     * Makes a shop of its first change, in an empty home or in a database that has none by that name. Whoever looks meanwhile finds none,
     * and so does whoever comes after a power cut in the middle of it.
     */
    public static void make(Address at, Stamp stamp, String what, Consumer<Tx> first) {
        arrive(at, arrival -> {
            try (Store store = create(arrival.home().directory())) {
                store.save(stamp, what, first);
            }
            return null;
        });
    }

    /** Has a shop made ready apart, and lets it take its place whole. */
    private static <T> T arrive(Address at, Function<Arrival, T> making) {
        expectNone(at);
        makeHome(at.home());
        Home place = Home.at(at.home()).real();
        try (Arrival arrival = Arrival.ofThisProcess(place.directory(), "arriving")) {
            T made = making.apply(arrival);
            expectNone(at);
            if (at instanceof Address.AtDatabase database) {
                move(new Address.InHome(arrival.home().directory()), database);
            } else {
                new ChangeFiles(place).setAside();
                arrival.take(place);
            }
            return made;
        }
    }

    private static void expectNone(Address at) {
        if (exists(at)) {
            throw new StoreFailure(
                    StoreFailure.Kind.SHOP_EXISTS,
                    "there is a shop in %s already; one is made only where there is none".formatted(at.said()));
        }
    }

    public static long load(Path home, InputStream records) {
        return load(new Address.InHome(home), records);
    }

    /** Whether a file that begins so is one of records. */
    public static boolean isRecords(String beginning) {
        return beginning.replaceAll("\\s", "").startsWith("{\"format\":\"%s\"".formatted(RecordsFile.FORMAT));
    }

    /**
     * Writes all there is at one moment, see the README for the format.
     *
     * @return how many rows were written
     */
    public long export(OutputStream out) {
        return persist(
                Door::enterPatiently,
                way -> way.read(sql -> RecordsFile.write(sql, out).rows()));
    }

    /**
     * Makes a backup of all there is at one moment; returns when a copy made of it was found to be the same.
     *
     * @param directory where to; made unless it is there
     * @param at the date and time in its name
     */
    public Path backup(Path directory, LocalDateTime at) {
        Home.makeDirectory(directory);
        return persist(Door::enterPatiently, way -> {
            try (Sql sql = way.another()) {
                return BackupFile.make(sql, home, directory, at);
            }
        });
    }

    /**
     * Makes the day's backup in the home, unless there is one of this date, copies it to the second place, and takes away what need
     * not be kept.
     *
     * @return whether one was made
     */
    public boolean backupOfDay(LocalDateTime at) {
        Backups here = backups();
        if (here.has(at.toLocalDate())) {
            return false;
        }
        copyToSecondPlace(backup(home.backups(), at));
        return true;
    }

    /** Copies a backup to the second place, where there is one, and takes away what need not be kept in both. */
    public void copyToSecondPlace(Path backup) {
        backups().thinOut().ifPresent(new ChangeFiles(home)::dropBefore);
        Optional<Backups> second = secondPlace().map(Backups::in);
        second.ifPresent(place -> {
            place.take(backup);
            place.thinOut();
        });
    }

    /** Those in the home. */
    public Backups backups() {
        return Backups.in(home.backups());
    }

    /** Where a copy of each backup goes; from another machine nothing can be said of it. */
    public Optional<Path> secondPlace() {
        return read(reader -> reader.setting(SECOND_PLACE))
                .filter(text -> isHere && !text.isEmpty())
                .map(Path::of);
    }

    /**
     * Takes a shop over into a database that has none by that name, and says what arrived; fails, and leaves nothing there, when it is not
     * what it was. Where the shop is now it stays as it is.
     */
    public static List<Moved> move(Address from, Address.AtDatabase to) {
        return new Moving(DatabaseUrl.parse(to.url())).from(from);
    }

    /** The shops in the database of this address by their names there, in order. */
    public static SortedMap<String, Address.AtDatabase> shops(Address.AtDatabase one) {
        DatabaseUrl url = DatabaseUrl.parse(one.url());
        SortedMap<String, Address.AtDatabase> shops = new TreeMap<>();
        DatabaseSteps.shops(url)
                .forEach(name -> shops.put(
                        name, new Address.AtDatabase(one.home(), url.with(name).text())));
        return shops;
    }

    /** Whether this process has the file open itself; another one of this machine may work through it. */
    public synchronized boolean isOwner() {
        return link != null && link.isOwner();
    }

    /** What the work makes of the records as they are at one moment. The work may be done again, so it must only read. */
    public <T> T read(Function<Reader, T> work) {
        return persist(Door::enterPatiently, way -> way.read(sql -> work.apply(new Reader(sql))));
    }

    /** As {@link #read}, for somebody who looks again soon: where there is no way to the records just now, none is waited for. */
    public <T> T glance(Function<Reader, T> work) {
        return persist(Door::enter, way -> way.read(sql -> work.apply(new Reader(sql))));
    }

    /**
     * Does the work as one change with one row in the journal, and returns when it would survive a power cut. Nothing of it is
     * left when the work throws. It may be done again from the start, so it must not do anything else.
     *
     * @param what the change in a few words, for the journal
     */
    public <T> T change(Stamp stamp, String what, Function<Tx, T> work) {
        expectToWork();
        return persist(Door::enterPatiently, new Attempt<>(stamp, what, work)::over);
    }

    /**
     * Has the file written anew when it is closed, for what was erased from the records stands in it for some time yet. Whichever process
     * closes it does so, also when this one ends before.
     */
    public void compactWhenClosed() {
        expectToWork();
        door.compactWhenClosed();
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
    private <T> T persist(Function<Door, Link> entering, Function<Link, T> work) {
        boolean isInterrupted = Thread.interrupted();
        try {
            for (int i = 1; ; i++) {
                Link way = link(entering);
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

    private synchronized Link link(Function<Door, Link> entering) {
        if (isClosed) {
            throw new IllegalStateException("the store is closed");
        }
        if (link == null) {
            link = entering.apply(door);
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
