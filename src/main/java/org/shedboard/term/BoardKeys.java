package org.shedboard.term;

import com.googlecode.lanterna.input.BasicCharacterPattern;
import com.googlecode.lanterna.input.CharacterPattern;
import com.googlecode.lanterna.input.CharacterPattern.Matching;
import com.googlecode.lanterna.input.DefaultKeyDecodingProfile;
import com.googlecode.lanterna.input.KeyDecodingProfile;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.regex.Pattern;

/**
 * How bytes become keys. Of several patterns that match, the last one wins: first stands one that swallows any sequence
 * nobody knows, then the library's own, then those of the number pad and of the mouse.
 */
final class BoardKeys implements KeyDecodingProfile {
    private static final char ESCAPE = 27;
    private static final int LONGEST_SEQUENCE = 40;

    /** Last characters of the number pad's sequences in its application mode, and what is printed on the keys. */
    private static final String PAD_CODES = "pqrstuvwxyklmnojX";

    private static final String PAD_KEYS = "0123456789+,-./*=";

    /** Button, column and row as the terminal reports them, counted from 1 and at most as many digits as a window can have. */
    private static final Pattern REPORT = Pattern.compile("[0-9]{1,3};[1-9][0-9]{0,4};[1-9][0-9]{0,4}");

    private static final int FIRST_BUTTON = 0;
    private static final int WHEEL_UP = 64;
    private static final int WHEEL_DOWN = 65;
    /** Shift, meta and control held meanwhile: a press is a press. */
    private static final int MODIFIERS = 4 | 8 | 16;

    @Override
    public Collection<CharacterPattern> getPatterns() {
        List<CharacterPattern> patterns = new ArrayList<>();
        patterns.add(BoardKeys::controlSequence);
        patterns.addAll(new DefaultKeyDecodingProfile().getPatterns());
        patterns.add(new BasicCharacterPattern(new KeyStroke(KeyType.Enter), '\r'));
        patterns.add(BoardKeys::numberPad);
        patterns.add(BoardKeys::mouse);
        return patterns;
    }

    private static Matching controlSequence(List<Character> typed) {
        int length = typed.size();
        if (typed.get(0) != ESCAPE || length > 1 && typed.get(1) != '[') return null;
        if (length < 3) return Matching.NOT_YET;
        // an old mouse report, and the console's own F1 to F5: the library knows them
        if (typed.get(2) == 'M' || typed.get(2) == '[') return null;
        for (int i = 2; i < length - 1; i++) {
            if (isLast(typed.get(i)) || typed.get(i) < ' ') return null;
        }
        if (isLast(typed.get(length - 1))) return new Matching(meaning(typed));
        return length < LONGEST_SEQUENCE ? Matching.NOT_YET : null;
    }

    private static boolean isLast(char character) {
        return character >= '@' && character <= '~';
    }

    private static KeyStroke meaning(List<Character> typed) {
        return switch (text(typed.subList(2, typed.size()))) {
            case "200~" -> new PasteMark(true);
            case "201~" -> new PasteMark(false);
            default -> new KeyStroke(KeyType.Unknown);
        };
    }

    private static Matching numberPad(List<Character> typed) {
        int length = typed.size();
        if (typed.get(0) != ESCAPE || length > 1 && typed.get(1) != 'O' || length > 3) return null;
        if (length < 3) return Matching.NOT_YET;
        if (typed.get(2) == 'M') return new Matching(new KeyStroke(KeyType.Enter));
        int key = PAD_CODES.indexOf(typed.get(2));
        return key < 0 ? null : new Matching(new KeyStroke(PAD_KEYS.charAt(key), false, false));
    }

    /** {@code ESC [ < button ; column ; row} and M when it goes down, m when it goes up (xterm control sequences, SGR mouse mode 1006). */
    private static Matching mouse(List<Character> typed) {
        int length = typed.size();
        if (typed.get(0) != ESCAPE || length > 1 && typed.get(1) != '[' || length > 2 && typed.get(2) != '<')
            return null;
        if (length < 4) return Matching.NOT_YET;
        char last = typed.get(length - 1);
        if (!isLast(last)) return length < LONGEST_SEQUENCE ? Matching.NOT_YET : null;
        return new Matching(last == 'M' ? pressed(text(typed.subList(3, length - 1))) : new KeyStroke(KeyType.Unknown));
    }

    private static KeyStroke pressed(String report) {
        if (!REPORT.matcher(report).matches()) return new KeyStroke(KeyType.Unknown);
        String[] parts = report.split(";");
        return switch (Integer.parseInt(parts[0]) & ~MODIFIERS) {
            case FIRST_BUTTON -> new Touch(Integer.parseInt(parts[1]) - 1, Integer.parseInt(parts[2]) - 1);
            case WHEEL_UP -> new KeyStroke(KeyType.ArrowUp);
            case WHEEL_DOWN -> new KeyStroke(KeyType.ArrowDown);
            default -> new KeyStroke(KeyType.Unknown);
        };
    }

    private static String text(List<Character> characters) {
        StringBuilder text = new StringBuilder();
        for (char character : characters) text.append(character);
        return text.toString();
    }

    /** A finger, or the mouse's first button, on a cell. */
    static final class Touch extends KeyStroke {
        final int column;
        final int row;

        Touch(int column, int row) {
            super(KeyType.Unknown);
            this.column = column;
            this.row = row;
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Touch touch && touch.column == column && touch.row == row;
        }

        @Override
        public int hashCode() {
            return 31 * column + row;
        }
    }

    /** The beginning or the end of a pasted text. */
    static final class PasteMark extends KeyStroke {
        final boolean isStart;

        PasteMark(boolean isStart) {
            super(KeyType.Unknown);
            this.isStart = isStart;
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof PasteMark mark && mark.isStart == isStart;
        }

        @Override
        public int hashCode() {
            return Boolean.hashCode(isStart);
        }
    }
}
