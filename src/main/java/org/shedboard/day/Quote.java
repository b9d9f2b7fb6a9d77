package org.shedboard.day;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.shedboard.estimate.Estimate;

/**
 * What could be promised for a machine, in the plan already or not.
 *
 * @param estimate the work by the catalogue
 * @param why how long that takes here, and why
 * @param asPosted with everybody going on as posted and this machine fitted in
 * @param repacked with the day packed anew around it, or left as posted where that is no earlier
 * @param isRepacking whether that is still being worked out
 * @param endangered whose promises it would put in danger as posted
 */
public record Quote(
        Estimate estimate,
        WhySoLong why,
        Optional<Offer> asPosted,
        Optional<Offer> repacked,
        boolean isRepacking,
        List<Endangered> endangered) {
    public Quote {
        endangered = List.copyOf(endangered);
    }

    /** Minutes it takes here. */
    public Estimate.Range range() {
        return why.explained().range();
    }

    /** Another machine whose promise would be in danger, and the chance, in a hundred, that is left of it. */
    public record Endangered(String name, int chance) {}

    /**
     * A time to promise.
     *
     * @param planned when the plan has it ready
     * @param promise the earliest quarter of an hour with at least the asked chance
     * @param chance the chance of that time, in a hundred
     * @param readyTimes when it was ready in each of the replayed days
     */
    public record Offer(Instant planned, Instant promise, int chance, List<Instant> readyTimes) {
        public Offer {
            readyTimes = List.copyOf(readyTimes);
        }

        /** The chance of being ready by a time, in a hundred. */
        public int chanceBy(Instant time) {
            long within =
                    readyTimes.stream().filter(ready -> !ready.isAfter(time)).count();
            return readyTimes.isEmpty() ? 0 : (int) Math.round(100.0 * within / readyTimes.size());
        }
    }

    /** A quote, or why the machine cannot be taken in like this. */
    public sealed interface Answer {
        /** What could be promised. */
        record Given(Quote quote) implements Answer {}

        /** Why not. */
        record NotGiven(Refusal refusal) implements Answer {}
    }

    /** With what packing anew offers; what is offered as posted where that is earlier, since the day can be left as it is. */
    Quote withRepacked(Optional<Offer> offer) {
        return new Quote(estimate, why, asPosted, earlier(offer), false, endangered);
    }

    private Optional<Offer> earlier(Optional<Offer> offer) {
        boolean isAsPosted = asPosted.isPresent()
                && (offer.isEmpty()
                        || asPosted.get().promise().isBefore(offer.get().promise()));
        return isAsPosted ? asPosted : offer;
    }

    Quote endangering(List<Endangered> others) {
        return new Quote(estimate, why, asPosted, repacked, isRepacking, others);
    }
}
