package org.shedboard.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

class GridTest {
    private final Canvas canvas = Canvas.of(new Size(6, 2));

    @Test
    void a_stored_screen_is_its_glyphs_in_a_frame_and_a_style_letter_for_each_cell() {
        canvas.text(canvas.region(), "日 é", Style.LATE);
        canvas.text(canvas.region(), 1, "ok", Style.KEY);
        assertEquals("""
            +------+
            |日 é  |
            |ok    |
            +------+
            LLLL..
            kk....
            """, canvas.grid().framed());
    }

    @Test
    void an_ascii_screen_holds_nothing_else_and_keeps_every_cell_in_place() {
        canvas.frame(canvas.region().left(3), Style.FRAME);
        canvas.text(canvas.region().rightOf(3), "日é", Style.LATE);
        canvas.text(canvas.region().rightOf(3), 1, "½→█", Style.LATE);
        assertEquals("""
            +------+
            |+-+??e|
            |+-+?>#|
            +------+
            ---LLL
            ---LLL
            """, canvas.grid().toAscii().framed());
    }

    @Test
    void every_character_has_an_ascii_stand_in() {
        for (int point = 0xA0; point < Character.MAX_VALUE; point++) {
            char plain = Glyphs.ascii((char) point);
            assertTrue(plain >= ' ' && plain <= '~', "U+%04X".formatted(point));
        }
    }

    @Test
    void our_own_glyphs_are_one_column_wide_and_are_known_in_ascii() throws IllegalAccessException {
        int checked = 0;
        for (var field : Glyphs.class.getFields()) {
            char glyph = field.getChar(null);
            assertEquals(1, TextWidth.of(glyph), field.getName());
            assertEquals(glyph, TextWidth.standIn(glyph), field.getName());
            assertTrue(Glyphs.ascii(glyph) != '?', field.getName());
            checked++;
        }
        assertTrue(checked > 15, "found only " + checked + " glyphs");
    }

    @Test
    void every_style_has_a_letter_of_its_own() {
        Set<Character> letters = new HashSet<>();
        for (Style style : Style.values()) {
            assertTrue(letters.add(style.code()), style + " shares its letter " + style.code());
            assertTrue(style.code() > ' ' && style.code() <= '~', style.name());
        }
    }

    @Test
    void there_is_no_cell_outside() {
        assertThrows(IndexOutOfBoundsException.class, () -> canvas.grid().glyph(6, 0));
        assertThrows(IndexOutOfBoundsException.class, () -> canvas.grid().style(0, -1));
    }
}
