package org.shedboard.term;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TextColor;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.shedboard.grid.Style;
import org.shedboard.grid.TextWidth;
import org.shedboard.look.Colour;
import org.shedboard.look.Scheme;

/** What a terminal is told for each style. That the schemes themselves can be read is tested where they are. */
class PaletteTest {
    /** For text, by WCAG 2.2, level AA. */
    private static final double READABLE = 4.5;

    /** Source: xterm 379, its default resources with the X server's names of colours. */
    private static final List<Colour> XTERM = lights(
            "000000 cd0000 00cd00 cdcd00 0000ee cd00cd 00cdcd e5e5e5 7f7f7f ff0000 00ff00 ffff00 5c5cff ff00ff 00ffff ffffff");

    /** Source: the text colours of VGA, which the console of Linux has, from memory. */
    private static final List<Colour> CONSOLE = lights(
            "000000 aa0000 00aa00 aa5500 0000aa aa00aa 00aaaa aaaaaa 555555 ff5555 55ff55 ffff55 5555ff ff55ff 55ffff ffffff");

    private static List<Colour> lights(String hex) {
        return Arrays.stream(hex.split(" "))
                .map(each -> Integer.parseInt(each, 16))
                .map(each -> new Colour(each >> 16, each >> 8 & 255, each & 255))
                .toList();
    }

    static Stream<Arguments> all() {
        return Arrays.stream(Scheme.values())
                .flatMap(scheme -> Arrays.stream(Style.values()).map(style -> Arguments.of(scheme, style)));
    }

    private static String code(TextColor colour) {
        return new String(colour.getForegroundSGRSequence(), StandardCharsets.US_ASCII);
    }

    @ParameterizedTest
    @MethodSource("all")
    void a_terminal_with_any_colours_is_told_those_of_the_scheme(Scheme scheme, Style style) {
        Paint paint = Palette.trueColours(scheme).paint(style);
        Colour ink = scheme.of(style).ink();
        assertEquals(
                "38;2;%s;%s;%s".formatted("" + ink.red(), "" + ink.green(), "" + ink.blue()), code(paint.foreground()));
        assertEquals(scheme.of(style).paper(), colour(paint.background()));
        assertEquals(scheme.of(style).isBold(), paint.modifiers().contains(SGR.BOLD));
    }

    @ParameterizedTest
    @MethodSource("all")
    void a_terminal_with_256_colours_is_told_fixed_ones(Scheme scheme, Style style) {
        Paint paint = Palette.fixed(scheme).paint(style);
        assertEquals("38;5;" + scheme.of(style).ink().nearestFixed(), code(paint.foreground()));
        assertEquals("38;5;" + scheme.of(style).paper().nearestFixed(), code(paint.background()));
    }

    /** That the library means the same by a number is what the contrast of fixed colours rests on. */
    @ParameterizedTest
    @ValueSource(ints = {16, 33, 94, 196, 231, 232, 255})
    void the_library_takes_the_numbers_as_we_do(int number) {
        assertEquals(Colour.fixed(number), colour(new TextColor.Indexed(number)));
    }

    private static Colour colour(TextColor colour) {
        return new Colour(colour.getRed(), colour.getGreen(), colour.getBlue());
    }

    @ParameterizedTest
    @MethodSource("all")
    void the_usual_sixteen_can_be_read_on_an_xterm_and_on_a_console(Scheme scheme, Style style) {
        Paint paint = Palette.sixteen(scheme).paint(style);
        int ink = number(paint.foreground());
        int paper = number(paint.background());
        assertTrue(paper < 8, "a background has no bright colour");
        for (List<Colour> terminal : List.of(XTERM, CONSOLE)) {
            double ratio = terminal.get(ink).contrastTo(terminal.get(paper));
            assertTrue(ratio >= READABLE, () -> "the contrast is " + ratio);
        }
    }

    /** Some terminals show bold text in the brighter colour; then a dark ink would be another one. */
    @ParameterizedTest
    @MethodSource("all")
    void of_the_sixteen_only_bright_ink_is_bold(Scheme scheme, Style style) {
        Paint paint = Palette.sixteen(scheme).paint(style);
        assertTrue(!paint.modifiers().contains(SGR.BOLD) || number(paint.foreground()) >= 8);
    }

    /** Of one of the sixteen: the eight, then, behind the one for none of them, the eight bright ones. */
    private static int number(TextColor colour) {
        int ordinal = ((TextColor.ANSI) colour).ordinal();
        return ordinal < 8 ? ordinal : ordinal - 1;
    }

    @ParameterizedTest
    @EnumSource(Style.class)
    void without_colour_none_is_set(Style style) {
        Paint paint = Palette.twoColours().paint(style);
        assertSame(TextColor.ANSI.DEFAULT, paint.foreground());
        assertSame(TextColor.ANSI.DEFAULT, paint.background());
    }

    static Stream<Palette> palettes() {
        return Arrays.stream(Scheme.values())
                .flatMap(scheme -> Stream.of(
                        Palette.trueColours(scheme),
                        Palette.fixed(scheme),
                        Palette.sixteen(scheme),
                        Palette.twoColours()));
    }

    @ParameterizedTest
    @MethodSource("palettes")
    void what_is_urgent_or_chosen_looks_like_nothing_else(Palette palette) {
        assertNotEquals(palette.paint(Style.LATE), palette.paint(Style.NORMAL));
        assertNotEquals(palette.paint(Style.DANGER), palette.paint(Style.LATE));
        assertNotEquals(palette.paint(Style.DANGER), palette.paint(Style.SELECTED));
        assertNotEquals(palette.paint(Style.SELECTED), palette.paint(Style.NORMAL));
        assertNotEquals(palette.paint(Style.FIELD), palette.paint(Style.NORMAL));
        assertNotEquals(palette.paint(Style.CURSOR), palette.paint(Style.FIELD));
    }

    @Test
    void urgency_is_more_than_a_colour() {
        Palette fixed = Palette.fixed(Scheme.DARK);
        assertTrue(fixed.paint(Style.LATE).modifiers().contains(SGR.BOLD));
        assertFalse(fixed.paint(Style.NORMAL).modifiers().contains(SGR.BOLD));
    }

    @Test
    void each_kind_of_terminal_gets_its_palette() {
        assertEquals(Palette.twoColours().paint(Style.LATE), late("TERM", "vt100"));
        assertEquals(Palette.sixteen(Scheme.LIGHT).paint(Style.LATE), late("TERM", "linux"));
        assertEquals(Palette.fixed(Scheme.LIGHT).paint(Style.LATE), late("TERM", "xterm-256color"));
        assertEquals(Palette.trueColours(Scheme.LIGHT).paint(Style.LATE), late("COLORTERM", "truecolor"));
    }

    private static Paint late(String variable, String value) {
        return Palette.of(new TerminalKind(Map.of(variable, value)), Scheme.LIGHT)
                .paint(Style.LATE);
    }

    @Test
    void a_cell_is_made_once() {
        Palette palette = Palette.fixed(Scheme.DARK);
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
}
