package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shedboard.app.CommandRoom.Said;
import tools.jackson.databind.JsonNode;

/** A folder with a problem of each kind, through the command. Names and numbers are invented but where a source is named. */
class BenchCommandTest {
    private static final String DAY = """
            {"now": 0, "horizon": 500, "costs": {"flow": 1}, "places": [], "people": [{"id": "P", "skills": ["s"], "shifts": [[0, 500]]}],
             "jobs": [{"id": "A", "stays": [{"places": [], "tasks": [{"id": "t", "skill": "s", "handsOn": 30}]}]},
                      {"id": "B", "stays": [{"places": [], "tasks": [{"id": "t", "skill": "s", "handsOn": 10}]}]}]}
            """;

    /** The flow of {@link #DAY} is least when the short job goes first: 10 + 40. */
    private static final String PLAN = """
            {"cost": 50, "tasks": [{"job": "A", "stay": 0, "task": "t", "person": "P", "start": 10, "end": 40},
                                   {"job": "B", "stay": 0, "task": "t", "person": "P", "start": 0, "end": 10}]}
            """;

    /** ft06, Fisher and Thompson 1963; 55 is optimal. */
    private static final String JOB_SHOP = """
            6 6
            2 1 0 3 1 6 3 7 5 3 4 6
            1 8 2 5 4 10 5 10 0 10 3 4
            2 5 3 4 5 8 0 9 1 1 4 7
            1 5 0 5 2 5 3 3 4 8 5 9
            2 9 1 3 4 5 5 4 0 3 3 1
            1 3 3 3 5 9 0 10 4 4 2 1
            """;

    private static final String FLEXIBLE = "2 3\n2 1 1 4 2 0 5 2 7\n1 2 1 6 2 6\n";

    /** Ten jobs of one minute on one machine, all due at minute 1: 4×0 + 4×1 + 2×(2+…+7) + 8 + 9 = 75 is the least they are late. */
    private static final String TEN = "10 1\n" + "0 1\n".repeat(10);

    @TempDir
    Path directory;

    private Path folder;

    @BeforeEach
    void fill() throws IOException {
        folder = Files.createDirectory(directory.resolve("problems"));
        put("day.json", DAY);
        put("flexible.txt", FLEXIBLE);
        put("shop.txt", JOB_SHOP);
        put("ten.txt", TEN);
        put("due.csv", "instance,f10,best_known,reproduced\nten,10,75,yes\n");
        put("results.csv", "instance,lower_bound,best_known,source\nshop,55,55,F&T\nflexible,9,9,ours\n");
        put("best/day.plan.json", PLAN);
    }

