package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.testing.SlowPipe;
import org.shedboard.testing.Tmux;

/** The board over a line that is slower than whoever types. */
@Tag("e2e")
@Timeout(180)
class SlowLineTest {
    /** As a modem of 24,000 bits a second; all of the screen takes two seconds of it. */
    private static final int BYTES_A_SECOND = 2_400;

    @TempDir
    private Path home;

    @Test
    void twenty_keys_typed_ahead_of_the_picture_all_count_and_it_ends_in_the_right_one() throws Exception {
        CommandRoom.withDemonstration(home);
        String java = Path.of(System.getProperty("java.home"), "bin", "java") + " -XX:+UseSerialGC -cp '"
                + System.getProperty("java.class.path") + "' ";
        Files.writeString(home.resolve("start"), "exec " + java + Main.class.getName() + " --home . demo\n");
        Files.writeString(
                home.resolve("slow"),
                "script -qefc 'sh start' /dev/null | " + java + SlowPipe.class.getName() + " " + BYTES_A_SECOND + "\n");
        try (Tmux tmux = new Tmux(80, 24)) {
            tmux.enter("cd " + home + "; clear; sh slow; echo en''ded");
            tmux.awaitText("Tussock Flat Machinery");
            tmux.awaitText("t take in");
            tmux.press("Down", "Down", "Down", "Up", "t");
            tmux.press("-l", "marrowby burr");
            tmux.press("Enter", "m");
            String screen = tmux.awaitText("✓ Minor service");
            assertTrue(screen.contains("Wanted       Minor service"), screen);
            tmux.press("Escape");
            tmux.awaitText("Needs you");
            tmux.press("q");
            tmux.awaitText("ended");
            assertEquals("0", tmux.fact("alternate_on"));
        }
    }
}
