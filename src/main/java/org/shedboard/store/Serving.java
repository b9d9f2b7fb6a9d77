package org.shedboard.store;

import java.io.DataInputStream;
import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.nio.file.Path;
import java.util.Optional;
import org.shedboard.wire.Credentials;
import org.shedboard.wire.Fingerprint;
import org.shedboard.wire.Password;
import org.shedboard.wire.ShopKey;
import org.shedboard.wire.TunnelServer;
import org.shedboard.wire.WireFailure;

/**
 * Serves the records of a home to terminals of other machines, for as long as any process of this machine has them open: each
 * terminal's connection goes to whichever that is at the moment.
 */
public final class Serving implements AutoCloseable {
    private final Home home;
    private final ShopKey key;
    private final Optional<Credentials> drawn;
    private final TunnelServer server;

    private Serving(Home home, InetSocketAddress where, boolean anew) throws IOException {
        this.home = home;
        this.key = ShopKey.in(directory(home).resolve("key.p12"));
        this.drawn = anew || !hasPassword(home) ? Optional.of(draw(home)) : Optional.empty();
        this.server = TunnelServer.start(where, key, Password.in(passwordFile(home)), this::connect);
    }

    /**
     * Listens there from now on. The first time a key, a name and a password are made.
     *
     * @param anew whether another password is made although there is one, which then lets nobody in any more
     */
    public static Serving start(Path directory, InetSocketAddress where, boolean anew) {
        Home home = Home.at(directory).real();
        try {
            return new Serving(home, where, anew);
        } catch (IOException taken) {
            throw new StoreFailure(
                    StoreFailure.Kind.UNREACHABLE,
                    "nothing can be served at %s:%s (%s); choose another with --listen"
                            .formatted(where.getHostString(), Integer.toString(where.getPort()), taken.getMessage()),
                    taken);
        } catch (WireFailure failure) {
            throw ServerDoor.asFailure(failure);
        }
    }

    private static Path directory(Home home) {
        return home.directory().resolve("serve");
    }

    private static Path passwordFile(Home home) {
        return directory(home).resolve("password");
    }

    private static boolean hasPassword(Home home) {
        return passwordFile(home).toFile().exists();
    }

    private static Credentials draw(Home home) {
        Credentials credentials = Password.drawn();
        Password.of(credentials).keepIn(passwordFile(home));
        return credentials;
    }

    /** By which terminals know this server. */
    public Fingerprint fingerprint() {
        return key.fingerprint();
    }

    /** The name and password, if they were made just now; what is kept does not lead back to them. */
    public Optional<Credentials> drawn() {
        return drawn;
    }

    public InetSocketAddress address() {
        return server.address();
    }

    private Socket connect(String kind, DataInputStream terminal) throws IOException {
        Loopback inside = Notice.find(home)
                .map(Loopback::new)
                .orElseThrow(() -> new IOException("nobody has the records open just now"));
        return switch (kind) {
            case ThroughTunnel.SYNC -> inside.line();
            case ThroughTunnel.RECORDS -> records(inside, terminal);
            default -> throw new IOException("there is no such thing here");
        };
    }

    private static Socket records(Loopback inside, DataInputStream terminal) throws IOException {
        Knock knock = Knock.read(terminal);
        Socket database = inside.toDatabase();
        database.getOutputStream()
                .write(knock.as(Rights.TERMINAL, inside.notice().secret()));
        return database;
    }

    @Override
    public void close() {
        server.close();
    }
}
