package org.shedboard.term;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TextCharacter;
import com.googlecode.lanterna.TextColor;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.shedboard.grid.Style;
import org.shedboard.grid.TextWidth;

/**
 * How styles look. Where the terminal has 256 colours, the fixed ones among them are used (16 to 255: people redefine
 * the others), light on dark, every pair readable by the measure of WCAG 2.2 (4.5 to 1). Elsewhere, and where NO_COLOR
 * asks for it, the terminal's own two colours with bold, inverse and, for a field, an underline. Orange and blue carry
 * the meanings, not red and green, and what is urgent differs in more than its colour.
 */
public final class Palette {
    /** The dark grey that the screen is painted with. */
    private static final int PAGE = 234;

    private static final int BLACK = 16;
    private static final int WHITE = 231;
    private static final int ORANGE = 215;

    private final Map<Style, Look> looks = new EnumMap<>(Style.class);
    private final Map<Integer, TextCharacter> cells = new HashMap<>();

    private Palette() {}

    /** The palette for a terminal with such an environment: TERM, COLORTERM and NO_COLOR are looked at. */
    public static Palette of(Map<String, String> environment) {
        boolean plain = !environment.getOrDefault("NO_COLOR", "").isEmpty();
        String term = environment.getOrDefault("TERM", "");
        String colours = environment.getOrDefault("COLORTERM", "");
        boolean rich = term.contains("256color") || colours.equals("truecolor") || colours.equals("24bit");
        return rich && !plain ? indexed() : twoColours();
    }

    /** Fixed colours out of 256. */
    public static Palette indexed() {
        Palette palette = new Palette();
        for (Style style : Style.values()) palette.looks.put(style, indexed(style));
        return palette;
    }

    /** The terminal's own two colours. */
    public static Palette twoColours() {
        Palette palette = new Palette();
        for (Style style : Style.values()) palette.looks.put(style, plain(style));
        return palette;
    }

    Look look(Style style) {
        return looks.get(style);
    }

    /** The cell to paint; made once for each glyph and style, because making one is slow. */
    TextCharacter cell(char glyph, Style style) {
        return cells.computeIfAbsent(style.ordinal() << 16 | glyph, key -> newCell(glyph, look(style)));
    }

    private static TextCharacter newCell(char glyph, Look look) {
        TextCharacter cell = TextCharacter.fromString(
                String.valueOf(glyph), look.foreground(), look.background(), look.modifiers())[0];
        boolean wide = TextWidth.of(glyph) == 2;
        return cell.isDoubleWidth() == wide ? cell : new MeasuredCharacter(cell, wide);
    }

    private static Look indexed(Style style) {
        return switch (style) {
            case NORMAL -> new Look(253, PAGE);
            case QUIET -> new Look(248, PAGE);
            case TITLE -> new Look(WHITE, 24, SGR.BOLD);
            case STRONG -> new Look(WHITE, PAGE, SGR.BOLD);
            case SELECTED -> new Look(BLACK, 153);
            case LATE -> new Look(ORANGE, PAGE, SGR.BOLD);
            case DANGER -> new Look(BLACK, ORANGE, SGR.BOLD);
            case GOOD -> new Look(116, PAGE);
            case HANDS_ON -> new Look(BLACK, 74);
            case UNATTENDED -> new Look(153, 238);
            case HELD -> new Look(183, PAGE);
            case FREE -> new Look(249, PAGE);
            case CLOSED -> new Look(250, 238);
            case NOW -> new Look(229, PAGE, SGR.BOLD);
            case FRAME -> new Look(245, PAGE);
            case KEY -> new Look(117, PAGE, SGR.BOLD);
            case KEY_OFF -> new Look(246, PAGE);
            case CAUTION -> new Look(223, PAGE, SGR.BOLD);
            case FIELD -> new Look(WHITE, 238);
            case CURSOR -> new Look(BLACK, WHITE);
            case BREAK -> new Look(250, 236);
            case PROMISE -> new Look(222, PAGE);
        };
    }

    private static Look plain(Style style) {
        return switch (style) {
            case NORMAL, QUIET, GOOD, UNATTENDED, HELD, FREE, CLOSED, FRAME, KEY_OFF, BREAK, PROMISE -> new Look();
            case TITLE, STRONG, LATE, NOW, KEY, CAUTION -> new Look(SGR.BOLD);
            case SELECTED, HANDS_ON, CURSOR -> new Look(SGR.REVERSE);
            case DANGER -> new Look(SGR.BOLD, SGR.REVERSE);
            case FIELD -> new Look(SGR.UNDERLINE);
        };
    }

    /** Both colours, always set together, and how the letters are drawn. */
    record Look(TextColor foreground, TextColor background, EnumSet<SGR> modifiers) {
        Look(int foreground, int background, SGR... modifiers) {
            this(new TextColor.Indexed(foreground), new TextColor.Indexed(background), set(modifiers));
        }

        Look(SGR... modifiers) {
            this(TextColor.ANSI.DEFAULT, TextColor.ANSI.DEFAULT, set(modifiers));
        }

        private static EnumSet<SGR> set(SGR... modifiers) {
            EnumSet<SGR> set = EnumSet.noneOf(SGR.class);
            set.addAll(Set.of(modifiers));
            return set;
        }
    }
}
