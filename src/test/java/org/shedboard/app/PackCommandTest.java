package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.shedboard.app.CommandRoom.Said;
import org.shedboard.app.command.PackTerms;
import org.shedboard.app.command.SearchLimit;
import org.shedboard.files.DayFile;
import org.shedboard.files.PlanFile;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.check.PlanCheck;
import org.shedboard.pack.search.Packer;
import org.shedboard.words.Words;

class PackCommandTest {
    private static final String DAY = """
            {"now": 0, "horizon": 2000,
             "places": [{"id": "H1", "kind": "hoist", "ratedKg": 900}, {"id": "H2", "kind": "hoist"}, {"id": "W1", "kind": "wash"}],
             "people": [{"id": "P1", "skills": ["service", "wash"], "shifts": [[0, 240], [270, 480]]},
                        {"id": "P2", "skills": ["wash"], "shifts": [[30, 480]]}],
             "jobs": [{"id": "J1", "promise": 200, "massKg": 1400, "stays": [
                         {"places": ["wash"], "tasks": [{"id": "wash", "skill": "wash", "handsOn": 40}]},
                         {"places": ["hoist"], "tasks": [{"id": "drain", "skill": "service", "handsOn": 8, "unattended": 20},
                                                         {"id": "fill", "skill": "service", "handsOn": 10}]}]},
                      {"id": "J2", "promise": 120, "stays": [
                         {"places": ["wash"], "tasks": [{"id": "wash", "skill": "wash", "handsOn": 15}]},
                         {"places": ["hoist"], "tasks": [{"id": "grease", "skill": "service", "handsOn": 45}]}]},
                      {"id": "J3", "stays": [{"places": ["hoist"], "tasks": [{"id": "grease", "skill": "service", "handsOn": 25}]}]}]}
            """;

    @TempDir
    Path directory;

    private final Problem problem = DayFile.read(DAY).value().orElseThrow();

    private Said pack(String text, String... options) throws Exception {
        Path file = Files.writeString(directory.resolve("day.json"), text);
        List<String> words = new ArrayList<>(List.of("pack", file.toString()));
        words.addAll(List.of(options));
        return CommandRoom.empty(directory).run(words.toArray(String[]::new));
    }

    private Plan accepted(Said said) {
        assertEquals(0, said.status(), said.err());
        assertEquals("", said.err());
        Plan plan = PlanFile.read(said.out()).value().orElseThrow();
        assertEquals("", PlanCheck.of(problem, plan).toString());
        return plan;
    }

    @Test
    void the_plan_that_is_printed_obeys_and_is_the_same_each_time() throws Exception {
        Plan plan = accepted(pack(DAY, "--tries", "300", "--seed", "5"));
        assertEquals(5, plan.seed());
        assertEquals(300, plan.tries());
        assertEquals(
                plan.withMillis(0),
                accepted(pack(DAY, "--tries", "300", "--seed", "5")).withMillis(0));
    }

    /** Twenty-four more machines: nobody proves the cost of that least in a second. */
    static String crowded() {
        StringBuilder more = new StringBuilder();
        for (int job = 4; job < 28; job++) {
            more.append(
                    ",{\"id\": \"J%s\", \"promise\": %s, \"stays\": [{\"places\": [\"hoist\"], \"tasks\": [{\"id\": \"t\", \"skill\": \"service\", \"handsOn\": %s}]}]}"
                            .formatted(job, 300 - 7 * job, 20 - job % 9));
        }
        int end = DAY.lastIndexOf(']');
        return DAY.substring(0, end) + more + DAY.substring(end);
    }

    @ParameterizedTest(name = "{0} threads")
    @ValueSource(ints = {2, 3, 7})
    void the_number_of_threads_changes_nothing(int threads) throws Exception {
        String[] tries = {"--tries", "23456", "--seed", "3", "--threads"};
        Plan alone = accepted(pack(DAY, with(tries, "1"))).withMillis(0);
        Plan together =
                accepted(pack(DAY, with(tries, String.valueOf(threads)))).withMillis(0);
        assertEquals(alone, together);
    }

    private static String[] with(String[] words, String last) {
        String[] all = Arrays.copyOf(words, words.length + 1);
        all[words.length] = last;
        return all;
    }

    @Test
    void a_plan_found_within_a_time_says_by_what_seed_and_after_how_many_tries() throws Exception {
        long begun = System.nanoTime();
        Plan plan = accepted(pack(DAY, "--seconds", "0.6", "--seed", "4"));
        assertTrue(System.nanoTime() - begun < 5_000_000_000L);
        assertEquals(4, plan.seed());
        assertTrue(plan.tries() > 0, plan::toString);
        assertFalse(Packer.first(problem).isBetterThan(plan));
    }

