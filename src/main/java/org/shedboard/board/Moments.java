package org.shedboard.board;

import java.time.Instant;
import java.util.Locale;
import org.shedboard.day.Clocks;
import org.shedboard.day.Day;

/** Moments as a person would type them, so that what the program fills in can be read back by {@link Times}. */
final class Moments {
    private Moments() {}

    static String typed(Day day, Instant at) {
        return Clocks.sayTime(day, at).toLowerCase(Locale.ROOT);
    }
}
