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

/**
 * How bytes become keys. Of several patterns that match, the last one wins: first stands one that swallows any sequence
 * nobody knows, then the library's own, then those of the number pad.
 */
final class BoardKeys implements KeyDecodingProfile {
    private static final char ESCAPE = 27;
    private static final int LONGEST_SEQUENCE = 40;

    /** Last characters of the number pad's sequences in its application mode, and what is printed on the keys. */
    private static final String PAD_CODES = "pqrstuvwxyklmnojX";

    private static final String PAD_KEYS = "0123456789+,-./*=";

    @Override
    public Collection<CharacterPattern> getPatterns() {
        List<CharacterPattern> patterns = new ArrayList<>();
        patterns.add(BoardKeys::controlSequence);
        patterns.addAll(new DefaultKeyDecodingProfile().getPatterns());
        patterns.add(new BasicCharacterPattern(new KeyStroke(KeyType.Enter), '\r'));
        patterns.add(BoardKeys::numberPad);
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
        StringBuilder code = new StringBuilder();
        for (char character : typed.subList(2, typed.size())) code.append(character);
        if (code.toString().equals("200~")) return new PasteMark(true);
        return code.toString().equals("201~") ? new PasteMark(false) : new KeyStroke(KeyType.Unknown);
    }

    private static Matching numberPad(List<Character> typed) {
        int length = typed.size();
        if (typed.get(0) != ESCAPE || length > 1 && typed.get(1) != 'O' || length > 3) return null;
        if (length < 3) return Matching.NOT_YET;
        if (typed.get(2) == 'M') return new Matching(new KeyStroke(KeyType.Enter));
        int key = PAD_CODES.indexOf(typed.get(2));
        return key < 0 ? null : new Matching(new KeyStroke(PAD_KEYS.charAt(key), false, false));
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
