package org.shedboard.grid;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * How many columns a text takes on the screen, and the text as it can be shown. The wide ranges are those of Unicode's
 * EastAsianWidth 15.0 (W and F); ambiguous ones count one column.
 */
public final class TextWidth {
    /** Ends a text that had to be cut. */
    public static final char CUT = '…';

    /** Stands for a character that would show nothing or steer the terminal. */
    static final char HIDDEN = '·';

    /** Stands for a character that a cell cannot hold. */
    static final char UNKNOWN = '?';

    /** First and last of each range of characters that take two columns. */
    private static final char[] WIDE = {
        0x1100, 0x115F, 0x231A, 0x231B, 0x2329, 0x232A, 0x23E9, 0x23EC, 0x23F0, 0x23F0, 0x23F3, 0x23F3,
        0x25FD, 0x25FE, 0x2614, 0x2615, 0x2648, 0x2653, 0x267F, 0x267F, 0x2693, 0x2693, 0x26A1, 0x26A1,
        0x26AA, 0x26AB, 0x26BD, 0x26BE, 0x26C4, 0x26C5, 0x26CE, 0x26CE, 0x26D4, 0x26D4, 0x26EA, 0x26EA,
        0x26F2, 0x26F3, 0x26F5, 0x26F5, 0x26FA, 0x26FA, 0x26FD, 0x26FD, 0x2705, 0x2705, 0x270A, 0x270B,
        0x2728, 0x2728, 0x274C, 0x274C, 0x274E, 0x274E, 0x2753, 0x2755, 0x2757, 0x2757, 0x2795, 0x2797,
        0x27B0, 0x27B0, 0x27BF, 0x27BF, 0x2B1B, 0x2B1C, 0x2B50, 0x2B50, 0x2B55, 0x2B55, 0x2E80, 0x303E,
        0x3041, 0x3247, 0x3250, 0x4DBF, 0x4E00, 0xA4CF, 0xA960, 0xA97C, 0xAC00, 0xD7A3, 0xF900, 0xFAFF,
        0xFE10, 0xFE19, 0xFE30, 0xFE6B, 0xFF01, 0xFF60, 0xFFE0, 0xFFE6
    };

    /** What numbers count; a line never ends between the two. */
    private static final Set<String> UNITS = Set.of(
            "h", "min", "m", "s", "kg", "g", "km", "mm", "cm", "l", "ml", "kPa", "V", "Nm", "hours", "minutes", "days");

    private TextWidth() {}

    /** Columns of one character: 2 when wide, 0 when it shows nothing by itself, otherwise 1. */
    public static int of(char character) {
        if (isHidden(character)) return 0;
        return isWide(character) ? 2 : 1;
    }

    /** Columns that the text takes once it is shown, stand-ins counted. */
    public static int of(String text) {
        return ofShown(shown(text));
    }

    /**
     * The text as it is shown: composed, and with a stand-in for everything that has no width of its own, steers the
     * terminal, or does not fit into a cell. Every character of the result is one or two columns wide.
     */
    public static String shown(String text) {
        if (isPlain(text)) return text;
        String composed = Normalizer.normalize(text, Normalizer.Form.NFC);
        StringBuilder shown = new StringBuilder(composed.length());
        composed.codePoints().forEach(point -> shown.append(standIn(point)));
        return shown.toString();
    }

    /** The text as it is shown, cut to so many columns; a cut text ends in {@link #CUT}. */
    public static String clip(String text, int columns) {
        String shown = shown(text);
        if (ofShown(shown) <= columns) return shown;
        if (columns <= 0) return "";
        return shown.substring(0, fitting(shown, 0, columns - 1)) + CUT;
    }

    /**
     * The text as it is shown, in lines of at most so many columns. It breaks at blanks, inside a word only where the
     * word alone is too long, and keeps the line breaks it has; there is always at least one line.
     */
    public static List<String> wrap(String text, int columns) {
        List<String> lines = new ArrayList<>();
        for (String line : text.split("\\R", -1)) wrapLine(shown(line), Math.max(1, columns), lines);
        return List.copyOf(lines);
    }

    private static void wrapLine(String line, int columns, List<String> lines) {
        int from = 0;
        do {
            int end = fitting(line, from, columns);
            if (end == from && end < line.length()) end++;
            if (end < line.length()) end = lastBreak(line, from, end);
            lines.add(line.substring(from, end).stripTrailing());
            from = end;
            while (from < line.length() && line.charAt(from) == ' ') from++;
        } while (from < line.length());
    }

    /** The last place up to {@code end} where a line may end: at a blank, else in the midst of the word. */
    private static int lastBreak(String line, int from, int end) {
        int blank = line.lastIndexOf(' ', end);
        while (blank > from && isInsideQuantity(line, blank)) blank = line.lastIndexOf(' ', blank - 1);
        return blank > from ? blank : end;
    }

    /** Whether a number and its unit stand on both sides of a blank, as in {@code 25 min} and twice in {@code 1 h 25}. */
    private static boolean isInsideQuantity(String line, int blank) {
        if (blank == 0 || blank + 1 >= line.length()) return false;
        char before = line.charAt(blank - 1);
        if (Character.isDigit(before)) return UNITS.contains(wordFrom(line, blank + 1));
        return before == 'h' && blank > 2 && line.charAt(blank - 2) == ' ' && Character.isDigit(line.charAt(blank + 1));
    }

    private static String wordFrom(String line, int from) {
        int end = from;
        while (end < line.length() && Character.isLetter(line.charAt(end))) end++;
        return line.substring(from, end);
    }

    /** Where a shown text must end so that what starts at {@code from} takes no more than so many columns. */
    static int fitting(String shown, int from, int columns) {
        int end = from;
        int used = 0;
        while (end < shown.length() && used + of(shown.charAt(end)) <= columns) {
            used += of(shown.charAt(end));
            end++;
        }
        return end;
    }

    static int ofShown(String shown) {
        int columns = 0;
        for (int i = 0; i < shown.length(); i++) columns += of(shown.charAt(i));
        return columns;
    }

    /** The character to show for a code point, which may be a stand-in. */
    static char standIn(int point) {
        if (point > Character.MAX_VALUE) return UNKNOWN;
        return switch (Character.getType(point)) {
            case Character.SURROGATE, Character.PRIVATE_USE, Character.UNASSIGNED -> UNKNOWN;
            default -> isHidden((char) point) ? HIDDEN : (char) point;
        };
    }

    private static boolean isPlain(String text) {
        for (int i = 0; i < text.length(); i++) {
            char character = text.charAt(i);
            if (character < ' ' || character > '~') return false;
        }
        return true;
    }

    private static boolean isHidden(char character) {
        if (character >= ' ' && character <= '~') return false;
        return switch (Character.getType(character)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.NON_SPACING_MARK,
                    Character.ENCLOSING_MARK,
                    Character.COMBINING_SPACING_MARK,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR -> true;
            default -> isHangulJoiner(character);
        };
    }

    /** Vowels and finals that a terminal draws into the syllable before, and the fillers that draw nothing. */
    private static boolean isHangulJoiner(char character) {
        return character >= 0x1160 && character <= 0x11FF
                || character >= 0xD7B0 && character <= 0xD7FB
                || character == 0x3164
                || character == 0xFFA0;
    }

    private static boolean isWide(char character) {
        if (character < WIDE[0]) return false;
        for (int i = 0; i < WIDE.length; i += 2) {
            if (character <= WIDE[i + 1]) return character >= WIDE[i];
        }
        return false;
    }
}
