package org.shedboard.testing;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Grid;
import org.shedboard.grid.Size;
import org.shedboard.grid.Style;

class GoldenTest {
    @TempDir
    Path folder;

    @Test
    void an_accepted_screen_passes_as_long_as_it_stays_the_same() {
        rewriting().compare("day", "empty", drawn("Hoist 1", Style.NORMAL));
        assertDoesNotThrow(() -> comparing().compare("day", "empty", drawn("Hoist 1", Style.NORMAL)));
    }

    @Test
    void a_difference_is_shown_with_its_row_and_a_caret() {
        rewriting().compare("day", "empty", drawn("日 ist 1", Style.NORMAL));
        String message = failure(drawn("日 ist 2", Style.NORMAL));
        assertTrue(message.contains("differs from line 2 on"), message);
        assertTrue(message.contains("stored: |日 ist 1 |\ndrawn:  |日 ist 2 |\n                ^"), message);
        assertTrue(message.contains("|日 ist 1 |\n+---------+\n........."), message);
    }

    @Test
    void a_difference_in_style_alone_is_one() {
        rewriting().compare("day", "empty", drawn("Hoist 1", Style.NORMAL));
        String message = failure(drawn("Hoist 1", Style.LATE));
        assertTrue(message.contains("stored: .........\ndrawn:  LLLLLLL..\n        ^"), message);
    }

    @Test
    void a_missing_file_fails_and_says_what_to_do() {
        String message = failure(drawn("Hoist 1", Style.NORMAL));
        assertTrue(message.contains("-Dgolden.update=true") && message.contains("|Hoist 1  |"), message);
    }

    @Test
    void nothing_is_rewritten_where_nobody_looks() {
        Golden unattended = new Golden(folder, true, true);
        assertThrows(AssertionError.class, () -> unattended.compare("day", "empty", drawn("Hoist 1", Style.NORMAL)));
        assertTrue(Files.notExists(folder.resolve("day")));
    }

    @Test
    void files_without_a_case_and_cases_without_a_file_are_found() {
        rewriting().compare("day", "empty", drawn("Hoist 1", Style.NORMAL));
        assertDoesNotThrow(() -> comparing().compareCases("day", List.of("empty")));
        assertThrows(AssertionError.class, () -> comparing().compareCases("day", List.of("empty", "full")));
        assertThrows(AssertionError.class, () -> comparing().compareCases("day", List.of()));
        assertThrows(AssertionError.class, () -> comparing().compareCases("sheet", List.of("empty")));
    }

    private String failure(Grid grid) {
        return assertThrows(AssertionError.class, () -> comparing().compare("day", "empty", grid))
                .getMessage();
    }

    private Golden rewriting() {
        return new Golden(folder, true, false);
    }

    private Golden comparing() {
        return new Golden(folder, false, true);
    }

    private static Grid drawn(String text, Style style) {
        Canvas canvas = Canvas.of(new Size(9, 1));
        canvas.text(canvas.region(), text, style);
        return canvas.grid();
    }
}
