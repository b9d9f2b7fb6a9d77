package org.shedboard.app.command;

import java.time.Instant;
import java.util.Optional;
import org.shedboard.day.Day;
import org.shedboard.day.Outlook;

/** A day as one command sees it, at one moment. How it looks from there is worked out only when it is asked for. */
public final class Seen {
    private final Day day;
    private final Instant now;
    private Optional<Outlook> outlook = Optional.empty();

    public Seen(Day day, Instant now) {
        this.day = day;
        this.now = now;
    }

    public Day day() {
        return day;
    }

    Instant now() {
        return now;
    }

    Outlook outlook() {
        if (outlook.isEmpty()) {
            outlook = Optional.of(Outlook.of(day, now));
        }
        return outlook.get();
    }
}
