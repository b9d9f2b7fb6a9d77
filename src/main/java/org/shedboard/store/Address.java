package org.shedboard.store;

import java.nio.file.Path;

/** Where the records of a shop are, and with them the directory of this machine for whatever is this terminal's own. */
public sealed interface Address {
    /** The directory for what belongs to this terminal: its half-filled form, its log, what it knows of a server. */
    Path home();

    /** Where it is, as a person is told of it. */
    String said();

    /** In a file in that directory, as its owner or through whichever program of this machine has it open. */
    record InHome(Path home) implements Address {
        @Override
        public String said() {
            return home.toAbsolutePath().toString();
        }
    }

    /**
     * At another machine that serves them to terminals.
     *
     * @param host name or number of that machine
     */
    record AtServer(Path home, String host, int port) implements Address {
        public AtServer {
            if (host.isBlank() || port < 1 || port > 65_535) {
                throw new IllegalArgumentException("no server can be at %s:%s".formatted(host, port));
            }
        }

        @Override
        public String said() {
            return name();
        }

        /** As it is said on a command line. */
        public String name() {
            return "%s:%s".formatted(host.contains(":") ? "[" + host + "]" : host, Integer.toString(port));
        }

        /** What this terminal keeps of the server, once it has joined it. */
        public Path ticketFile() {
            return home.resolve("ticket");
        }
    }

    /**
     * In a database server that is not ours.
     *
     * @param url as its driver takes it, without name and password
     */
    record AtDatabase(Path home, String url) implements Address {
        @Override
        public String said() {
            return DatabaseUrl.parse(url).said();
        }
    }
}
