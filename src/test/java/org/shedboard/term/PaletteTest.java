package org.shedboard.term;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TextColor;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.shedboard.grid.Style;
import org.shedboard.grid.TextWidth;

/** The measure of contrast is that of WCAG 2.2: relative luminance, and 4.5 to 1 for text (AA). */
class PaletteTest {
    private static final double READABLE = 4.5;

    /** Source: the formula of WCAG 2.2 with ratios recomputed for it, on white and on black. */
    @ParameterizedTest(name = "{0} {1} {2} is {3} on white and {4} on black")
    @CsvSource({
        "118,118,118,4.5422,4.6233", "119,119,119,4.4781,4.6895", "148,148,148,3.0335,6.9228", "89,89,89,7.0047,2.9980",
        "255,0,0,3.9985,5.2520", "0,255,0,1.3722,15.3040", "0,0,255,8.5925,2.4440", "255,255,0,1.0738,19.5560",
        "0,0,0,21,1", "255,255,255,1,21"
    })
    void contrast_is_measured_as_published(int red, int green, int blue, double onWhite, double onBlack) {
        double luminance = luminance(red, green, blue);
        assertEquals(onWhite, ratio(luminance, luminance(255, 255, 255)), 0.00006);
        assertEquals(onBlack, ratio(luminance, luminance(0, 0, 0)), 0.00006);
    }

    /** Source: the colour cube and the greys of xterm's 256 colours. */
    @ParameterizedTest(name = "colour {0} is {1} {2} {3}")
    @CsvSource({
        "16,0,0,0",
        "33,0,135,255",
        "160,215,0,0",
        "196,255,0,0",
        "231,255,255,255",
        "232,8,8,8",
        "244,128,128,128",
        "255,238,238,238"
    })
    void the_library_takes_the_numbers_as_the_terminal_does(int number, int red, int green, int blue) {
        assertEquals(luminance(red, green, blue), luminance(new TextColor.Indexed(number)), 1e-12);
    }

    @ParameterizedTest
    @EnumSource(Style.class)
    void every_fixed_pair_of_colours_can_be_read(Style style) {
        Palette.Look look = Palette.indexed().look(style);
        double ratio = ratio(luminance(look.foreground()), luminance(look.background()));
        assertTrue(ratio >= READABLE, style + " has a contrast of " + ratio);
    }

    @ParameterizedTest
    @EnumSource(Style.class)
    void fixed_colours_are_never_among_those_that_people_redefine(Style style) {
        Palette.Look look = Palette.indexed().look(style);
        for (TextColor colour : new TextColor[] {look.foreground(), look.background()}) {
            String code = new String(colour.getForegroundSGRSequence(), java.nio.charset.StandardCharsets.US_ASCII);
            assertTrue(code.startsWith("38;5;"), code);
            assertTrue(Integer.parseInt(code.substring(5)) >= 16, code);
        }
    }

    @ParameterizedTest
    @EnumSource(Style.class)
    void without_colour_none_is_set(Style style) {
        Palette.Look look = Palette.twoColours().look(style);
        assertSame(TextColor.ANSI.DEFAULT, look.foreground());
        assertSame(TextColor.ANSI.DEFAULT, look.background());
    }

    @Test
    void what_is_urgent_differs_in_more_than_its_colour() {
        Palette fixed = Palette.indexed();
        assertTrue(fixed.look(Style.LATE).modifiers().contains(SGR.BOLD));
        assertFalse(fixed.look(Style.NORMAL).modifiers().contains(SGR.BOLD));
        assertTrue(isDarkOnLight(fixed.look(Style.DANGER)) && isDarkOnLight(fixed.look(Style.SELECTED)));
        assertFalse(isDarkOnLight(fixed.look(Style.LATE)));
        Palette plain = Palette.twoColours();
        assertNotEquals(plain.look(Style.LATE), plain.look(Style.NORMAL));
        assertNotEquals(plain.look(Style.DANGER), plain.look(Style.LATE));
        assertNotEquals(plain.look(Style.DANGER), plain.look(Style.SELECTED));
        assertNotEquals(plain.look(Style.FIELD), plain.look(Style.NORMAL));
    }

    /** Source of the NO_COLOR rule: any value that is not empty turns colour off. */
    @ParameterizedTest(name = "TERM={0} COLORTERM={1} NO_COLOR={2}: fixed colours {3}")
    @CsvSource({
        "xterm-256color,'','',true", "xterm-256color,'',0,false", "xterm-256color,'',1,false", "xterm,'','',false",
        "xterm,truecolor,'',true", "linux,'','',false", "tmux-256color,'','',true", "'','','',false"
    })
    void colours_are_used_where_they_are_and_are_wanted(String term, String colours, String noColour, boolean fixed) {
        Palette palette = Palette.of(Map.of("TERM", term, "COLORTERM", colours, "NO_COLOR", noColour));
        assertEquals(fixed, palette.look(Style.NORMAL).equals(Palette.indexed().look(Style.NORMAL)));
    }

    @Test
    void an_environment_without_any_of_them_has_two_colours() {
        assertEquals(Palette.twoColours().look(Style.LATE), Palette.of(Map.of()).look(Style.LATE));
    }

    @Test
    void a_cell_is_made_once() {
        Palette palette = Palette.indexed();
        assertSame(palette.cell('x', Style.LATE), palette.cell('x', Style.LATE));
        assertNotEquals(palette.cell('x', Style.LATE), palette.cell('x', Style.NORMAL));
        assertNotEquals(palette.cell('x', Style.LATE), palette.cell('y', Style.LATE));
    }

    @Test
    void every_character_that_can_be_shown_takes_as_many_columns_as_we_count() {
        Palette palette = Palette.twoColours();
        for (int point = ' '; point <= Character.MAX_VALUE; point++) {
            for (char shown : TextWidth.shown(String.valueOf((char) point)).toCharArray()) {
                boolean wide = TextWidth.of(shown) == 2;
                assertEquals(wide, palette.cell(shown, Style.NORMAL).isDoubleWidth(), "U+%04X".formatted(point));
            }
        }
    }

    private static boolean isDarkOnLight(Palette.Look look) {
        return luminance(look.foreground()) < luminance(look.background());
    }

    private static double ratio(double one, double other) {
        return (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
    }

    private static double luminance(TextColor colour) {
        return luminance(colour.getRed(), colour.getGreen(), colour.getBlue());
    }

    private static double luminance(int red, int green, int blue) {
        return 0.2126 * linear(red) + 0.7152 * linear(green) + 0.0722 * linear(blue);
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
