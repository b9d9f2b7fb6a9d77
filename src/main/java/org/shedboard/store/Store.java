package org.shedboard.store;

import java.nio.file.Path;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * The records of one shop, in the directory that is its home. Threads may share it: reads and changes each go one after another, and
 * do not wait for one another.
 *
 * <p>A thread that uses it must not be interrupted: the database would close its file.
 */
public final class Store implements AutoCloseable {
    private final Link link;

    private Store(Link link) {
        this.link = link;
    }

    public static boolean exists(Path home) {
        return Home.at(home).hasShop();
    }

    /** Opens the records in this home; fails when there are none. */
    public static Store open(Path home) {
        Home place = Home.at(home);
        place.expectShop();
        return new Store(Ownership.take(place.real(), new Schema(Migration.all()), false));
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
        return new Store(Ownership.take(place.real(), new Schema(Migration.all()), true));
    }

    /** What the work makes of the records as they are at one moment. The work may be done again, so it must only read. */
    public <T> T read(Function<Reader, T> work) {
        return link.read(sql -> work.apply(new Reader(sql)));
    }

    /**
     * Does the work as one change with one row in the journal, and returns when it would survive a power cut. Nothing of it is
     * left when the work throws. It may be done again from the start, so it must not do anything else.
     *
     * @param what the change in a few words, for the journal
     */
    public <T> T change(Stamp stamp, String what, Function<Tx, T> work) {
        return new Attempt<>(stamp, what, work).over(link);
    }

    /** A change that has nothing to tell. */
    public void save(Stamp stamp, String what, Consumer<Tx> work) {
        change(stamp, what, tx -> {
            work.accept(tx);
            return null;
        });
    }

    @Override
    public void close() {
        link.close();
    }
}
