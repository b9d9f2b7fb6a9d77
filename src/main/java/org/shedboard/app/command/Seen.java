package org.shedboard.app.command;

import java.time.Instant;
import java.util.Optional;
import org.shedboard.day.Day;
import org.shedboard.day.KnockOffChance;
import org.shedboard.day.Outlook;
import org.shedboard.day.Quoting;

/** A day as one command sees it, at one moment. How it looks from there is worked out only
 * when it is asked for. */
public final class Seen {
    private final Day day;
    private final Instant now;
    private final Quoting.Repacking repacking;
    private Optional<Outlook> outlook = Optional.empty();
    private Optional<Optional<KnockOffChance>> knockOff = Optional.empty();

    /** @param repacking how a quote has the day packed anew */
    public Seen(Day day, Instant now, Quoting.Repacking repacking) {
        this.day = day;
        this.now = now;
        this.repacking = repacking;
    }

    /** The same day from another moment. */
    Seen from(Instant other) {
        return new Seen(day, other, repacking);
    }

    public Day day() {
        return day;
    }

    Instant now() {
        return now;
    }

    Quoting.Repacking repacking() {
        return repacking;
    }

    Outlook outlook() {
        if (outlook.isEmpty()) {
            outlook = Optional.of(Outlook.of(day, now));
        }
        return outlook.get();
    }

    /** How sure knock-off is; empty when that says nothing. */
    Optional<KnockOffChance> knockOff() {
        if (knockOff.isEmpty()) {
            knockOff = Optional.of(KnockOffChance.of(outlook()));
        }
        return knockOff.get();
    }
}
