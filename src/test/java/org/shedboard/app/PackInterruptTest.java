package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shedboard.files.DayFile;
import org.shedboard.files.PlanFile;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.check.PlanCheck;
import org.shedboard.testing.Tmux;

/** Packing in a real terminal, and what comes out when somebody does not want to wait for the end. */
@Tag("e2e")
@Timeout(120)
class PackInterruptTest {
    @TempDir
    Path directory;

    @ParameterizedTest(name = "{0}")
    @CsvSource({"INT, 130", "TERM, 143"})
    void a_signal_ends_the_search_and_the_best_plan_so_far_is_printed_whole(String signal, int status)
            throws Exception {
        Files.writeString(directory.resolve("day.json"), PackCommandTest.crowded());
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        Files.writeString(
                directory.resolve("start"),
                "echo $$ > pid; exec " + java + " -XX:+UseSerialGC -cp '" + System.getProperty("java.class.path")
                        + "' org.shedboard.app.Main pack day.json --seed 6 --tries 1000000000000 > plan.json\n");
        try (Tmux tmux = new Tmux(80, 24)) {
            tmux.enter("cd " + directory + "; clear; sh start; echo status $?");
            tmux.awaitText(" tries");
            if (signal.equals("INT")) {
                tmux.press("C-c");
            } else {
                new ProcessBuilder(
                                "kill",
                                "-TERM",
                                Files.readString(directory.resolve("pid")).strip())
                        .start()
                        .waitFor();
            }
            String screen = tmux.awaitText("status " + status);
            assertFalse(screen.contains(" tries"), screen);
        }
        Problem problem = DayFile.read(PackCommandTest.crowded()).expectValue();
        Plan plan =
                PlanFile.read(Files.readString(directory.resolve("plan.json"))).expectValue();
        assertEquals("", PlanCheck.of(problem, plan).toString());
        assertEquals(6, plan.seed());
        assertTrue(plan.tries() > 0, plan::toString);
    }
}
