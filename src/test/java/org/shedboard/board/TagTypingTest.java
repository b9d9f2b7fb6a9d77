package org.shedboard.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.shedboard.shop.Visit;

/** A tag typed wherever digits mean nothing else. */
class TagTypingTest {
    private final FakeShell shell = FakeShell.demonstration();

    private Visit twelve() {
        return shell.day().findByTag(12).orElseThrow();
    }

    @ParameterizedTest
    @EnumSource(
            names = {
                "CREW",
                "SHEET",
                "HOURS",
                "WEEK",
                "HOURS_BY_ROW",
                "CLOSING",
                "RING",
                "SHELF",
                "MINUTES",
                "WEEKS",
                "SCORECARD",
                "SUGGESTIONS",
                "HELP"
            })
    void its_sheet_opens_from_every_other_screen(NamedScreen name) {
        Board board = name.open(shell.board(), "P1").board();
        for (char digit : "12".toCharArray()) {
            board = Update.of(board, new Msg.Pressed(Key.of(digit), shell.now()))
                    .board();
        }
        assertEquals(twelve().id(), ((Screen.Sheet) board.screen()).visitId());
        assertTrue(board.note().orElseThrow().sentence().startsWith("Tag 12 ("));
    }

    @Test
    void escape_leads_back_to_where_it_was_typed() {
        shell.press(Key.BACK_TAB).types("12").press(Key.ESCAPE);
        assertTrue(shell.board().screen() instanceof Screen.Crew);
    }

    @Test
    void the_yard_shows_everything_again_and_chooses_it() {
        shell.press(Key.TAB).types("/zebra").press(Key.ENTER).types("12");
        Screen.YardPage yard = (Screen.YardPage) shell.board().screen();
        assertEquals(twelve().id(), yard.selected().orElseThrow());
        assertTrue(yard.filter().isBlank());
    }

    @Test
    void the_page_of_a_machine_is_then_about_this_one() {
        shell.press(Key.ENTER).types("m12");
        assertEquals(twelve().machineId(), ((Screen.MachinePage) shell.board().screen()).machineId());
    }

    @Test
    void a_tag_that_nobody_has_is_said() {
        shell.types("8");
        shell.assertRefused("No tag here begins with 8.");
    }

    @Test
    void another_key_ends_the_number() {
        shell.types("1").press(Key.DOWN).types("2");
        assertEquals("2", shell.board().atHand().tagTyped());
    }

    @Test
    void where_digits_mean_something_they_mean_that() {
        shell.types("n2");
        Screen before = shell.board().screen();
        shell.types("9");
        assertEquals(before, shell.board().screen());
        assertTrue(shell.board().overlay().isPresent());
    }
}
