package org.shedboard.term;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.testing.Tmux;

/** The display in a real terminal. */
@Tag("e2e")
@Timeout(180)
class TerminalTest {
    @TempDir
    Path folder;

    private Tmux tmux;

    @BeforeEach
    void open() throws IOException, InterruptedException {
        tmux = new Tmux(80, 24);
        Files.writeString(folder.resolve("probe"), "exec " + java() + " " + TerminalProbe.class.getName() + "\n");
        tmux.enter("cd " + folder + "; clear; stty -g > before");
    }

    @AfterEach
    void close() throws IOException {
        if (tmux != null) tmux.close();
    }

    @Test
    void keys_pastes_and_window_sizes_arrive_and_the_terminal_is_given_back() throws Exception {
        tmux.enter("sh probe");
        String screen = tmux.awaitText("window of 80 x 24");
        assertTrue(screen.contains("日本 ✅ ·[2Jend│"), screen);
        tmux.press("Up");
        tmux.awaitText("last: UP");
        tmux.press("C-c");
        tmux.awaitText("last: CONTROL c");
        tmux.press("Escape");
        tmux.awaitText("last: ESCAPE");
        tmux.press("-l", "\033Op");
        tmux.awaitText("last: CHARACTER 0");
        tmux.paste("abc");
        tmux.awaitText("last: PASTE_END");
        tmux.resize(100, 30);
        tmux.awaitText("window of 100 x 30");
        tmux.press("C-q");
        tmux.awaitText("ended well");
        isGivenBack();
    }

    @Test
    void a_stopped_program_paints_all_of_its_screen_when_it_goes_on() throws Exception {
        tmux.enter("set -m; sh probe");
        tmux.awaitText("window of 80 x 24");
        tmux.press("-l", "k");
        tmux.awaitText("last: CHARACTER k");
        stop();
        tmux.awaitText("Stopped");
        tmux.enter("clear; fg");
        String screen = tmux.awaitText("last: Continued");
        assertTrue(screen.contains("window of 80 x 24"), screen);
        tmux.press("Down");
        tmux.awaitText("last: DOWN");
        tmux.press("C-q");
        tmux.awaitText("ended well");
    }

    @Test
    void after_a_crash_the_trace_can_be_read_in_a_terminal_that_works() throws Exception {
        tmux.enter("sh probe");
        tmux.awaitText("window of 80 x 24");
        tmux.press("C-x");
        tmux.awaitText("broken on purpose");
        isGivenBack();
    }

    @Test
    void where_no_full_screen_is_possible_none_is_opened() throws Exception {
        tmux.enter("TERM=dumb sh probe");
        tmux.awaitText("no full screen here");
    }

    private void isGivenBack() throws IOException, InterruptedException {
        assertEquals("0", tmux.fact("alternate_on"));
        assertEquals("1", tmux.fact("cursor_flag"));
        tmux.enter("clear; stty -g > after; echo loo''ked at");
        tmux.awaitText("looked at");
        assertEquals(Files.readString(folder.resolve("before")), Files.readString(folder.resolve("after")));
    }

    /** Stops the program that runs in the window, as a shell's job control would. */
    private void stop() throws IOException, InterruptedException {
        long shell = Long.parseLong(tmux.fact("pane_pid"));
        ProcessHandle program =
                ProcessHandle.of(shell).orElseThrow().children().findFirst().orElseThrow();
        new ProcessBuilder("/bin/sh", "-c", "kill -STOP " + program.pid())
                .start()
                .waitFor();
    }

    private static String java() {
        String program = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        return program + " -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -cp '" + System.getProperty("java.class.path")
                + "'";
    }
}
