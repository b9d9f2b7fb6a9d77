package org.shedboard.board;

/** The sentence at the foot of the screen: something done, or why something cannot be. */
public record Note(String sentence, boolean isRefusal) {
    static Note done(String sentence) {
        return new Note(sentence, false);
    }

    static Note refused(String sentence) {
        return new Note(sentence, true);
    }
}
