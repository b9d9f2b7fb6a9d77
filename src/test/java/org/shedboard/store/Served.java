package org.shedboard.store;

import java.net.InetSocketAddress;
import java.nio.file.Path;
import org.shedboard.wire.Credentials;
import org.shedboard.wire.Ticket;

/** A shop that is served by this process, and terminals that have joined it. */
public final class Served implements AutoCloseable {
    private static final String HOST = "127.0.0.1";

    private final Store owner;
    private final Serving serving;
    private final Ticket ticket;

    private Served(Store owner, Serving serving, Ticket ticket) {
        this.owner = owner;
        this.serving = serving;
        this.ticket = ticket;
    }

    /** Serves the shop in this home, with a name and password made for it. */
    public static Served at(Path home) {
        Store owner = Store.open(home);
        Serving serving = Serving.start(home, new InetSocketAddress(HOST, 0), true);
        Credentials drawn = serving.drawn().orElseThrow();
        return new Served(owner, serving, new Ticket(serving.fingerprint(), drawn));
    }

    /** Serves it once more at the same place, as after a restart, for those who joined before. */
    public Served again(Path home) {
        Store opened = Store.open(home);
        return new Served(opened, Serving.start(home, serving.address(), false), ticket);
    }

    /** Where a terminal that keeps its own things in this directory finds the records. */
    public Address.AtServer joined(Path terminalHome) {
        Address.AtServer address = address(terminalHome);
        ticket.keepIn(address.ticketFile());
        return address;
    }

    Address.AtServer address(Path terminalHome) {
        return new Address.AtServer(terminalHome, HOST, serving.address().getPort());
    }

    Ticket ticket() {
        return ticket;
    }

    Store owner() {
        return owner;
    }

    @Override
    public void close() {
        serving.close();
        owner.close();
    }
}
