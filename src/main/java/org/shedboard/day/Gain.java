package org.shedboard.day;

import java.time.Instant;
import java.util.Optional;
import org.shedboard.pack.Plan;
import org.shedboard.shop.Visit;

/**
 * What another plan of the same day gains on the one on the board.
 *
 * @param earlier how many machines it has ready earlier
 * @param later how many it has ready later
 * @param promises how many more promises it keeps
 */
public record Gain(int earlier, int later, int promises) {
    static Gain of(Outlook outlook, Plan other) {
        Outlook then = outlook.with(other);
        int earlier = 0;
        int later = 0;
        int promises = 0;
        for (Visit visit : outlook.day().visits()) {
            Optional<Instant> before = outlook.readyAt(visit.id());
            Optional<Instant> after = then.readyAt(visit.id());
            earlier += isEarlier(after, before) ? 1 : 0;
            later += isEarlier(before, after) ? 1 : 0;
            promises += kept(visit, after) - kept(visit, before);
        }
        return new Gain(earlier, later, promises);
    }

    /** A machine that is in the one plan and not in the other is ready earlier in the one. */
    private static boolean isEarlier(Optional<Instant> one, Optional<Instant> other) {
        return one.isPresent() && (other.isEmpty() || one.get().isBefore(other.get()));
    }

    private static int kept(Visit visit, Optional<Instant> ready) {
        boolean kept = visit.promise().isPresent()
                && ready.filter(at -> !at.isAfter(visit.promise().get().at())).isPresent();
        return kept ? 1 : 0;
    }
}
