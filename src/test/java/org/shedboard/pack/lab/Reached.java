package org.shedboard.pack.lab;

import java.util.Locale;

/** What was reached of a target, in a phrase, and whether that is enough. */
record Reached(String text, Verdict verdict) {
    static Reached of(Verdict verdict, String format, Object... values) {
        return new Reached(String.format(Locale.ROOT, format, values), verdict);
    }

    static Reached nothing(String why) {
        return new Reached(why, Verdict.OPEN);
    }
}
