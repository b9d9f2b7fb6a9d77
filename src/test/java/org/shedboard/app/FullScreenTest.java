package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shedboard.testing.Tmux;

/** How the full screen ends when it is not left by a key. */
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
                        + "' org.shedboard.app.Main --home . demo\n");
        tmux.enter("cd " + home + "; clear; sh start; echo ended");
        tmux.awaitText("Tussock Flat Machinery");
    }

    @AfterEach
    void close() throws Exception {
        if (tmux != null) tmux.close();
    }

    @ParameterizedTest
    @ValueSource(strings = {"TERM", "HUP"})
    void a_signal_closes_the_records_and_gives_the_terminal_back(String signal) throws Exception {
        String pid = Files.readString(home.resolve("pid")).strip();
        new ProcessBuilder("/bin/sh", "-c", "kill -" + signal + " " + pid)
                .start()
                .waitFor();
        tmux.awaitText("ended");
        assertEquals("0", tmux.fact("alternate_on"));
        assertEquals("1", tmux.fact("cursor_flag"));
        tmux.enter("clear; stty -a | grep -o ' icanon'; stty -a | grep -o ' echo '");
        tmux.awaitText(" icanon\n echo");
        assertFalse(Files.exists(Homes.demonstration(home).resolve("owner")), "the records are still open");
        assertFalse(Files.exists(new Log(home).file()), "something went wrong on the way");
    }
}
