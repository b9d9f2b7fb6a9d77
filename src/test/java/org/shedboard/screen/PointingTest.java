package org.shedboard.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.shedboard.board.Key;
import org.shedboard.board.Msg;
import org.shedboard.board.Overlay;
import org.shedboard.board.Screen;
import org.shedboard.board.TakeInForm;
import org.shedboard.grid.Grid;
import org.shedboard.grid.Size;

/** What a finger or a mouse finds on the screens: each cell that means something means keys. */
class PointingTest {
    private static final Size SIZE = new Size(80, 24);

    private final Rehearsal rehearsal = Rehearsal.atTheDemonstration();

    @Test
    void a_key_at_the_foot_is_two_rows_high() {
        Grid grid = drawn();
        Cell key = cellOf(grid, "t take in");
        assertEquals(Optional.of(new Press(List.of(Key.of('t')))), grid.meaningAt(key.column(), key.row()));
        assertEquals(Optional.of(new Press(List.of(Key.of('t')))), grid.meaningAt(key.column() + 8, key.row() - 1));
        assertEquals(Optional.of(new Press(List.of(Key.of('?')))), grid.meaningAt(78, 23));
    }

    @Test
    void pointing_at_a_machine_in_the_yard_selects_it_and_pointing_again_opens_its_sheet() {
        Cell second = new Cell(30, cellOf(drawn(), "▶").row() + 1);
        point(second);
        assertEquals(second.row(), cellOf(drawn(), "▶").row());
        String selected =
                ((Screen.Places) rehearsal.board().screen()).selected().orElseThrow();
        point(second);
        assertEquals(selected, ((Screen.Sheet) rehearsal.board().screen()).visitId());
    }

    @Test
    void pointing_at_a_bar_selects_the_machine_that_stands_there() {
        Cell bar = cellOf(drawn(), "W1 ", "9▓");
        point(bar);
        String inWash = ((Screen.Places) rehearsal.board().screen()).selected().orElseThrow();
        assertEquals(OptionalInt.of(9), rehearsal.day().expectVisit(inWash).tag());
        point(bar);
        assertEquals(inWash, ((Screen.Sheet) rehearsal.board().screen()).visitId());
    }

    @Test
    void a_question_is_answered_by_pointing_and_what_it_stands_on_cannot_be_pointed_at() {
        rehearsal.type("n");
        Grid grid = drawn();
        assertEquals(Optional.empty(), grid.meaningAt(1, 5), "the board under the question");
        point(cellOf(grid, "Marnie", "Marnie"));
        assertTrue(rehearsal.board().screen() instanceof Screen.Next);
    }

    @Test
    void a_question_is_left_by_pointing_at_esc() {
        rehearsal.type("n");
        point(cellOf(drawn(), "Esc leaves it"));
        assertEquals(Optional.empty(), rehearsal.board().overlay());
    }

    @Test
    void a_field_of_a_form_is_gone_to_by_pointing_at_it() {
        rehearsal.type("tmarrowby").press(Key.ENTER).type("m").press(Key.ENTER);
        assertEquals(TakeInForm.Field.MUD, form().field());
        point(cellOf(drawn(), "Look "));
        assertEquals(TakeInForm.Field.DEPTH, form().field());
        point(cellOf(drawn(), "Wanted"));
        assertEquals(TakeInForm.Field.WORK, form().field());
    }

    @Test
    void a_machine_found_and_its_work_are_chosen_by_pointing() {
        rehearsal.type("tmarrowby");
        Grid grid = drawn();
        point(cellOf(grid, "▶ Marrowby"));
        assertEquals(TakeInForm.Field.WORK, form().field());
        point(cellOf(drawn(), "Minor service"));
        assertEquals(1, form().workIds().size());
        point(cellOf(drawn(), "✓ Minor service"));
        assertEquals(0, form().workIds().size(), "pointing again takes it back");
    }

    @Test
    void keys_after_one_that_leads_elsewhere_are_let_go() {
        rehearsal.told(new Msg.Pointed(List.of(Key.of('n'), Key.of('1')), Instant.EPOCH));
        assertTrue(rehearsal
                .board()
                .overlay()
                .filter(Overlay.Choose.class::isInstance)
                .isPresent());
    }

    private Grid drawn() {
        return rehearsal.drawn(SIZE);
    }

    private TakeInForm form() {
        return ((Screen.TakeIn) rehearsal.board().screen()).form();
    }

    private void point(Cell cell) {
        Press press = (Press) drawn().meaningAt(cell.column(), cell.row()).orElseThrow();
        rehearsal.told(new Msg.Pointed(press.keys(), Instant.EPOCH));
    }

    private record Cell(int column, int row) {}

    private static Cell cellOf(Grid grid, String text) {
        return cellOf(grid, text, text);
    }

    /** Where a text stands in the first row that has another one. */
    private static Cell cellOf(Grid grid, String inRow, String text) {
        List<String> lines = grid.lines();
        for (int row = 0; row < lines.size(); row++) {
            if (lines.get(row).contains(inRow) && lines.get(row).contains(text)) {
                return new Cell(lines.get(row).indexOf(text), row);
            }
        }
        throw new AssertionError("no " + text + " in\n" + grid);
    }
}
