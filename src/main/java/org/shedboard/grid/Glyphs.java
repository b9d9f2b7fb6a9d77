package org.shedboard.grid;

import java.text.Normalizer;

/**
 * The glyphs that we draw with ourselves, all of them one column wide and in the basic plane, and what stands for them
 * where only ASCII can be shown.
 */
public final class Glyphs {
    /** A full cell: big letters, hands-on minutes. */
    public static final char FULL = '█';
    /** Three shades, dark to light: unattended minutes, closed time, free time. */
    public static final char DARK = '▓';

    public static final char MEDIUM = '▒';
    public static final char LIGHT = '░';
    /** The lower half of a cell. */
    public static final char LOWER_HALF = '▄';
    /** The upper half of a cell. */
    public static final char UPPER_HALF = '▀';
    /** The left half of a cell. */
    public static final char LEFT_HALF = '▌';
    /** The right half of a cell. */
    public static final char RIGHT_HALF = '▐';
    /** Points at what is selected. */
    public static final char POINTER = '▶';
    /** There is more above, or it goes up. */
    public static final char UP = '▲';
    /** There is more below, or it goes down. */
    public static final char DOWN = '▼';
    /** From one to another. */
    public static final char ARROW = '→';

    public static final char ARROW_LEFT = '←';
    /** Something looked at and found good, or ticked. */
    public static final char TICK = '✓';
    /** Something found in need of a fix, or refused. */
    public static final char CROSS = '✗';
    /** Opens a line of a list. */
    public static final char BULLET = '•';
    /** A filled and an empty mark: promised, possible. */
    public static final char DISC = '●';

    public static final char CIRCLE = '○';
    /** A diamond: a promise on a time line. */
    public static final char DIAMOND = '◆';
    /** Separates two short texts on a line. */
    public static final char DOT = '·';

    public static final char HORIZONTAL = '─';
    public static final char VERTICAL = '│';
    /** A line that is not a border: the present minute, a quarter of an hour. */
    public static final char DASHED = '┊';

    /** Line glyphs by the arms they have: 1 up, 2 right, 4 down, 8 left. */
    private static final String LINES = " │─└││┌├─┘─┴┐┤┬┼";

    private static final String LINE_ARMS = "─│┌┐└┘├┤┬┴┼";
    private static final int[] ARMS = {10, 5, 6, 12, 3, 9, 7, 13, 14, 11, 15};

    /** Each glyph followed by what stands for it. */
    private static final String ASCII = "█#▓%▒=░:▄_▀\"▌|▐|▶>◀<▲^▼v→>←<↑^↓v✓v✗x•*●@○o◆*◇+·.…~"
            + "─-│|┊:┌+┐+└+┘+├+┤+┬+┴+┼+━-┃|═=║|°o±+×x÷/–-—-‘'’'“\"”\"";

    private Glyphs() {}

    /** A text with blanks for all lines that frame or part something. */
    static String withoutLines(String text) {
        StringBuilder rest = new StringBuilder();
        text.chars()
                .forEach(glyph -> rest.append(LINE_ARMS.indexOf(glyph) < 0 && glyph != DASHED ? (char) glyph : ' '));
        return rest.toString();
    }

    /** The line glyph that has the arms of both, so that borders which touch are joined. */
    static char joined(char under, char over) {
        int first = LINE_ARMS.indexOf(under);
        int second = LINE_ARMS.indexOf(over);
        if (first < 0 || second < 0) return over;
        return LINES.charAt(ARMS[first] | ARMS[second]);
    }

    /** What stands for a glyph where only ASCII can be shown: a letter loses its accents, the unknown becomes `?`. */
    public static char ascii(char glyph) {
        if (isAscii(glyph)) return glyph;
        for (int i = 0; i < ASCII.length(); i += 2) {
            if (ASCII.charAt(i) == glyph) return ASCII.charAt(i + 1);
        }
        char plain =
                Normalizer.normalize(String.valueOf(glyph), Normalizer.Form.NFD).charAt(0);
        return isAscii(plain) ? plain : TextWidth.UNKNOWN;
    }

    private static boolean isAscii(char glyph) {
        return glyph >= ' ' && glyph <= '~';
    }
}
