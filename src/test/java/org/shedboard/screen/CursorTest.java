package org.shedboard.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.shedboard.board.Key;
import org.shedboard.grid.Cell;
import org.shedboard.grid.Glyphs;
import org.shedboard.grid.Grid;
import org.shedboard.grid.Size;
import org.shedboard.grid.Style;

/** The cursor stands at the selection, for magnifiers and for what reads a screen aloud. */
class CursorTest {
    private static final Size USUAL = new Size(80, 24);

    static List<Scenes.Scene> scenes() {
        return ScreensTest.ordinary();
    }

    @ParameterizedTest
    @MethodSource("scenes")
    void wherever_something_is_pointed_at_the_cursor_stands_there(Scenes.Scene scene) {
        Grid grid = scene.drawn(USUAL);
        boolean isPointing = grid.lines().stream().anyMatch(line -> line.indexOf(Glyphs.POINTER) >= 0);
        if (isPointing || grid.cursor().isPresent()) {
            Cell cell = grid.cursor().orElseThrow();
            Style style = grid.style(cell.column(), cell.row());
            assertTrue(
                    grid.glyph(cell.column(), cell.row()) == Glyphs.POINTER
                            || style == Style.CURSOR
                            || style == Style.SELECTED,
                    cell + "\n" + grid);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "the board, ''",
        "the yard, |",
        "the crew, <",
        "a sheet, >",
        "calls, d",
        "the shelf, e",
        "the weeks, v",
        "the closing list, lc",
        "a question, n"
    })
    void the_cursor_goes_where_the_selection_goes(String where, String keys) {
        Rehearsal rehearsal = Rehearsal.atTheDemonstration();
        keys.chars().forEach(key -> rehearsal.press(keyOf((char) key)));
        Cell before = rehearsal.drawn(USUAL).cursor().orElseThrow();
        Cell after = rehearsal.press(Key.DOWN).drawn(USUAL).cursor().orElseThrow();
        assertTrue(after.row() > before.row(), where + ": " + before + " " + after);
    }

    private static Key keyOf(char key) {
        return switch (key) {
            case '>' -> Key.ENTER;
            case '|' -> Key.TAB;
            case '<' -> Key.BACK_TAB;
            default -> Key.of(key);
        };
    }

    @Test
    void a_question_has_the_cursor_though_something_is_selected_behind_it() {
        Rehearsal rehearsal = Rehearsal.atTheDemonstration().type("n");
        Grid grid = rehearsal.drawn(USUAL);
        Cell cell = grid.cursor().orElseThrow();
        assertEquals(Style.SELECTED, grid.style(cell.column() + 2, cell.row()));
        assertTrue(cell.column() > 1, cell.toString());
    }

    @Test
    void what_is_typed_has_the_cursor() {
        Grid grid = Rehearsal.atTheDemonstration().type("m").type("quill").drawn(USUAL);
        Cell cell = grid.cursor().orElseThrow();
        assertEquals(Style.CURSOR, grid.style(cell.column(), cell.row()));
    }
}
