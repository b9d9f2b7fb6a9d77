package org.shedboard.board;

import java.time.ZoneId;
import java.util.Optional;
import org.shedboard.day.AsSeen;
import org.shedboard.day.KnockOffChance;
import org.shedboard.day.Outlook;
import org.shedboard.tally.SpanTally;

/**
 * What a terminal knows of the shop.
 *
 * @param zone the zone of the machine it runs on, for a shop that is yet to be set up
 * @param seen the day as last read; empty before the first reading
 * @param better a better plan than the posted one, while it is on offer
 * @param read what was read besides, to be looked at
 * @param away why the records cannot be reached just now, in a sentence; empty while they can
 */
public record Known(ZoneId zone, Optional<Seen> seen, Optional<Better> better, Read read, Optional<String> away) {
    /**
     * The day as read, with its tally, and how sure knock-off is once that is worked out.
     *
     * @param change number of the newest change of the records that is in it
     */
    public record Seen(Outlook outlook, SpanTally tally, Optional<KnockOffChance> knockOff, long change) {
        Seen with(Optional<KnockOffChance> chance) {
            return new Seen(outlook, tally, chance, change);
        }

        AsSeen asSeen() {
            return new AsSeen(outlook.day(), change);
        }
    }

    static Known nothing(ZoneId zone) {
        return new Known(zone, Optional.empty(), Optional.empty(), Read.NOTHING, Optional.empty());
    }

    /** What was read just now: so the records can be reached. */
    Known with(Seen next) {
        return new Known(zone, Optional.of(next), better, read, Optional.empty());
    }

    Known with(Optional<Better> next) {
        return new Known(zone, seen, next, read, away);
    }

    Known with(Read next) {
        return new Known(zone, seen, better, next, away);
    }

    Known without(String records) {
        return new Known(zone, seen, better, read, Optional.of(records));
    }
}
