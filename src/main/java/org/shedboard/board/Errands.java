package org.shedboard.board;

import org.shedboard.day.Clocks;
import org.shedboard.day.Day;
import org.shedboard.hours.Errand;
import org.shedboard.words.Words;

/** How other work that is planned is said. */
public final class Errands {
    private Errands() {}

    /** Its time, kind and length, and what it is about. */
    public static String say(Day day, Errand errand) {
        return Words.say(
                        "errand.say",
                        Clocks.sayTime(day, errand.from()),
                        Words.say("otherWork." + errand.kind()),
                        errand.minutes(),
                        errand.note())
                .strip();
    }
}
