package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shedboard.testing.Tmux;

/**
 * How the full screen takes the terminal and gives it back: left by a key, ended by a signal, stopped and called back. What the shell
 * shall print at an end is typed with quotes inside, so that what is waited for is not found in the typed line.
 */
@Tag("e2e")
@Timeout(180)
class FullScreenTest {
    @TempDir
    Path home;

    private Tmux tmux;

    @BeforeEach
    void open() throws Exception {
        CommandRoom.withDemonstration(home);
        tmux = new Tmux(100, 30);
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        Files.writeString(
                home.resolve("start"),
                "echo $$ > pid; exec " + java + " -XX:+UseSerialGC -cp '" + System.getProperty("java.class.path")
                        + "' org.shedboard.app.Main --home . demo $MORE\n");
        Files.writeString(home.resolve("wrapped"), "sh start\n");
        tmux.enter("cd " + home + "; clear; stty -a > before");
    }

    /** The program goes with its terminal, and has left its home when that is cleared away. */
    @AfterEach
    void close() throws Exception {
        if (tmux == null) {
            return;
        }
        tmux.close();
        Path last = home.resolve("pid");
        if (Files.exists(last)) {
            long pid = Long.parseLong(Files.readString(last).strip());
            ProcessHandle.of(pid).ifPresent(program -> program.onExit().join());
        }
    }

    @Test
    void a_key_that_leaves_gives_the_terminal_back() throws Exception {
        start("sh start; echo en''ded");
        tmux.press("q");
        tmux.awaitText("ended");
        isGivenBack();
    }

    @ParameterizedTest
    @ValueSource(strings = {"TERM", "HUP"})
    void a_signal_closes_the_records_and_gives_the_terminal_back(String signal) throws Exception {
        start("sh start; echo en''ded");
        kill(signal);
        tmux.awaitText("ended");
        isGivenBack();
        assertFalse(Files.exists(Homes.demonstration(home).resolve("owner")), "the records are still open");
        assertFalse(Files.exists(new Log(home).file()), "something went wrong on the way");
    }

    @ParameterizedTest
    @ValueSource(strings = {"TERM", "HUP"})
    void a_signal_keeps_a_form_that_is_half_filled_in(String signal) throws Exception {
        start("sh start; echo en''ded");
        tmux.press("t");
        tmux.awaitText("Take a machine in");
        tmux.press("-l", "marrowby burr");
        tmux.awaitText("▶ Marrowby, Dry Gully");
        kill(signal);
        tmux.awaitText("ended");
        start("clear; sh start; echo en''ded");
        tmux.awaitText("A machine was half taken in");
        tmux.press("t");
        tmux.awaitText("go on with it");
        tmux.press("1");
        tmux.awaitText("▶ Marrowby, Dry Gully");
    }

    @Test
    void ctrl_z_gives_the_terminal_to_the_shell_and_fg_brings_all_of_the_screen_back() throws Exception {
        start("set -m; sh wrapped; echo en''ded");
        tmux.press("C-z");
        tmux.awaitText("Stopped");
        isGivenBack();
        tmux.enter("clear; fg; echo en''ded");
        tmux.awaitText("Tussock Flat Machinery");
        assertEquals("1", tmux.fact("alternate_on"));
        assertEquals("1", tmux.fact("mouse_standard_flag"));
        tmux.press("?");
        tmux.awaitText("Take a machine in, or book one");
        tmux.press("Escape");
        tmux.awaitText("Needs you");
        tmux.press("q");
        tmux.awaitText("ended");
        isGivenBack();
    }

    @Test
    void where_no_shell_could_call_it_back_ctrl_z_stops_nothing() throws Exception {
        tmux.enter("exec sh start");
        tmux.awaitText("Tussock Flat Machinery");
        tmux.press("C-z");
        tmux.press("?");
        tmux.awaitText("Take a machine in, or book one");
        assertEquals("1", tmux.fact("alternate_on"));
    }

    @Test
    void the_mouse_selects_a_machine_and_is_left_to_the_terminal_where_asked_for() throws Exception {
        start("sh start; echo en''ded");
        assertEquals("1", tmux.fact("mouse_standard_flag"));
        assertEquals("1", tmux.fact("mouse_sgr_flag"));
        int row = selected(tmux.screen());
        tmux.press("-l", "\033[<0;20;" + (row + 3) + "M\033[<0;20;" + (row + 3) + "m");
        tmux.await(screen -> selected(screen) == row + 2, "the selection two rows below " + row);
        tmux.press("q");
        tmux.awaitText("ended");
        start("clear; MORE=--no-mouse sh start; echo en''ded");
        assertEquals("0", tmux.fact("mouse_standard_flag"));
    }

    /** The row of the selected machine, from 0 on; -1 where none is. */
    private static int selected(String screen) {
        List<String> rows = screen.lines().toList();
        return IntStream.range(0, rows.size())
                .filter(row -> rows.get(row).startsWith("▶"))
                .findFirst()
                .orElse(-1);
    }

    private void start(String command) throws IOException, InterruptedException {
        tmux.enter(command);
        tmux.awaitText("Tussock Flat Machinery");
    }

    private void kill(String signal) throws IOException, InterruptedException {
        String pid = Files.readString(home.resolve("pid")).strip();
        new ProcessBuilder("/bin/sh", "-c", "kill -" + signal + " " + pid)
                .start()
                .waitFor();
    }

    private void isGivenBack() throws IOException, InterruptedException {
        assertEquals("0", tmux.fact("alternate_on"));
        assertEquals("1", tmux.fact("cursor_flag"));
        assertEquals("0", tmux.fact("mouse_standard_flag"));
        tmux.enter("clear; stty -a > after; echo loo''ked at");
        tmux.awaitText("looked at");
        String before = Files.readString(home.resolve("before"));
        assertTrue(before.contains("icanon"), before);
        assertEquals(before, Files.readString(home.resolve("after")));
    }
}
