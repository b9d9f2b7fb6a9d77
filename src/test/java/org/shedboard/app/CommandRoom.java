package org.shedboard.app;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A home in which commands are typed, without a terminal. The demonstration is made once and then copied. */
final class CommandRoom {
    static final String MORNING = "2026-05-12T09:40";

    private static final int PROCESSORS = 2;

    private final Path home;
    private final boolean watched;

    private CommandRoom(Path home, boolean watched) {
        this.home = home;
        this.watched = watched;
    }

    /** What a command left behind. */
    record Said(int status, String out, String err) {
        JsonNode json() {
            return JsonMapper.builder().build().readTree(out);
        }

        List<String> complaints() {
            return err.lines().toList();
        }
    }

    private static final class Prepared {
        static final Path HOME = make();

        private static Path make() {
            try {
                Path home = Files.createTempDirectory("prepared");
                Demonstration.ready(home);
                return home;
            } catch (IOException broken) {
                throw new UncheckedIOException(broken);
            }
        }
    }

    static CommandRoom empty(Path home) {
        return new CommandRoom(home, false);
    }

    /** The same, with standard error going to a terminal. */
    CommandRoom watched() {
        return new CommandRoom(home, true);
    }

    static CommandRoom withDemonstration(Path home) throws IOException {
        copy(Homes.demonstration(Prepared.HOME), Homes.demonstration(home));
        return new CommandRoom(home, false);
    }

    private static void copy(Path from, Path to) throws IOException {
        Files.createDirectories(to);
        try (Stream<Path> files = Files.list(from)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, to.resolve(file.getFileName()));
            }
        }
    }

    Path home() {
        return home;
    }

    /** Types a command about the demonstration, as it is on its morning. */
    Said demo(String... words) {
        return at(MORNING, words);
    }

    /** The same, signed with Marnie's PIN. */
    Said signed(String... words) {
        List<String> all = new ArrayList<>(List.of(words));
        all.addAll(List.of("--demo", "--at", MORNING));
        return piped("2468\n", all.toArray(String[]::new));
    }

    Said at(String moment, String... words) {
        List<String> all = new ArrayList<>(List.of(words));
        all.addAll(List.of("--demo", "--at", moment));
        return run(all.toArray(String[]::new));
    }

    Said run(String... words) {
        return piped("", words);
    }

    Said piped(String input, String... words) {
        return run(input, Optional.empty(), words);
    }

    /** With a console at which these lines are typed unseen. */
    Said typing(List<String> lines, String... words) {
        return typing("", lines, words);
    }

    /** With a console at which some lines are typed as usual, and others unseen. */
    Said typing(String seen, List<String> unseen, String... words) {
        Iterator<String> next = unseen.iterator();
        return run(
                seen,
                Optional.of(prompt -> next.hasNext() ? Optional.of(next.next().toCharArray()) : Optional.empty()),
                words);
    }

    private Said run(String input, Optional<PinReader.Hidden> console, String... words) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Surroundings around = new Surroundings(
                new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                Map.of("SHEDBOARD_HOME", home.toString()),
                home.resolve("nobody"),
                false,
                console,
                watched,
                PROCESSORS);
        int status = Shedboard.run(List.of(words), around);
        return new Said(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }
}
