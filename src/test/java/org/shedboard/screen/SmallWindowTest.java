package org.shedboard.screen;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shedboard.board.Key;
import org.shedboard.grid.Size;

/** In the smallest window in which one person can still be handed work. */
class SmallWindowTest {
    private static final Size SMALL = new Size(60, 18);

    private final Rehearsal rehearsal = Rehearsal.atTheDemonstration();

    @Test
    void somebody_finds_their_next_machine_and_finishes_the_task() {
        shows("n next");
        rehearsal.type("n");
        shows("Whose next machine?");
        rehearsal.type("1");
        shows("Marnie");
        shows("5 start");
        rehearsal.type("5");
        shows("6 finish");
    }

    @Test
    void a_sheet_shows_its_tasks_and_its_keys() {
        rehearsal.press(Key.ENTER);
        shows("Quillgate");
        shows("▶");
        shows("? help");
    }

    @Test
    void the_keys_are_told_whole() {
        rehearsal.type("?");
        shows("take in       Take a machine in, or book one;");
        shows("hear a time to promise.");
        shows("Ctrl-L paints anew.");
    }

    @Test
    void why_a_machine_is_planned_so_is_told() {
        rehearsal.type("y");
        shows("Why then");
    }

    private void shows(String text) {
        List<String> lines = rehearsal.drawn(SMALL).lines();
        assertTrue(
                lines.stream().anyMatch(line -> line.contains(text)),
                () -> text + " is not in\n" + String.join("\n", lines));
    }
}
