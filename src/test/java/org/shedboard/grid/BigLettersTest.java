package org.shedboard.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class BigLettersTest {
    private static final String ALL = "0123456789-:ABCDEFGHIJKLMNOPQRSTUVWXYZ";

    @Test
    void every_letter_is_seven_rows_tall_and_at_most_eight_columns_wide() {
        for (String letter : ALL.split("")) {
            List<String> rows = BigLetters.rows(letter);
            assertEquals(7, rows.size(), letter);
            int width = rows.get(0).length();
            assertTrue(width >= 2 && width <= 8, letter + " is " + width + " wide");
            assertTrue(rows.stream().allMatch(row -> row.length() == width), letter);
        }
    }

    @Test
    void every_letter_is_drawn_in_its_whole_height_and_with_full_cells_only() {
        for (String letter : ALL.replace("-:", "").split("")) {
            List<String> rows = BigLetters.rows(letter);
            assertTrue(
                    rows.stream().allMatch(row -> row.matches("[ █]*█[ █]*")), letter + "\n" + String.join("\n", rows));
            assertTrue(rows.stream().anyMatch(row -> row.startsWith("█")), letter + " leaves its first column blank");
        }
    }

    @Test
    void no_two_letters_look_alike() {
        Set<List<String>> seen = new HashSet<>();
        for (String letter : ALL.split("")) assertTrue(seen.add(BigLetters.rows(letter)), letter);
    }

    /** Two letters that differ in one or two cells only would be mixed up from across the shop. */
    @Test
    void any_two_letters_differ_in_at_least_three_cells() {
        for (char one : ALL.toCharArray()) {
            for (char other : ALL.toCharArray()) {
                if (one < other) assertTrue(differing(one, other) >= 3, one + " and " + other);
            }
        }
    }

    @Test
    void a_number_is_drawn_letter_by_letter() {
        Canvas canvas = Canvas.of(new Size(16, 7));
        Region rest = canvas.big(canvas.region(), "1l", Style.STRONG);
        assertEquals("""
              ██   ██
            ████   ██
              ██   ██
              ██   ██
              ██   ██
              ██   ██
            ██████ ██████
            """, String.join("\n", canvas.grid().lines()) + "\n");
        assertEquals(new Region(14, 0, 2, 7), rest);
        assertEquals(13, BigLetters.width("1l"));
    }

    @Test
    void what_does_not_fit_whole_is_written_small() {
        Canvas canvas = Canvas.of(new Size(12, 7));
        canvas.big(canvas.region(), "14", Style.STRONG);
        assertEquals("14", canvas.grid().lines().get(0));
        Canvas flat = Canvas.of(new Size(40, 6));
        flat.big(flat.region(), "14", Style.STRONG);
        assertEquals("14", flat.grid().lines().get(0));
    }

    @Test
    void an_unknown_character_is_a_gap() {
        assertNotEquals(BigLetters.rows("11"), BigLetters.rows("1é1"));
        assertEquals(0, BigLetters.width(""));
        assertEquals(4, BigLetters.width("\u001B"));
    }

    private static int differing(char one, char other) {
        int cells = 0;
        for (int row = 0; row < BigLetters.ROWS; row++) {
            for (int column = 0; column < 8; column++) {
                if (cell(one, column, row) != cell(other, column, row)) cells++;
            }
        }
        return cells;
    }

    private static char cell(char letter, int column, int row) {
        String drawn = BigLetters.rows(String.valueOf(letter)).get(row);
        return column < drawn.length() ? drawn.charAt(column) : ' ';
    }
}
