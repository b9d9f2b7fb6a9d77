package org.shedboard.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TextWidthTest {
    /** Source: Unicode EastAsianWidth 15.0; class A counts one column, Mn and zero-width ones none. */
    @ParameterizedTest(name = "U+{0} ({1}) takes {2}")
    @CsvSource({
        "65E5,W,2",
        "AC00,W,2",
        "231B,W,2",
        "2705,W,2",
        "274C,W,2",
        "FF21,F,2",
        "0041,Na,1",
        "2713,N,1",
        "2714,N,1",
        "26A0,N,1",
        "23F1,N,1",
        "2610,N,1",
        "2613,N,1",
        "FF71,H,1",
        "2500,A,1",
        "2588,A,1",
        "2592,A,1",
        "25A0,A,1",
        "25CF,A,1",
        "2192,A,1",
        "2026,A,1",
        "00B0,A,1",
        "00B7,A,1",
        "00E9,A,1",
        "0301,Mn,0",
        "FE0F,Mn,0",
        "200B,Cf,0"
    })
    void a_character_takes_the_columns_of_its_east_asian_width(String hex, String kind, int columns) {
        assertEquals(columns, TextWidth.of((char) Integer.parseInt(hex, 16)));
    }

    /** The edges of the wide ranges, and the characters just beside them; same source. */
    @ParameterizedTest(name = "U+{0} takes {1}")
    @CsvSource({
        "10FF,1", "1100,2", "115F,2", "2319,1", "231A,2", "231C,1", "2E80,2", "303E,2", "303F,1", "3041,2", "A4CF,2",
        "A4D0,1", "D7A3,2", "FF60,2", "FF61,1", "FFE0,2", "FFE6,2", "FFE8,1"
    })
    void wide_ranges_end_where_they_should(String hex, int columns) {
        assertEquals(columns, TextWidth.of((char) Integer.parseInt(hex, 16)));
    }

    @Test
    void an_accent_that_composes_is_one_character() {
        assertEquals("Zoë", TextWidth.shown("Zoe\u0308"));
        assertEquals(3, TextWidth.of("Zoe\u0308"));
    }

    @Test
    void what_a_cell_cannot_hold_gets_a_stand_in() {
        assertEquals("x\u00B7y", TextWidth.shown("x\u0301y"), "an accent that composes with nothing");
        assertEquals("?", TextWidth.shown("\uD83D\uDE9C"), "a tractor of the astral plane");
        assertEquals("?a?", TextWidth.shown("\uD83Da\uDE9C"), "two lone halves");
        assertEquals("·[31m··", TextWidth.shown("\u001B[31m\u0007\n"));
        assertEquals("·drow·", TextWidth.shown("\u202Edrow\u2066"));
        assertEquals("?", TextWidth.shown("\uE000"), "private use");
    }

    @Test
    void every_character_of_the_basic_plane_is_shown_as_something_with_a_width() {
        for (int point = 0; point <= Character.MAX_VALUE; point++) {
            String shown = TextWidth.shown("a" + (char) point + "b");
            for (char character : shown.toCharArray()) {
                String where = "U+%04X".formatted(point);
                assertTrue(TextWidth.of(character) > 0, where);
                assertTrue(!Character.isISOControl(character) && !Character.isSurrogate(character), where);
            }
        }
    }

    @Test
    void a_cut_text_ends_in_an_ellipsis_and_never_in_half_a_character() {
        assertEquals("Tussock", TextWidth.clip("Tussock", 7));
        assertEquals("Tusso…", TextWidth.clip("Tussock", 6));
        assertEquals("…", TextWidth.clip("Tussock", 1));
        assertEquals("", TextWidth.clip("Tussock", 0));
        assertEquals("日…", TextWidth.clip("日本語", 4), "the second would reach into the fifth column");
        assertEquals("日本…", TextWidth.clip("日本語", 5));
        assertEquals("日本語", TextWidth.clip("日本語", 6));
    }

    @Test
    void a_text_is_wrapped_at_blanks_and_at_its_own_line_breaks() {
        assertEquals(List.of("Drain the", "oil while", "warm"), TextWidth.wrap("Drain the oil while warm", 9));
        assertEquals(List.of("one", "", "two"), TextWidth.wrap("one\n\r\ntwo", 9));
        assertEquals(List.of(""), TextWidth.wrap("", 4));
    }

    @Test
    void a_word_longer_than_the_line_is_broken() {
        assertEquals(List.of("abcd", "ef", "gh"), TextWidth.wrap("abcdef gh", 4));
        assertEquals(List.of("日本", "語"), TextWidth.wrap("日本語", 5));
        assertEquals(List.of("日", "本"), TextWidth.wrap("日本", 1), "one column still makes progress");
    }
}
