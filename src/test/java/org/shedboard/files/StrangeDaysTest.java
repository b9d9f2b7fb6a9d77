package org.shedboard.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.shedboard.pack.PackedPlans;
import org.shedboard.pack.Problem;
import org.shedboard.pack.fault.Fault;

/** Whatever a file says, there is a plan that the checker accepts or one clear line a fault; never a trace, never a hang. */
class StrangeDaysTest {
    private static final int TEXTS = 1000 * Integer.getInteger("proof.scale", 1);
    private static final int TRIES = 10;
    /** Only what never ends takes so long. */
    private static final Duration HANGS = Duration.ofSeconds(60);

    private static final Path CORPUS = Path.of("src/test/resources/corpus");
    private static final int LONGEST_LINE = 500;
    private static final Pattern INNARDS =
            Pattern.compile("Exception|\\bjava\\.|tools\\.jackson|org\\.shedboard|@[0-9a-f]{6}");

    @Test
    void a_strange_file_is_packed_or_refused_line_by_line_seeds_from_0() {
        int packed = 0;
        int refused = 0;
        for (int seed = 0; seed < TEXTS; seed++) {
            String name = "seed " + seed;
            String text = StrangeDays.of(seed);
            boolean isPacked = assertTimeoutPreemptively(HANGS, () -> isPacked(name, text), name);
            packed += isPacked ? 1 : 0;
            refused += isPacked ? 0 : 1;
        }
        assertTrue(packed > TEXTS / 5, "only " + packed + " files were packed");
        assertTrue(refused > TEXTS / 5, "only " + refused + " files were refused");
    }

    static List<Path> corpus() throws IOException {
        try (Stream<Path> files = Files.list(CORPUS)) {
            return files.filter(file -> file.toString().endsWith(".json"))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("corpus")
    void a_file_that_once_went_wrong_is_packed_or_refused(Path file) throws IOException {
        String text = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
        assertTimeoutPreemptively(HANGS, () -> isPacked(file.toString(), text), file.toString());
    }

    private static boolean isPacked(String name, String text) {
        Reading<Problem> reading;
        try {
            reading = DayFile.read(text);
        } catch (RuntimeException | StackOverflowError thrown) {
            throw new AssertionError(name + " is not even refused", thrown);
        }
        reading.faults().forEach(fault -> assertIsClear(name, fault));
        reading.value().ifPresent(problem -> pack(name, problem));
        return reading.value().isPresent();
    }

    private static void assertIsClear(String name, Fault fault) {
        String line = fault.toString();
        assertFalse(line.isBlank() || fault.what().isBlank(), name);
        assertEquals(1, line.lines().count(), () -> name + ": " + line);
        assertTrue(line.length() <= LONGEST_LINE, () -> name + ": " + line);
        assertFalse(INNARDS.matcher(line).find(), () -> name + ": " + line);
    }

    private static void pack(String name, Problem problem) {
        try {
            PackedPlans.first(problem);
            PackedPlans.pack(problem, 1, TRIES);
            if (problem.posted().isPresent()) {
                PackedPlans.follow(problem);
            }
        } catch (RuntimeException | StackOverflowError | AssertionError thrown) {
            throw new AssertionError(name + " is not packed", thrown);
        }
    }
}
