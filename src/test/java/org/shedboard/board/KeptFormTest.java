package org.shedboard.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A take-in form that outlives the program. */
class KeptFormTest {
    private final FakeShell shell = FakeShell.demonstration();

    @Test
    void a_form_comes_back_with_what_was_typed_and_chosen_and_asks_for_the_mud_again() {
        shell.types("t").types("nettlecroft pivot").press(Key.ENTER).types("o").press(Key.ENTER);
        shell.types("2").press(Key.DOWN).types("Ada");
        Map<String, String> words = KeptForm.of(shell.board());
        shell.press(Key.ESCAPE);
        assertEquals(words, KeptForm.of(shell.board()), "a form that was left is kept as well");
        TakeInForm form = KeptForm.read(words, shell.board().expectDay().books());
        assertEquals(Optional.of("M36"), form.machineId());
        assertEquals(List.of("oil-mower"), form.workIds());
        assertEquals("Ada", form.text(TakeInForm.Field.TOLD));
        assertEquals(TakeInForm.Field.MUD, form.field());
        assertEquals(Optional.empty(), form.mud());
    }

    @Test
    void a_form_that_was_not_touched_is_not_kept() {
        shell.types("t");
        assertEquals(Map.of(), KeptForm.of(shell.board()));
    }

    @Test
    void a_form_whose_machine_is_no_longer_in_the_books_begins_with_the_machine() {
        Map<String, String> words = Map.of("field", "WORK", "text.FIND", "nettlecroft", "machine", "M999", "work", "o");
        TakeInForm form = KeptForm.read(words, shell.board().expectDay().books());
        assertEquals(TakeInForm.Field.FIND, form.field());
        assertEquals("nettlecroft", form.text(TakeInForm.Field.FIND));
        assertFalse(form.isKnownMachine());
    }

    @Test
    void garbage_in_the_file_offers_nothing() {
        Map<String, String> words = new HashMap<>();
        for (String name : List.of("field", "machine", "class", "work", "notices", "depth", "faults", "x")) {
            words.put(name, "\u0000 ;--");
        }
        shell.tell(new Msg.FormKept(words));
        assertEquals(Optional.empty(), shell.board().draft());
        assertEquals(Optional.empty(), shell.board().note());
    }

    @Test
    void what_somebody_has_begun_meanwhile_goes_first() {
        shell.types("t").types("marrowby");
        shell.tell(new Msg.FormKept(Map.of("text.FIND", "nettlecroft")));
        shell.press(Key.ESCAPE);
        assertEquals("marrowby", shell.board().draft().orElseThrow().text(TakeInForm.Field.FIND));
    }
}
