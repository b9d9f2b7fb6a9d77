package org.shedboard.store;

import java.util.concurrent.TimeUnit;
import org.shedboard.wire.Ticket;
import org.shedboard.wire.Tunnel;
import org.shedboard.wire.WireFailure;

/** The way in to records that another machine serves. */
final class ServerDoor implements Door {
    /** So long whoever is saving something waits for a server that is started again. */
    private static final long PATIENCE_NANOS = TimeUnit.SECONDS.toNanos(10);

    private static final int PAUSE_MILLIS = 200;

    private final Address.AtServer address;
    private final Schema schema;

    private ServerDoor(Address.AtServer address, Schema schema) {
        this.address = address;
        this.schema = schema;
    }

    static ServerDoor to(Address.AtServer address, Schema schema, Intent intent) {
        if (intent.mayMake()) {
            throw new StoreFailure(
                    StoreFailure.Kind.NOT_LET_IN,
                    "no shop can be made from here; make it at the machine that is to serve it");
        }
        return new ServerDoor(address, schema);
    }

    @Override
    public Link enter() {
        try {
            return Guest.join(new ThroughTunnel(new Tunnel(address.host(), address.port(), ticket())), schema);
        } catch (WireFailure failure) {
            throw asFailure(failure);
        }
    }

    /** As {@link #enter}, but while the server does not answer it is tried for some time. */
    @Override
    public Link enterPatiently() {
        long until = System.nanoTime() + PATIENCE_NANOS;
        while (true) {
            try {
                return enter();
            } catch (StoreFailure failure) {
                boolean mayCome = failure.is(StoreFailure.Kind.UNREACHABLE) || failure.is(StoreFailure.Kind.BROKEN);
                if (!mayCome || System.nanoTime() > until) {
                    throw failure;
                }
            }
            Door.pause(PAUSE_MILLIS);
        }
    }

    private Ticket ticket() {
        return Ticket.in(address.ticketFile())
                .orElseThrow(() -> new StoreFailure(
                        StoreFailure.Kind.NO_SHOP,
                        "this terminal has not joined the server at %s yet; say: shedboard join %s"
                                .formatted(address.name(), address.name())));
    }

    static StoreFailure asFailure(WireFailure failure) {
        return new StoreFailure(
                switch (failure.kind()) {
                    case UNREACHABLE -> StoreFailure.Kind.UNREACHABLE;
                    case WRONG_KEY, WRONG_PASSWORD -> StoreFailure.Kind.NOT_LET_IN;
                    case FILE -> StoreFailure.Kind.BAD_HOME;
                },
                failure.getMessage(),
                failure);
    }

    /** Erasing rewrites the journal, which no terminal may. */
    @Override
    public void compactWhenClosed() {
        throw new StoreFailure(
                StoreFailure.Kind.NOT_LET_IN,
                "nobody can be forgotten from here; do it at the machine that has the records");
    }
}
