package org.shedboard.day;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.shedboard.estimate.Estimate;
import org.shedboard.estimate.Estimator;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Search;
import org.shedboard.pack.search.Packer;
import org.shedboard.shop.Intake;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Visit;

/**
 * What could be promised for a machine, in the plan already or not.
 *
 * @param asPosted with everybody going on as posted and this machine fitted in
 * @param repacked with the day packed anew around it
 * @param endangered whose promises it would put in danger as posted
 */
public record Quote(
        Estimate estimate, Optional<Offer> asPosted, Optional<Offer> repacked, List<Endangered> endangered) {
    /** The chance, in a hundred, below which a promise is in danger. */
    private static final int IN_DANGER = 50;

    public Quote {
        endangered = List.copyOf(endangered);
    }

    /** Another machine whose promise would be in danger, and the chance, in a hundred, that is left of it. */
    public record Endangered(String name, int chance) {}

    /** Promises are said in quarters of an hour. */
    private static final int QUARTER = 15;

    private static final long TRIES = 600;
    private static final long SEED = 7;

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

    /**
     * The earliest times with at least this chance.
     *
     * @param chance in a hundred
     */
    public static Answer of(Day day, Act.TakeIn wanted, int chance, Instant now) {
        Outcome outcome = Acts.apply(day, withoutPromise(wanted), now);
        if (outcome instanceof Outcome.Refused refused) {
            return new Answer.NotGiven(refused.refusal());
        }
        Outcome.Done done = (Outcome.Done) outcome;
        Visit visit = done.day().expectVisit(done.subject().orElseThrow());
        Quote quote = of(done.day(), visit, chance, now);
        return new Answer.Given(quote.endangering(Outlook.of(day, now), Outlook.of(done.day(), now)));
    }

    /**
     * The earliest times with at least this chance for a machine that is here or expected.
     *
     * @param chance in a hundred
     */
    public static Quote of(Day day, Visit visit, int chance, Instant now) {
        Problem problem = Problems.of(day, now);
        Plan fitted = problem.posted().isPresent() ? Planning.settled(problem) : Planning.quick(problem);
        Plan packed = Packer.pack(problem, new Search(SEED, TRIES));
        return new Quote(
                new Estimator(day.books().catalogue())
                        .estimate(day.machineOf(visit).classId(), visit.intake(), visit.lines()),
                offer(Outlook.of(day, now, problem, fitted), visit, chance),
                offer(Outlook.of(day, now, problem, packed), visit, chance),
                List.of());
    }

    /** With the promises to others that taking the machine in as posted would put in danger. */
    private Quote endangering(Outlook before, Outlook after) {
        List<Endangered> worse = before.day().visits().stream()
                .filter(visit -> visit.state().isOpen())
                .filter(visit -> before.chanceOfPromise(visit).orElse(0) >= IN_DANGER
                        && after.chanceOfPromise(visit).orElse(0) < IN_DANGER)
                .map(visit -> new Endangered(
                        Names.of(before.day(), visit),
                        after.chanceOfPromise(visit).orElse(0)))
                .toList();
        return new Quote(estimate, asPosted, repacked, worse);
    }

    /** As {@link #of(Day, Visit, int, Instant)}, had a machine on which no work has begun come in clean. */
    public static Quote ofClean(Day day, Visit visit, int chance, Instant now) {
        Intake clean = visit.intake().withMud(Mud.CLEAN);
        Estimate estimate = new Estimator(day.books().catalogue())
                .estimate(day.machineOf(visit).classId(), clean, visit.lines());
        Visit cleanVisit = visit.withIntake(clean).withStays(estimate.stays());
        return of(day.with(cleanVisit), cleanVisit, chance, now);
    }

    /** The same machine, had it come in clean. */
    public static Act.TakeIn cameInClean(Act.TakeIn wanted) {
        return new Act.TakeIn(
                wanted.whose(),
                wanted.which(),
                Mud.CLEAN,
                wanted.depth(),
                wanted.condition(),
                wanted.wanted(),
                wanted.tag(),
                wanted.meterHours(),
                wanted.expected(),
                wanted.note(),
                wanted.said());
    }

    private static Act.TakeIn withoutPromise(Act.TakeIn wanted) {
        return new Act.TakeIn(
                wanted.whose(),
                wanted.which(),
                wanted.mud(),
                wanted.depth(),
                wanted.condition(),
                wanted.wanted(),
                wanted.tag(),
                wanted.meterHours(),
                wanted.expected(),
                wanted.note(),
                Optional.empty());
    }

    private static Optional<Offer> offer(Outlook outlook, Visit visit, int chance) {
        Optional<Instant> planned = outlook.readyAt(visit.id());
        if (planned.isEmpty()) {
            return Optional.empty();
        }
        OptionalInt minute = outlook.chances().minuteWith(visit.id(), chance / 100.0);
        if (minute.isEmpty()) {
            return Optional.empty();
        }
        int quarter = Math.floorDiv(minute.getAsInt() + QUARTER - 1, QUARTER) * QUARTER;
        Instant promise = outlook.day().instantOf(quarter);
        int reached = outlook.chanceBy(visit.id(), promise).orElse(0);
        List<Instant> ready = Arrays.stream(outlook.chances().finishes(visit.id()))
                .mapToObj(outlook.day()::instantOf)
                .toList();
        return Optional.of(new Offer(planned.get(), promise, reached, ready));
    }
}
