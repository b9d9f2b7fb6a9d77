package org.shedboard.day;

import java.time.Instant;
import org.shedboard.shop.Person;
import org.shedboard.shop.Progress;
import org.shedboard.shop.Task;

/** How much of a begun task is left: what was expected when the spell began, less the working minutes of the spell so far. */
final class Spell {
    /** A task that runs over its estimate always has something left, or nobody would be on it. */
    private static final int AT_LEAST = 1;

    private Spell() {}

    /** Hands-on minutes left of a begun task at this moment. */
    static int minutesLeft(Day day, Task task, Instant now) {
        Progress progress = task.progress();
        if (!progress.isRunning()) {
            return Math.max(AT_LEAST, progress.left());
        }
        Person person = day.shop().expectPerson(progress.person().orElseThrow());
        int worked = new Roster(day).shiftMinutes(person, progress.since().orElse(now), now);
        return Math.max(AT_LEAST, progress.left() - worked);
    }
}
