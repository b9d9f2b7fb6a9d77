package org.shedboard.wire;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

@Timeout(60)
class TunnelTest {
    private static final String HOST = "127.0.0.1";

    @TempDir
    private Path directory;

    private final Credentials credentials = Password.drawn();
    private final List<Duration> pauses = new CopyOnWriteArrayList<>();
    private final List<String> wanted = new CopyOnWriteArrayList<>();
    private ServerSocket echo;
    private ShopKey key;
    private TunnelServer server;

    @BeforeEach
    void start() throws IOException {
        echo = new ServerSocket(0, 5, InetAddress.getByName(HOST));
        Splice.run("echo", this::echo);
        key = ShopKey.in(directory.resolve("key.p12"));
        server = serve(key);
    }

    private TunnelServer serve(ShopKey by) throws IOException {
        InetSocketAddress any = new InetSocketAddress(HOST, 0);
        return TunnelServer.start(any, by, Password.of(credentials), (kind, in) -> target(kind), pauses::add);
    }

    private Socket target(String kind) throws IOException {
        wanted.add(kind);
        return new Socket(echo.getInetAddress(), echo.getLocalPort());
    }

    private void echo() {
        try {
            while (true) {
                Socket one = echo.accept();
                Splice.run("echoed", () -> answer(one));
            }
        } catch (IOException closed) {
            // the test is over
        }
    }

    private static void answer(Socket socket) {
        try (socket) {
            socket.getInputStream().transferTo(socket.getOutputStream());
        } catch (IOException gone) {
            // as it wants
        }
    }

    @AfterEach
    void stop() throws IOException {
        server.close();
        echo.close();
    }

    private Tunnel tunnel(Fingerprint pinned, Credentials said) {
        return new Tunnel(HOST, server.address().getPort(), new Ticket(pinned, said));
    }

    private WireFailure.Kind refusal(Fingerprint pinned, Credentials said) {
        return assertThrows(
                        WireFailure.class, () -> tunnel(pinned, said).open("x").close())
                .kind();
    }

    @Test
    void who_knows_key_and_password_is_let_in() throws IOException {
        try (Socket socket = tunnel(key.fingerprint(), credentials).open("records")) {
            byte[] sent = "a long way".getBytes(StandardCharsets.UTF_8);
            socket.getOutputStream().write(sent);
            assertArrayEquals(sent, socket.getInputStream().readNBytes(sent.length));
        }
        assertEquals(List.of("records"), wanted);
        assertEquals(List.of(), pauses);
    }

    @Test
    void whoever_answers_with_another_key_is_told_nothing() throws IOException {
        ShopKey other = ShopKey.in(directory.resolve("other.p12"));
        WireFailure failure = assertThrows(
                WireFailure.class,
                () -> tunnel(other.fingerprint(), credentials).open("records"));
        assertEquals(WireFailure.Kind.WRONG_KEY, failure.kind());
        assertTrue(failure.getMessage().contains(key.fingerprint().toString()), failure.getMessage());
        assertEquals(List.of(), wanted);
    }

    @Test
    void each_wrong_password_is_refused_and_waits_longer() {
        Credentials wrong = new Credentials(credentials.name(), "wrong");
        assertEquals(WireFailure.Kind.WRONG_PASSWORD, refusal(key.fingerprint(), wrong));
        assertEquals(WireFailure.Kind.WRONG_PASSWORD, refusal(key.fingerprint(), wrong));
        assertEquals(List.of(Duration.ofMillis(250), Duration.ofMillis(500)), pauses);
        assertEquals(List.of(), wanted);
    }

    @Test
    void the_fingerprint_can_be_looked_at_before_anything_is_said() {
        assertEquals(key.fingerprint(), Tunnel.lookAt(HOST, server.address().getPort()));
        assertEquals(List.of(), pauses);
        assertEquals(List.of(), wanted);
    }

    @Test
    void who_does_not_speak_the_language_gets_nothing() throws IOException {
        try (Socket plain = new Socket(HOST, server.address().getPort())) {
            plain.getOutputStream().write("GET / HTTP/1.1\r\n\r\n".getBytes(StandardCharsets.US_ASCII));
            String said = said(plain.getInputStream());
            assertFalse(said.contains("shed"), said);
        }
        assertEquals(List.of(), wanted);
    }

    private static String said(InputStream in) {
        try {
            return new String(in.readAllBytes(), StandardCharsets.ISO_8859_1);
        } catch (IOException reset) {
            return "";
        }
    }

    @Test
    void nobody_at_the_address_is_told_in_one_line() {
        Tunnel tunnel = tunnel(key.fingerprint(), credentials);
        server.close();
        WireFailure failure = assertThrows(WireFailure.class, () -> tunnel.open("records"));
        assertEquals(WireFailure.Kind.UNREACHABLE, failure.kind());
        assertEquals(1, failure.getMessage().lines().count());
    }

    /** It ends while the wrong password is paused for, so that no answer comes. */
    @Test
    void a_server_that_ends_before_it_answers_is_not_taken_to_refuse() throws IOException {
        server.close();
        server = TunnelServer.start(
                server.address(), key, Password.of(credentials), (kind, in) -> target(kind), any -> server.close());
        Credentials wrong = new Credentials(credentials.name(), "wrong");
        assertEquals(WireFailure.Kind.UNREACHABLE, refusal(key.fingerprint(), wrong));
    }

    @Test
    void closing_the_server_puts_everybody_out() throws IOException {
        try (Socket socket = tunnel(key.fingerprint(), credentials).open("records")) {
            server.close();
            assertEquals("", said(socket.getInputStream()));
        }
    }

    @Test
    void a_ticket_is_kept_and_found_again() {
        Path file = directory.resolve("ticket");
        Ticket ticket = new Ticket(key.fingerprint(), credentials);
        assertTrue(Ticket.in(file).isEmpty());
        ticket.keepIn(file);
        assertEquals(ticket, Ticket.in(file).orElseThrow());
        assertNotEquals(ticket, new Ticket(key.fingerprint(), Password.drawn()));
    }
}
