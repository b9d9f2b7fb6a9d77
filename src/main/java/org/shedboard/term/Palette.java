package org.shedboard.term;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TextCharacter;
import com.googlecode.lanterna.TextColor;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;
import org.shedboard.grid.Style;
import org.shedboard.grid.TextWidth;
import org.shedboard.look.Colour;
import org.shedboard.look.Look;
import org.shedboard.look.Scheme;

/**
 * How styles are painted on a terminal with so many colours. The colours of a {@link Scheme} where it can show any; the nearest
 * fixed ones where it has 256 (16 to 255: people redefine the others); pairs of the usual sixteen; or the terminal's own two with
 * bold, inverse and, for a field, an underline. What is urgent differs in more than its colour.
 */
public final class Palette {
    private final Map<Style, Paint> paints = new EnumMap<>(Style.class);
    private final Map<Integer, TextCharacter> cells = new HashMap<>();

    private Palette(Function<Style, Paint> paintOf) {
        for (Style style : Style.values()) paints.put(style, paintOf.apply(style));
    }

    /** The palette for such a terminal. */
    public static Palette of(TerminalKind kind, Scheme scheme) {
        return switch (kind.colours()) {
            case TWO -> twoColours();
            case SIXTEEN -> sixteen(scheme);
            case FIXED -> fixed(scheme);
            case TRUE -> trueColours(scheme);
        };
    }

    /** Any colours. */
    static Palette trueColours(Scheme scheme) {
        return new Palette(style -> paint(scheme.of(style), Palette::exact));
    }

    /** Fixed colours out of 256. */
    public static Palette fixed(Scheme scheme) {
        return new Palette(style -> paint(scheme.of(style), colour -> new TextColor.Indexed(colour.nearestFixed())));
    }

    /** The usual sixteen. */
    static Palette sixteen(Scheme scheme) {
        return new Palette(style -> SixteenColours.of(scheme, style));
    }

    /** The terminal's own two colours. */
    static Palette twoColours() {
        return new Palette(Palette::plain);
    }

    Paint paint(Style style) {
        return paints.get(style);
    }

    /** The cell to paint; made once for each glyph and style, because making one is slow. */
    TextCharacter cell(char glyph, Style style) {
        return cells.computeIfAbsent(style.ordinal() << 16 | glyph, key -> newCell(glyph, paint(style)));
    }

    private static TextCharacter newCell(char glyph, Paint paint) {
        TextCharacter cell = TextCharacter.fromString(
                String.valueOf(glyph), paint.foreground(), paint.background(), paint.modifiers())[0];
        return new MeasuredCharacter(cell, TextWidth.of(glyph) == 2);
    }

    private static Paint paint(Look look, Function<Colour, TextColor> colour) {
        TextColor ink = colour.apply(look.ink());
        TextColor paper = colour.apply(look.paper());
        return look.isBold() ? Paint.of(ink, paper, SGR.BOLD) : Paint.of(ink, paper);
    }

    private static TextColor exact(Colour colour) {
        return new TextColor.RGB(colour.red(), colour.green(), colour.blue());
    }

    private static Paint plain(Style style) {
        return switch (style) {
            case NORMAL, QUIET, GOOD, UNATTENDED, HELD, FREE, CLOSED, FRAME, KEY_OFF, BREAK, PROMISE -> Paint.plain();
            case TITLE, STRONG, LATE, NOW, KEY, CAUTION -> Paint.plain(SGR.BOLD);
            case SELECTED, HANDS_ON, CURSOR -> Paint.plain(SGR.REVERSE);
            case DANGER -> Paint.plain(SGR.BOLD, SGR.REVERSE);
            case FIELD -> Paint.plain(SGR.UNDERLINE);
        };
    }
}