    private void put(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    private Said bench(String... options) {
        List<String> words = new ArrayList<>(List.of("bench", folder.toString()));
        words.addAll(List.of(options));
        return CommandRoom.empty(directory).run(words.toArray(String[]::new));
    }

    private static List<String> done(Said said) {
        assertEquals(0, said.status(), said.err());
        assertEquals("", said.err());
        return said.out().lines().toList();
    }

    /** The line of that problem, with one blank between its cells. */
    private static String row(List<String> lines, String name) {
        return lines.stream()
                .filter(line -> line.matches(name + " +[-0-9].*"))
                .findFirst()
                .orElseThrow(() -> new AssertionError(name + " is not in\n" + String.join("\n", lines)))
                .replaceAll(" +", " ");
    }

    @Test
    void a_folder_of_all_kinds_is_packed_and_compared() {
        List<String> lines = done(bench("--tries", "3000", "--seeds", "2"));
        assertEquals(
                "problem jobs tasks best median worst at least gap % known gap % left tries/s",
                lines.get(0).replaceAll(" +", " "));
        assertTrue(row(lines, "day").matches("day 2 2 50 50 50 \\d+ [\\d.]+ 50 0.00 0 .*"), row(lines, "day"));
        assertTrue(
                row(lines, "flexible").matches("flexible 2 3 9 9 9 \\d+ [\\d.]+ 9 0.00 0 .*"), row(lines, "flexible"));
        assertTrue(row(lines, "shop").matches("shop 6 36 5[5-9] 5[5-9] 5[5-9] \\d+ [\\d.]+ 55 [\\d.]+ 0 .*"));
        assertTrue(row(lines, "ten").matches("ten 10 10 10 10 10 \\d+ [\\d.]+ - - 0 .*"), row(lines, "ten"));
        assertTrue(
                row(lines, "ten f10").matches("ten f10 10 10 75 75 75 \\d+ (-|[\\d.]+) 75 0.00 0 .*"),
                row(lines, "ten f10"));
        assertTrue(row(lines, "median").matches("median [\\d.]+ [\\d.]+"));
        assertTrue(row(lines, "mean").matches("mean [\\d.]+ [\\d.]+"));
        assertTrue(row(lines, "largest").matches("largest [\\d.]+ [\\d.]+"));
        String terms = lines.get(lines.size() - 1);
        assertTrue(terms.matches("problems: 5, seeds: 2, threads: 2; 3000 tries a search, [\\d.]+ s in all"), terms);
    }

    @Test
    void the_same_is_said_as_data() {
        JsonNode json = bench("--tries", "500", "--json", "--threads", "1").json();
        assertEquals(500, json.get("tries").asInt());
        assertTrue(json.get("seconds").isNull());
        assertEquals(1, json.get("threads").asInt());
        assertEquals(5, json.get("problems").size());
        JsonNode day = json.get("problems").get(0);
        assertEquals("day", day.get("problem").asString());
        assertEquals(50, day.get("best").asLong());
        assertEquals(50, day.get("known").asLong());
        assertEquals(0.0, day.get("gapToKnown").asDouble());
        assertEquals(4, json.get("gapToKnown").get("count").asInt());
        assertEquals(0, json.get("skipped").size());
    }

    @Test
    void what_cannot_be_packed_is_listed_with_the_reason() throws IOException {
        put("notes.md", "words");
        put("odd.csv", "a,b\n1,2\n");
        put("old/day.json", DAY);
        put("bad.json", DAY.replace("\"now\": 0", "\"now\": \"x\", \"then\": 1"));
        put("bad.txt", "2 2\n0 1 x 1\n");
        put("due.csv", "instance,f10\ngone,13\nshop,13\n");
        put("best/day.plan.json", PLAN.replace("\"start\": 10", "\"start\": 9"));
        put("best/shop.plan.json", "{");
        List<String> lines = done(bench("--tries", "50"));
        List<String> skipped =
                lines.stream().filter(line -> line.startsWith("skipped ")).toList();
        assertEquals(
                List.of(
                        "skipped bad.json: now: is \"x\", not a whole number; then: unknown key",
                        "skipped bad.txt: line 2 column 5: as a job shop: is x, not a machine; line 2 column 1: as a flexible job shop: the number of operations 0 is not from 1 to 10000"),
                skipped.subList(0, 2));
        assertTrue(skipped.get(2).startsWith("skipped best/day.plan.json: "), skipped.get(2));
        assertTrue(skipped.get(3).startsWith("skipped best/shop.plan.json: line 1 column 2"), skipped.get(3));
        assertEquals(
                List.of(
                        "skipped due.csv gone f13: no job shop gone.txt beside it",
                        "skipped due.csv shop f13: shop.txt has fewer than the ten jobs that due dates are for",
                        "skipped notes.md: no kind of file that can be packed (.json, .txt, .csv)",
                        "skipped odd.csv: a table with neither best known costs (instance, optimum or best_known) nor due dates (instance, f10)",
                        "skipped old: a folder"),
                skipped.subList(4, skipped.size()));
        assertTrue(row(lines, "day").matches("day 2 2 50 \\d+ [\\d.]+ - - 0 .*"), row(lines, "day"));
    }

    @Test
    void one_file_may_be_named_alone_and_is_known_by_what_stands_beside_it() {
        folder = folder.resolve("shop.txt");
        List<String> lines = done(bench("--tries", "100"));
        assertTrue(row(lines, "shop").matches("shop 6 36 \\d+ \\d+ [\\d.]+ 55 [\\d.]+ 0 .*"), row(lines, "shop"));
        assertEquals(6, lines.size());
    }

    @Test
    void a_file_named_alone_that_is_wrong_is_refused_with_all_its_faults() throws IOException {
        put("day.json", DAY.replace("\"now\": 0", "\"now\": \"x\", \"then\": 1, \"there\": 2"));
        folder = folder.resolve("day.json");
        Said said = bench();
        assertEquals(2, said.status());
        assertEquals("", said.out());
        assertEquals(3, said.complaints().size());
    }

    @Test
    void where_nothing_is_known_no_column_stands_for_it() throws IOException {
        folder = Files.createDirectory(directory.resolve("unknown"));
        put("day.json", DAY);
        List<String> lines = done(bench("--tries", "50"));
        assertFalse(lines.get(0).contains("known"), lines.get(0));
    }

    @Test
    void a_folder_with_nothing_to_pack_says_why() throws IOException {
        folder = Files.createDirectory(directory.resolve("nothing"));
        put("notes.md", "words");
        Said said = bench();
        assertEquals(1, said.status());
        assertTrue(said.out().contains("skipped notes.md: "), said.out());
        assertEquals(List.of("Nothing in " + folder + " can be packed."), said.complaints());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "--seeds 0|--seeds goes from 1 to 1000.",
                "--seconds 1 --tries 1|--tries and --seconds exclude each other: a search ends after so many tries or after so long.",
                "--threads 0|--threads goes from 1 to 64.",
            })
    void what_makes_no_sense_is_said(String options, String sentence) {
        Said said = bench(options.split(" "));
        assertEquals(2, said.status());
        assertEquals(sentence, said.complaints().get(0));
    }

    @Test
    void a_folder_that_is_not_there_is_said() {
        folder = directory.resolve("gone");
        Said said = bench();
        assertEquals(1, said.status());
        assertEquals(List.of("There is no file " + folder + "."), said.complaints());
    }
}
