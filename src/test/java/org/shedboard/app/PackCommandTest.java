package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.app.CommandRoom.Said;
import org.shedboard.files.DayFile;
import org.shedboard.files.PlanFile;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.check.PlanCheck;

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

    @Test
    void a_plan_found_within_a_time_can_be_had_again_by_its_seed_and_tries() throws Exception {
        long begun = System.nanoTime();
        Plan plan = accepted(pack(DAY, "--seconds", "0.6"));
        assertTrue(System.nanoTime() - begun < 5_000_000_000L);
        Plan again =
                accepted(pack(DAY, "--seed", String.valueOf(plan.seed()), "--tries", String.valueOf(plan.tries())));
        assertEquals(plan.withMillis(0), again.withMillis(0));
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

    @Test
    void whoever_interrupts_gets_the_best_plan_so_far_and_only_that() {
        List<Plan> printed = new ArrayList<>();
        PackRun run = new PackRun(problem, printed::add);
        run.begin();
        run.interrupt();
        run.interrupt();
        assertEquals(1, printed.size());
        assertEquals("", PlanCheck.of(problem, printed.get(0)).toString());
    }
}
