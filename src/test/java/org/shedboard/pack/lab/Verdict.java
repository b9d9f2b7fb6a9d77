package org.shedboard.pack.lab;

/** Whether a target was met. */
enum Verdict {
    MET("yes"),
    MISSED("no"),
    /** Nothing to judge by: no file, no plan kept, or a figure that is only reported. */
    OPEN("-");

    private final String word;

    Verdict(String word) {
        this.word = word;
    }

    static Verdict of(boolean isMet) {
        return isMet ? MET : MISSED;
    }

    /** Of two parts of one target: missed where one is missed, met where both are. */
    Verdict and(Verdict other) {
        if (this == MISSED || other == MISSED) {
            return MISSED;
        }
        return this == MET && other == MET ? MET : OPEN;
    }

    String word() {
        return word;
    }
}
