package org.shedboard.app.command;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.shedboard.day.Day;
import org.shedboard.day.KnockOffChance;
import org.shedboard.day.Outlook;
import org.shedboard.day.Quoting;
import org.shedboard.register.History;
import org.shedboard.tally.Ledger;
import org.shedboard.tally.LookBack;
import org.shedboard.tally.SpanTally;

/** A day as one command sees it, at one moment. How it looks from there is worked out only
 * when it is asked for. */
public final class Seen {
    private final Day day;
    private final Instant now;
    private final Quoting.Repacking repacking;
    private final Records records;
    private Optional<Outlook> outlook = Optional.empty();
    private Optional<Optional<KnockOffChance>> knockOff = Optional.empty();

    /** Reads from the records what a command may ask of other days; each span is from one date until another. */
    public interface Records {
        Ledger ledger(LocalDate from, LocalDate until);

        LookBack lookBack(LocalDate from, LocalDate until);

        History history(String machineId);
    }

    /** @param repacking how a quote has the day packed anew */
    public Seen(Day day, Instant now, Quoting.Repacking repacking, Records records) {
        this.day = day;
        this.now = now;
        this.repacking = repacking;
        this.records = records;
    }

    /**
     * The tally of the days from one date until another.
     *
     * @param until the day after the last
     */
    SpanTally tally(LocalDate from, LocalDate until) {
        return SpanTally.of(records.ledger(from, until));
    }

    /** The same days looked back upon. */
    LookBack lookBack(LocalDate from, LocalDate until) {
        return records.lookBack(from, until);
    }

    /** What a machine went through with us. */
    History history(String machineId) {
        return records.history(machineId);
    }

    /** The tally of the day. */
    SpanTally tally() {
        return tally(day.date(), day.date().plusDays(1));
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
