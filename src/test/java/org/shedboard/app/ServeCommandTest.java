package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.app.CommandRoom.Said;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The demonstration served by a process of its own, and a terminal that joins it by commands. */
@Timeout(120)
class ServeCommandTest {
    @TempDir
    private Path home;

    @TempDir
    private Path away;

    private CommandRoom terminal;
    private String server;
    private Process process;
    private JsonNode told;

    @BeforeEach
    void serve() throws IOException {
        CommandRoom.withDemonstration(home);
        terminal = CommandRoom.empty(away);
        try (ServerSocket free = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            server = "127.0.0.1:" + free.getLocalPort();
        }
        start();
    }

    private void start(String... more) throws IOException {
        List<String> command = Stream.concat(
                        Stream.of(
                                Path.of(System.getProperty("java.home"), "bin", "java")
                                        .toString(),
                                "-XX:TieredStopAtLevel=1",
                                "-cp",
                                System.getProperty("java.class.path"),
                                Main.class.getName(),
                                "--home",
                                home.toString(),
                                "--demo",
                                "--json",
                                "serve",
                                "--listen",
                                server),
                        Stream.of(more))
                .toList();
        process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        told = JsonMapper.builder().build().readTree(answer(process.inputReader(StandardCharsets.UTF_8)));
    }

    /** Up to the line that closes it; the process goes on. */
    private static String answer(BufferedReader out) throws IOException {
        StringBuilder answer = new StringBuilder();
        String line = out.readLine();
        while (line != null && !line.equals("}")) {
            answer.append(line);
            line = out.readLine();
        }
        return answer.append('}').toString();
    }

    @AfterEach
    void stop() throws InterruptedException {
        process.destroy();
        process.waitFor();
    }

    private String fingerprint() {
        return told.get("fingerprint").asString();
    }

    private Path passwordFile(String password) throws IOException {
        return Files.writeString(away.resolve("password"), told.get("name").asString() + "\n" + password + "\n");
    }

    private Said join(String fingerprint, Path passwordFile) {
        return terminal.run("join", server, "--fingerprint", fingerprint, "--password-file", passwordFile.toString());
    }

    private Said atServer(String... words) {
        return terminal.run(
                Stream.concat(Stream.of("--at-server", server, "--at", CommandRoom.MORNING), Stream.of(words))
                        .toArray(String[]::new));
    }

    @Test
    void a_terminal_that_joined_sees_and_changes_the_shop() throws Exception {
        Said joined = join(fingerprint(), passwordFile(told.get("password").asString()));
        assertEquals(0, joined.status(), joined.err());
        assertEquals("%s is known here now; start with: shedboard --at-server %1$s%n".formatted(server), joined.out());
        assertTrue(atServer("day").out().contains("Quillgate"));
        assertEquals(
                0,
                atServer("promise", "7", "--say", "16:07", "--to", "Quillgate", "--why", "parts")
                        .status());
        assertTrue(atServer("day").out().contains("16:07"));
    }

    /** Work and hours of all sorts, which the database's rights for terminals have to leave room for. */
    @Test
    void whatever_is_done_in_the_shed_can_be_done_from_a_terminal() throws Exception {
        join(fingerprint(), passwordFile(told.get("password").asString()));
        for (String command : List.of(
                "pause Tobin",
                "start Tobin",
                "finish Wren",
                "break Jory meal",
                "stop Jory",
                "other Jory paperwork",
                "leave Jory",
                "hold 9 --for parts",
                "errand Tobin paperwork --from 15:00 --minutes 20",
                "stock count belt-deck-wide 2",
                "add-work 7 battery")) {
            Said said = atServer(command.split(" "));
            assertEquals(0, said.status(), command + ": " + said.err());
        }
        Said struck = terminal.piped(
                "2468\n",
                "--at-server",
                server,
                "--at",
                CommandRoom.MORNING,
                "correct",
                "C3042",
                "--by",
                "Marnie",
                "--why",
                "was at tea",
                "--strike");
        assertEquals(0, struck.status(), struck.err());
    }

    @Test
    void at_a_terminal_the_fingerprint_is_compared_and_the_password_typed_unseen() {
        String name = told.get("name").asString();
        String password = told.get("password").asString();
        Said day = terminal.typing(
                "yes\n" + name + "\n", List.of(password), "--at-server", server, "--at", CommandRoom.MORNING, "day");
        assertEquals(0, day.status(), day.err());
        assertTrue(day.out().contains("Quillgate"), day.out());
        assertTrue(day.out().replace(" ", "").contains(fingerprint()), day.out());
        assertFalse(day.out().contains(password));
    }

    @Test
    void who_does_not_say_yes_sends_nothing() {
        Said said = terminal.typing("no\n", List.of("never asked"), "--at-server", server, "day");
        assertEquals("Nothing was joined and nothing was sent.\n", said.err());
        assertFalse(Files.exists(away.resolve("servers")));
    }

    @Test
    void a_wrong_fingerprint_is_refused_before_the_password_is_read() {
        Said said = join("0".repeat(64), away.resolve("no such file"));
        assertEquals(1, said.status());
        assertTrue(said.err().startsWith("The server at %s has another fingerprint".formatted(server)), said.err());
    }

    @Test
    void a_wrong_password_is_refused_and_not_kept() throws Exception {
        Said said = join(fingerprint(), passwordFile("wrong"));
        assertEquals(1, said.status());
        assertEquals(1, said.complaints().size());
        assertFalse(Files.exists(away.resolve("servers")));
    }

    @Test
    void nobody_is_forgotten_and_no_shop_loaded_from_a_terminal() throws Exception {
        join(fingerprint(), passwordFile(told.get("password").asString()));
        Said said = terminal.piped(
                "2468\n",
                "--at-server",
                server,
                "--at",
                CommandRoom.MORNING,
                "forget",
                "Ashenfold",
                "--yes",
                "--by",
                "Marnie");
        assertEquals(1, said.status());
        assertEquals(
                "The records: nobody can be forgotten from here; do it at the machine that has the records.\n",
                said.err());
        Path shop = Files.writeString(away.resolve("shop.json"), LoadCommandTest.SMALL_SHOP);
        assertEquals(
                1, terminal.run("--at-server", server, "load", shop.toString()).status());
    }

    @Test
    void the_key_stays_and_the_password_is_shown_once() throws Exception {
        String before = fingerprint();
        String password = told.get("password").asString();
        process.destroy();
        process.waitFor();
        assertFalse(Files.exists(Homes.demonstration(home).resolve("owner")), "it was not closed in order");
        start();
        assertEquals(before, fingerprint());
        assertTrue(told.get("password").isNull());
        process.destroy();
        process.waitFor();
        start("--new-password");
        assertEquals(before, fingerprint());
        assertNotEquals(password, told.get("password").asString());
    }

    @Test
    void only_one_place_can_be_meant() {
        assertEquals(
                "Only one of --demo, --at-server and --db can be meant.",
                terminal.run("--demo", "--at-server", server, "day")
                        .complaints()
                        .get(0));
        assertEquals(
                "Only records in this machine's own home can be served.\n",
                terminal.run("--at-server", server, "serve").err());
    }

    @Test
    void where_there_is_no_shop_none_is_served() {
        assertTrue(terminal.run("serve").err().startsWith("There is no shop in"));
    }
}