    @Test
    void json_is_printed_with_or_without_being_asked_for() throws Exception {
        assertEquals(
                accepted(pack(DAY, "--tries", "20")).withMillis(0),
                accepted(pack(DAY, "--tries", "20", "--json")).withMillis(0));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "--tries 5 --seconds 1|--tries and --seconds exclude each other: a search ends after so many tries or after so long.",
                "--text --json|--text and --json exclude each other: the plan is printed in one form.",
                "--tries -1|--tries cannot be negative.",
                "--seconds -1|--seconds goes from 0 to 86400.",
                "--seconds NaN|--seconds goes from 0 to 86400.",
                "--threads 0|--threads goes from 1 to 64.",
                "--threads 65|--threads goes from 1 to 64.",
                "--seed x|Invalid value for option '--seed': 'x' is not a long",
            })
    void what_makes_no_sense_is_said_in_a_line_before_anything_is_read(String options, String sentence) {
        List<String> words = new ArrayList<>(List.of("pack", "nowhere.json"));
        words.addAll(List.of(options.split(" ")));
        Said said = CommandRoom.empty(directory).run(words.toArray(String[]::new));
        assertEquals(2, said.status());
        assertEquals("", said.out());
        assertEquals(sentence, said.complaints().get(0));
    }

    @Test
    void whoever_watches_sees_one_line_that_is_gone_at_the_end() throws Exception {
        Path file = Files.writeString(directory.resolve("day.json"), DAY);
        Said said =
                CommandRoom.empty(directory).watched().run("pack", file.toString(), "--seconds", "1", "--threads", "2");
        assertEquals(0, said.status());
        assertFalse(said.err().contains("\n"), said.err());
        String[] shown = said.err().split("\r", -1);
        assertTrue(shown[1].matches("cost \\d+, at least \\d+, \\d+ tries *"), said.err());
        assertTrue(shown[shown.length - 2].isBlank(), said.err());
        assertEquals("", shown[shown.length - 1]);
    }

    @Test
    void no_time_at_all_still_gives_a_plan() throws Exception {
        accepted(pack(DAY, "--seconds", "0"));
    }

    @Test
    void a_day_may_be_piped_in() {
        accepted(CommandRoom.empty(directory).piped(DAY, "pack", "-", "--tries", "10"));
    }

    @Test
    void the_plan_as_text_names_every_task() throws Exception {
        Said said = pack(DAY, "--text", "--tries", "50");
        assertEquals(0, said.status());
        assertTrue(said.out().lines().anyMatch(line -> line.matches(" +\\d+ +\\d+  H2  J1  drain")), said.out());
        assertTrue(said.out().startsWith("cost "), said.out());
        assertTrue(said.out().lines().anyMatch(line -> line.matches("W1 +J[12].*J[12]░+.*")), said.out());
    }

    @Test
    void every_fault_is_a_line_and_there_is_no_plan() throws Exception {
        String bad = DAY.replace("\"id\": \"fill\"", "\"id\": \"fill\", \"after\": [\"dran\"]")
                .replace("\"horizon\": 2000", "\"horizon\": \"x\"");
        Said said = pack(bad);
        assertEquals(2, said.status());
        assertEquals("", said.out());
        assertEquals(
                List.of(
                        "horizon: is \"x\", not a whole number",
                        "jobs[0].stays[1].tasks[1].after[0]: no task \"dran\" in this stay"),
                said.complaints());
    }

    @Test
    void the_day_of_the_readme_can_be_packed() throws Exception {
        String readme = Files.readString(Path.of("README.md"));
        String day = readme.substring(readme.indexOf("```json") + 7);
        Said said = pack(day.substring(0, day.indexOf("```")), "--tries", "50");
        assertEquals("", said.err());
        assertEquals(List.of(), PlanFile.read(said.out()).expectValue().unplaced());
    }

    @Test
    void an_odd_name_comes_back_as_it_was() throws Exception {
        for (String name : List.of("\\ud800", "\\u0000", "\\ud83d\\ude9c", "\\u001b[2J", "\\\"")) {
            Said said = pack(DAY.replace("\"J1\"", "\"" + name + "\""), "--tries", "5");
            assertEquals(0, said.status(), said.err());
            assertTrue(
                    said.out().toLowerCase(Locale.ROOT).contains("\"" + name.toLowerCase(Locale.ROOT) + "\""),
                    said.out());
        }
    }

    @Test
    void of_thousands_of_faults_the_first_are_told_and_the_rest_counted() throws Exception {
        String jobs = String.join(",", Collections.nCopies(20_000, "{\"id\": 7}"));
        Said said = pack("{\"now\": 0, \"horizon\": 10, \"places\": [], \"people\": [], \"jobs\": [" + jobs + "]}");
        assertEquals(2, said.status());
        assertEquals("", said.out());
        assertEquals(501, said.complaints().size());
        assertEquals("jobs[0].id: is 7, not a text", said.complaints().get(0));
        assertEquals("jobs[0].stays: is missing", said.complaints().get(1));
        assertEquals("… and 39500 more faults", said.complaints().get(500));
    }

    @Test
    void a_file_that_is_no_text_is_refused_in_one_line() throws Exception {
        Path file = Files.write(directory.resolve("day.json"), new byte[] {'{', (byte) 0xff, '}'});
        Said said = CommandRoom.empty(directory).run("pack", file.toString());
        assertEquals(2, said.status());
        assertEquals(List.of("the file is not UTF-8 text"), said.complaints());
    }

    /** Sure is over by its promise for certain when it comes first; the usual plan has it after Wild, since that costs less. */
    private static String risky(double spread) {
        return """
                {"now": 0, "horizon": 3000, "places": [],
                 "people": [{"id": "Pat", "skills": ["service"], "shifts": [[0, 3000]]}],
                 "jobs": [{"id": "Wild", "weight": 3, "stays": [{"places": [], "tasks": [
                             {"id": "do", "skill": "service", "handsOn": 60, "spread": SPREAD}]}]},
                          {"id": "Sure", "promise": 95, "stays": [{"places": [], "tasks": [
                             {"id": "do", "skill": "service", "handsOn": 30}]}]}]}
                """.replace("SPREAD", Double.toString(spread));
    }

    @ParameterizedTest(name = "{0} threads")
    @ValueSource(ints = {1, 3})
    void against_risk_the_plan_that_keeps_more_promises_is_printed_and_what_it_gains_is_said(int threads)
            throws Exception {
        Said said = pack(risky(0.5), "--against-risk", "--tries", "4000", "--threads", String.valueOf(threads));
        assertEquals(
                List.of("Against risk: it keeps 1.00 of 1 promises on the mean of 2000 drawn days, the usual plan 0.57"
                        + " (error of the gain 0.01)."),
                said.complaints());
        Plan plan = PlanFile.read(said.out()).expectValue();
        assertEquals(0, plan.findTask("Sure", 0, "do").orElseThrow().start());
        assertEquals(
                "", PlanCheck.of(DayFile.read(risky(0.5)).expectValue(), plan).toString());
    }

    @Test
    void against_risk_the_usual_plan_is_printed_where_none_keeps_more() throws Exception {
        Said usual = pack(risky(0), "--tries", "4000");
        Said said = pack(risky(0), "--against-risk", "--tries", "4000");
        assertEquals(
                List.of("Against risk: no plan was found that keeps more promises than the usual one, 1.00 of 1 on the"
                        + " mean of 2000 drawn days."),
                said.complaints());
        assertEquals(
                PlanFile.read(usual.out()).expectValue().withMillis(0),
                PlanFile.read(said.out()).expectValue().withMillis(0));
    }

    @Test
    void against_risk_the_text_begins_with_what_is_gained() throws Exception {
        Said said = pack(risky(0.5), "--against-risk", "--tries", "4000", "--text");
        assertEquals("", said.err());
        assertTrue(said.out().startsWith("Against risk: it keeps 1.00 of 1 promises"), said.out());
    }

    @ParameterizedTest(name = "against risk: {0}")
    @ValueSource(booleans = {false, true})
    void whoever_interrupts_gets_the_best_plan_so_far_and_only_that(boolean againstRisk) throws Exception {
        List<Plan> printed = new ArrayList<>();
        List<String> remarks = new ArrayList<>();
        PackRun run = new PackRun(
                problem,
                new PackTerms(SearchLimit.ofTries(Long.MAX_VALUE), 9, 2, againstRisk),
                progress(),
                (plan, remark) -> {
                    printed.add(plan);
                    remarks.addAll(remark.stream().toList());
                });
        Thread running = new Thread(run::run);
        running.start();
        while (!run.hasPlan()) {
            Thread.onSpinWait();
        }
        run.interrupt();
        run.interrupt();
        running.join();
        assertEquals(1, printed.size());
        assertEquals("", PlanCheck.of(problem, printed.get(0)).toString());
        assertEquals(9, printed.get(0).seed());
        assertEquals(againstRisk ? List.of(Words.say("command.pack.risk_cut")) : List.of(), remarks);
    }

    @Test
    void whoever_interrupts_before_there_is_a_plan_gets_none() {
        List<Plan> printed = new ArrayList<>();
        new PackRun(
                        problem,
                        new PackTerms(SearchLimit.ofTries(10), 1, 1, true),
                        progress(),
                        (plan, remark) -> printed.add(plan))
                .interrupt();
        assertEquals(List.of(), printed);
    }

    private static Progress progress() {
        return new Progress(new Voice(System.out, System.err, false), false);
    }
}
