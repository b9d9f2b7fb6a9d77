package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.testing.Tmux;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The real program in a real terminal: from an empty home to a closed day, with other processes beside the open board. */
@Tag("e2e")
@Timeout(400)
class WholeDayTest {
    private static final JsonMapper JSON = new JsonMapper();

    /** A day's work on a clean quad is some fifteen tasks; far more turns would mean that it does not come to an end. */
    private static final int MOST_TASKS = 60;

    @TempDir
    private Path home;

    @Test
    void a_shop_is_set_up_a_machine_goes_through_it_and_the_day_is_closed() throws Exception {
        try (Tmux board = new Tmux(80, 24)) {
            start(board);
            setUp(board);
            openTheDay(board);
            takeIn(board);
            workItOff(board);
            board.awaitText("done");
            board.press("c");
            board.awaitText("went home");
            closeTheDay(board);
            board.press("Escape");
            board.awaitText("Hours of");
            board.press("Escape");
            board.awaitText("CLOSED FOR TODAY");
            board.press("q");
            awaitShell(board);
            assertEquals("0", board.fact("alternate_on"), "the terminal is given back");
            start(board);
            board.awaitText("CLOSED FOR TODAY");
        }
    }

    @Test
    void a_killed_board_loses_nothing_and_a_second_one_goes_on_by_itself() throws Exception {
        try (Tmux owner = new Tmux(80, 24);
                Tmux guest = new Tmux(120, 36)) {
            start(owner);
            setUp(owner);
            openTheDay(owner);
            start(guest);
            guest.awaitText("Hill End Motors");
            takeIn(owner);
            guest.awaitText("Nora Fenn");
            long pid = board(ProcessHandle.allProcesses().filter(this::isOurs).toList());
            ProcessHandle.of(pid).orElseThrow().destroyForcibly();
            guest.press("a");
            guest.awaitText("What was found");
            guest.press("Enter");
            guest.awaitText("is added");
            guest.resize(60, 18);
            guest.awaitText("needs 80");
            guest.resize(80, 24);
            guest.awaitText("Nora Fenn");
            JsonNode day = answer("day", "--json");
            assertTrue(day.toString().contains("Nora Fenn"), day.toString());
        }
    }

    /** The board that was started first owns the records. */
    private static long board(List<ProcessHandle> ours) {
        return ours.stream()
                .min((one, other) -> one.info()
                        .startInstant()
                        .orElseThrow()
                        .compareTo(other.info().startInstant().orElseThrow()))
                .orElseThrow()
                .pid();
    }

    private boolean isOurs(ProcessHandle process) {
        String command = process.info().commandLine().orElse("");
        return command.contains("-Dwhole.day=" + home) && command.contains("java");
    }

    private void start(Tmux terminal) throws IOException, InterruptedException {
        terminal.enter("SHEDBOARD_HOME=" + home + " " + String.join(" ", command()));
    }

