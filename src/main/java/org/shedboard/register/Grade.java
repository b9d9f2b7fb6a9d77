package org.shedboard.register;

/** How well a word that was typed suits one that is written, the best first. */
public enum Grade {
    /** It is the same word. */
    EXACT,
    /** The word begins with it. */
    PREFIX,
    /** It stands inside the word. */
    INSIDE,
    /** It is there but for typing mistakes. */
    FORGIVEN,
    NONE;

    boolean isBetterThan(Grade other) {
        return compareTo(other) < 0;
    }

    Grade worse(Grade other) {
        return isBetterThan(other) ? other : this;
    }
}
