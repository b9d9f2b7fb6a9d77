package org.shedboard.store;

import java.util.Optional;
import java.util.concurrent.TimeUnit;

/**
 * The way in to a home's records: as their owner where the file is free, otherwise as the guest of whoever has it. Between an owner
 * that goes and the next one there are moments in which neither works, so it is tried for a while.
 */
final class HomeDoor implements Door {
    private static final long PATIENCE_NANOS = TimeUnit.SECONDS.toNanos(10);
    private static final int PAUSE_MILLIS = 20;

    private final Home home;
    private final Schema schema;
    private Intent intent;

    private HomeDoor(Home home, Schema schema, Intent intent) {
        this.home = home;
        this.schema = schema;
        this.intent = intent;
    }

    static HomeDoor to(Home home, Schema schema, Intent intent) {
        if (intent.mayMake()) {
            home.create();
        } else {
            home.expectShop();
        }
        return new HomeDoor(home.real(), schema, intent);
    }

    @Override
    public Link enter() {
        long until = System.nanoTime() + PATIENCE_NANOS;
        Optional<Link> link = tryOnce();
        while (link.isEmpty() && System.nanoTime() < until) {
            Door.pause(PAUSE_MILLIS);
            link = tryOnce();
        }
        intent = intent.again();
        return link.orElseThrow(() -> new StoreFailure(
                StoreFailure.Kind.UNREACHABLE,
                "another program has the records in %s open and does not answer; close it"
                        .formatted(home.directory())));
    }

    @Override
    public void compactWhenClosed() {
        home.markToCompact();
    }

    private Optional<Link> tryOnce() {
        try {
            return Optional.of(Ownership.take(home, schema, intent));
        } catch (StoreFailure failure) {
            if (!failure.is(StoreFailure.Kind.BUSY)) {
                throw failure;
            }
            return Notice.find(home).flatMap(this::tryAsGuest);
        }
    }

    private Optional<Link> tryAsGuest(Notice notice) {
        try {
            return Optional.of(Guest.join(new Loopback(notice), schema));
        } catch (StoreFailure failure) {
            if (!failure.is(StoreFailure.Kind.BROKEN)) {
                throw failure;
            }
            return Optional.empty();
        }
    }
}