    private List<String> command() {
        String jar = System.getProperty("shedboard.jar");
        assertNotNull(jar, "this test runs on the packaged program: mvn verify");
        return new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-Dwhole.day=" + home,
                "-jar",
                jar));
    }

    private static void setUp(Tmux board) throws IOException, InterruptedException {
        board.awaitText("set up your own shop");
        board.press("1");
        board.awaitText("Name of the shop");
        for (String typed : List.of("Hill End Motors", "Ada", "Ben", "Col")) {
            board.press("-l", typed);
            board.press("Enter");
        }
        for (int field = 0; field < 3; field++) {
            board.press("Enter");
        }
        retype(board, "00:00");
        board.press("Enter");
        retype(board, "23:59");
        board.press("Enter");
        board.awaitText("not open yet");
    }

    private static void retype(Tmux board, String text) throws IOException, InterruptedException {
        for (int i = 0; i < 5; i++) {
            board.press("BSpace");
        }
        board.press("-l", text);
    }

    private static void openTheDay(Tmux board) throws IOException, InterruptedException {
        board.press("o");
        board.awaitText("not checked");
        for (int row = 0; row < 3; row++) {
            board.press("Down");
        }
        board.press("Space");
        board.awaitText("Who checked");
        board.press("2");
        board.awaitText("checked by Ben");
        board.press("Enter");
        board.awaitText("Who opens the day?");
        board.press("1");
        board.awaitText("The day is open");
    }

    private static void takeIn(Tmux board) throws IOException, InterruptedException {
        board.press("t");
        board.awaitText("Take a machine in");
        board.press("-l", "Nora Fenn");
        board.press("Enter");
        board.awaitText("Telephone");
        board.press("Enter", "Enter");
        board.press("2", "Enter");
        board.press("-l", "grey one");
        board.press("Enter", "Enter", "Enter");
        board.awaitText("Oil service");
        board.press("o");
        board.press("Enter");
        board.press("0");
        board.awaitText("as the day is posted");
        board.press("Enter");
        board.awaitText("is taken in");
        board.awaitText("Nora Fenn");
    }

    /** The first task by keys on the board, all others by commands of other processes beside it. */
    private void workItOff(Tmux board) throws Exception {
        board.press("s");
        board.awaitText("Who starts");
        board.press("Enter");
        board.awaitText("is started");
        board.press("f");
        board.awaitText("is finished");
        board.press("n");
        board.awaitText("Whose next machine?");
        board.press("3");
        board.awaitText("Nothing is planned for Col");
        backToTheBoard(board);
        int tasks = 0;
        while (!answer("day", "--json").toString().contains("\"done\"")) {
            assertTrue(tasks < MOST_TASKS, "the machine is not done after " + tasks + " tasks");
            tasks += doNext();
        }
        assertTrue(tasks > 5, "only " + tasks + " tasks were done by commands");
    }

    /** A key that comes too soon after another is taken for a bounce there, so it is pressed until it counts. */
    private static void backToTheBoard(Tmux board) throws IOException, InterruptedException {
        while (!board.screen().contains("Needs you")) {
            board.press("0");
        }
    }

    /** What is typed while the program is still leaving would go to nobody. */
    private static void awaitShell(Tmux board) throws IOException, InterruptedException {
        while (!board.fact("pane_current_command").equals("sh")) {
            Thread.onSpinWait();
        }
    }

    /** Whoever can start something next does it. */
    private int doNext() throws Exception {
        for (String name : List.of("Ada", "Ben", "Col")) {
            if (run("start", name, "1") == 0) {
                assertEquals(0, run("finish", name, "--rest", "good"), name + " finishes");
                return 1;
            }
        }
        throw new AssertionError("nobody can go on:\n" + said("day"));
    }

    private static void closeTheDay(Tmux board) throws IOException, InterruptedException {
        board.press("l");
        board.awaitText("Hours of");
        board.awaitText("Ada");
        board.press("c");
        for (String name : new String[] {"Ada", "Ben", "Col"}) {
            board.awaitText(name + " has not left");
            board.press("Enter");
            board.awaitText("stop and go home?");
            board.press("1");
            board.awaitWithout(name + " has not left");
        }
        board.awaitText("Nothing stands in the way");
        board.press("c");
        board.awaitText("Who closes the day?");
        board.press("1");
        board.awaitText("No PIN is set in this shop yet");
        board.press("2", "4", "6", "8", "Enter");
        board.awaitText("The day is closed");
    }

    private int run(String... arguments) throws IOException, InterruptedException {
        Process process = beside(arguments).start();
        process.getInputStream().readAllBytes();
        return process.waitFor();
    }

    private String said(String... arguments) throws IOException, InterruptedException {
        Process process = beside(arguments).start();
        String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor();
        return output;
    }

    private JsonNode answer(String... arguments) throws IOException, InterruptedException {
        return JSON.readTree(said(arguments));
    }

    private ProcessBuilder beside(String... arguments) {
        List<String> all = command();
        all.addAll(List.of(arguments));
        ProcessBuilder builder = new ProcessBuilder(all).redirectErrorStream(true);
        builder.environment().put("SHEDBOARD_HOME", home.toString());
        return builder;
    }
}
