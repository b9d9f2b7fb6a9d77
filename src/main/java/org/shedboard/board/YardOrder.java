package org.shedboard.board;

import java.time.Instant;
import java.util.Comparator;
import java.util.OptionalInt;
import org.shedboard.day.Outlook;
import org.shedboard.shop.Visit;

/** In which order the machines of the yard are listed; equals stay in planned order. */
public enum YardOrder {
    PLAN,
    PROMISE,
    CHANCE,
    MUD,
    OWNER,
    TAG;

    /** A chance is of a hundred: whoever has none stands behind all others. */
    private static final int NO_CHANCE = 101;

    YardOrder next() {
        return values()[(ordinal() + 1) % values().length];
    }

    Comparator<Visit> comparator(Outlook outlook) {
        return switch (this) {
            case PLAN -> (one, other) -> 0;
            case PROMISE -> Comparator.comparing(YardOrder::promisedAt);
            case CHANCE -> Comparator.comparingInt(visit -> chance(outlook.chanceOfPromise(visit)));
            case MUD ->
                Comparator.comparing((Visit visit) -> visit.intake().mud()).reversed();
            case OWNER ->
                Comparator.comparing(visit -> outlook.day().ownerOf(visit).name());
            case TAG -> Comparator.comparingInt(visit -> visit.tag().orElse(Integer.MAX_VALUE));
        };
    }

    private static Instant promisedAt(Visit visit) {
        return visit.promise().map(promise -> promise.at()).orElse(Instant.MAX);
    }

    private static int chance(OptionalInt chance) {
        return chance.orElse(NO_CHANCE);
    }
}
