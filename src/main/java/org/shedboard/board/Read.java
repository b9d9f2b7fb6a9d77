package org.shedboard.board;

import java.util.List;
import java.util.Optional;
import org.shedboard.learn.Drift;
import org.shedboard.register.Finder;
import org.shedboard.register.History;
import org.shedboard.tally.LookBack;
import org.shedboard.tally.SpanTally;

/**
 * The hours of the days last asked for, the month last looked back upon, and what a machine went through.
 *
 * @param finder made of books that may be older than the day
 * @param drifts what runs away from what is said of it, as it was worked out last
 * @param warnings what is not as it should be with the backups and the clock, a sentence each
 */
public record Read(
        Optional<SpanTally> hours,
        Optional<LookBack> lookBack,
        Optional<History> history,
        Optional<Finder> finder,
        List<Drift> drifts,
        List<String> warnings) {
    static final Read NOTHING =
            new Read(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), List.of(), List.of());

    public Read {
        drifts = List.copyOf(drifts);
    }

    Read with(SpanTally next) {
        return new Read(Optional.of(next), lookBack, history, finder, drifts, warnings);
    }

    Read with(LookBack next) {
        return new Read(hours, Optional.of(next), history, finder, drifts, warnings);
    }

    Read with(History next) {
        return new Read(hours, lookBack, Optional.of(next), finder, drifts, warnings);
    }

    Read with(Finder next) {
        return new Read(hours, lookBack, history, Optional.of(next), drifts, warnings);
    }

    Read with(List<Drift> next) {
        return new Read(hours, lookBack, history, finder, next, warnings);
    }

    Read warned(List<String> next) {
        return new Read(hours, lookBack, history, finder, drifts, next);
    }
}
