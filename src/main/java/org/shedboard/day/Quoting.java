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
import org.shedboard.shop.Intake;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Visit;

/**
 * A quote in the making: what can be said at once, by the posted plan, and what takes a search, by the day packed anew. Whoever has
 * threads packs the {@link #problem()} as {@link #SEARCH} says and gives the plan {@link #repacked(Plan) back}.
 */
public final class Quoting {
    /** How the day is packed anew: the first two steps of a search, which any but the largest days take well under a second for. */
    public static final Search SEARCH = Search.of(7, 20_000);

    /** The chance, in a hundred, below which a promise is in danger. */
    private static final int IN_DANGER = 50;

    /** Promises are said in quarters of an hour. */
    private static final int QUARTER = 15;

    /** Packs a problem anew: on one thread, as {@code Packer::pack} does, or on several; all find the same plan. */
    public interface Repacking {
        Plan pack(Problem problem, Search search);
    }

    /** What was asked: the earliest times with at least this chance, in a hundred, for a visit of this day. */
    private record Asked(Day day, Visit visit, int chance, Instant now, Packing packing) {
        static Asked of(Day day, Visit visit, int chance, Instant now) {
            return new Asked(day, visit, chance, now, Problems.packing(day, now, visit));
        }
    }

    private final Quote.Answer atOnce;
    private final Optional<Asked> asked;

    private Quoting(Quote.Answer atOnce, Optional<Asked> asked) {
        this.atOnce = atOnce;
        this.asked = asked;
    }

    /**
     * For a machine that is only described.
     *
     * @param chance that a time must have at least, in a hundred
     */
    public static Quoting of(Day day, Act.TakeIn wanted, int chance, Instant now) {
        Outcome outcome = Acts.apply(day, withoutPromise(wanted), now);
        if (outcome instanceof Outcome.Refused refused) {
            return new Quoting(new Quote.Answer.NotGiven(refused.refusal()), Optional.empty());
        }
        Outcome.Done done = (Outcome.Done) outcome;
        Visit visit = done.day().expectVisit(done.subject().orElseThrow());
        Asked asked = Asked.of(done.day(), visit, chance, now);
        return of(asked, atOnce(asked).endangering(endangered(Outlook.of(day, now), Outlook.of(done.day(), now))));
    }

    /**
     * For a machine that is here or expected.
     *
     * @param chance that a time must have at least, in a hundred
     */
    public static Quoting of(Day day, Visit visit, int chance, Instant now) {
        Asked asked = Asked.of(day, visit, chance, now);
        return of(asked, atOnce(asked));
    }

    /** As {@link #of(Day, Visit, int, Instant)}, had a machine on which no work has begun come in clean. */
    public static Quoting ofClean(Day day, Visit visit, int chance, Instant now) {
        Intake clean = visit.intake().withMud(Mud.CLEAN);
        Estimate estimate = new Estimator(day.books().catalogue())
                .estimate(day.machineOf(visit).classId(), clean, visit.lines());
        Visit cleanVisit = visit.withIntake(clean).withStays(estimate.stays());
        Day cameClean = day.with(cleanVisit);
        // the posted plan knows it with the stays of a dirty one: it goes wherever it fits best
        Day open = day.posted()
                .map(posted -> cameClean.with(posted.without(visit.id())))
                .orElse(cameClean);
        return of(open, cleanVisit, chance, now);
    }

    private static Quoting of(Asked asked, Quote quote) {
        return new Quoting(new Quote.Answer.Given(quote), Optional.of(asked));
    }

    private static Quote atOnce(Asked asked) {
        Problem problem = asked.packing().packed();
        Plan fitted = problem.posted().isPresent() ? Planning.settled(problem) : Planning.quick(problem);
        Estimate estimate = new Estimator(asked.day().books().catalogue())
                .estimate(
                        asked.day().machineOf(asked.visit()).classId(),
                        asked.visit().intake(),
                        asked.visit().lines());
        return new Quote(
                estimate,
                WhySoLong.of(asked.day(), asked.visit()),
                offer(asked, fitted),
                Optional.empty(),
                true,
                List.of());
    }

    /** With everybody going on as posted; what the day packed anew would offer is still open. */
    public Quote.Answer atOnce() {
        return atOnce;
    }

    /** What is to be packed anew; nothing where the machine cannot be taken in like this. */
    public Optional<Problem> problem() {
        return asked.map(each -> each.packing().packed());
    }

    /** The whole answer, with the plan that was found. */
    public Quote.Answer repacked(Plan plan) {
        Quote quote = ((Quote.Answer.Given) atOnce).quote();
        return new Quote.Answer.Given(quote.withRepacked(offer(asked.orElseThrow(), plan)));
    }

    /** The whole answer, for whoever waits for it. */
    public Quote.Answer whole(Repacking repacking) {
        return problem()
                .map(problem -> repacked(repacking.pack(problem, SEARCH)))
                .orElse(atOnce);
    }

    /** Others whose promises would come into danger. */
    private static List<Quote.Endangered> endangered(Outlook before, Outlook after) {
        return before.day().visits().stream()
                .filter(visit -> visit.state().isOpen())
                .filter(visit -> before.chanceOfPromise(visit).orElse(0) >= IN_DANGER
                        && after.chanceOfPromise(visit).orElse(0) < IN_DANGER)
                .map(visit -> new Quote.Endangered(
                        Names.of(before.day(), visit),
                        after.chanceOfPromise(visit).orElse(0)))
                .toList();
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
                wanted.said(),
                wanted.dials());
    }

    static Act.TakeIn withoutPromise(Act.TakeIn wanted) {
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
                Optional.empty(),
                wanted.dials());
    }

    private static Optional<Quote.Offer> offer(Asked asked, Plan plan) {
        Outlook outlook = Outlook.of(asked.day(), asked.now(), asked.packing(), plan);
        String id = asked.visit().id();
        Optional<Instant> planned = outlook.readyAt(id);
        OptionalInt minute =
                planned.isEmpty() ? OptionalInt.empty() : outlook.chances().minuteWith(id, asked.chance() / 100.0);
        if (minute.isEmpty()) {
            return Optional.empty();
        }
        int quarter = Math.floorDiv(minute.getAsInt() + QUARTER - 1, QUARTER) * QUARTER;
        Instant promise = asked.day().instantOf(quarter);
        int reached = outlook.chanceBy(id, promise).orElse(0);
        List<Instant> ready = Arrays.stream(outlook.chances().finishes(id))
                .mapToObj(asked.day()::instantOf)
                .toList();
        return Optional.of(new Quote.Offer(planned.get(), promise, reached, ready));
    }
}
