package org.shedboard.day;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Search;
import org.shedboard.pack.chance.Insertion;
import org.shedboard.pack.check.PlanCheck;
import org.shedboard.pack.search.Packer;

/** Keeps the posted plan true: every act is followed by the plan that it makes of the one on the board. */
public final class Planning {
    /** The first plan of a day is the best of so many looks, each from a seed of its own; together well under a second. */
    private static final int LOOKS = 4;

    private static final long TRIES_A_LOOK = 1_500;

    private Planning() {}

    /**
     * Carries an act out and moves the posted plan along with it. A figure that is put right moves nothing by itself: what was learned
     * has to be learned anew first, and then says much the same as before.
     */
    public static Outcome carryOut(Day day, Act act, Instant now) {
        Outcome outcome = Acts.apply(day, act, now);
        if (!(outcome instanceof Outcome.Done done)
                || act instanceof Act.Post
                || act instanceof Act.PinTask
                || act instanceof Act.AcceptFigure
                || !done.day().isOpened()) {
            return outcome;
        }
        Posted posted = isFreshStart(act) ? firstPlan(done.day(), now) : follow(loosened(done, act), now);
        List<Change> changes = new ArrayList<>(done.changes());
        changes.add(new Change.PlanPosted(posted));
        return new Outcome.Done(
                done.day().with(posted), changes, done.subject(), done.trace().withPlan(posted));
    }

    /** In the morning, and in the evening for what goes over, the plan before counts for nothing. */
    private static boolean isFreshStart(Act act) {
        return act instanceof Act.OpenDay || act instanceof Act.CloseDay;
    }

    /** A visit that may go on again goes wherever it fits best now, not where the plan had it while it was held. */
    private static Day loosened(Outcome.Done done, Act act) {
        Day day = done.day();
        if (act instanceof Act.TakeBack back) {
            return TakingBack.planOf(day, back.trace());
        }
        return act instanceof Act.Release release && day.posted().isPresent()
                ? day.with(day.posted().get().without(release.visitId()))
                : day;
    }

    /** A plan packed from nothing: what was posted before counts for nothing. */
    static Posted firstPlan(Day day, Instant now) {
        Problem problem = Problems.of(day.withoutPlan(), now);
        Plan best = Packer.pack(problem, new Search(1, TRIES_A_LOOK));
        for (int seed = 2; seed <= LOOKS; seed++) {
            Plan other = Packer.pack(problem, new Search(seed, TRIES_A_LOOK));
            best = other.isBetterThan(best) ? other : best;
        }
        return new Posted(best, day.origin());
    }

    /** The posted plan moved along to this moment: same people, places and order wherever that still goes. */
    public static Posted follow(Day day, Instant now) {
        return new Posted(settled(Problems.of(day, now)), day.origin());
    }

    /** The posted plan of the problem moved along, with the one visit in it that is new, if there is one. */
    static Plan settled(Problem problem) {
        List<String> fresh = problem.jobs().stream()
                .map(Problem.Job::id)
                .filter(job -> problem.posted().stream()
                        .flatMap(plan -> plan.tasks().stream())
                        .noneMatch(time -> time.job().equals(job)))
                .toList();
        Optional<Plan> fitted = fresh.size() == 1 ? Insertion.of(problem, fresh.get(0)) : Optional.empty();
        return fitted.orElseGet(() -> Packer.follow(problem));
    }

    static Plan quick(Problem problem) {
        return Packer.first(problem);
    }

    /**
     * Posts an offered plan as it is at this moment: moved along like any posted plan, since minutes have passed since it was
     * found. It is refused when that is no longer better than what is posted.
     */
    static Outcome post(Draft draft, Act.Post act, Instant now) {
        Day day = draft.day();
        Plan plan = offered(day, act.plan(), now);
        Problem today = Problems.of(day, now);
        boolean isBetter = today.posted().isEmpty() || plan.isBetterThan(settled(today));
        if (!act.plan().origin().equals(day.origin()) || !isBetter) {
            return new Outcome.Refused(Refusal.of("plan_is_stale"));
        }
        draft.put(new Posted(plan, day.origin()));
        return draft.done();
    }

    /** A plan that was found some minutes ago as it is at this moment, with what it costs beside the one that is posted. */
    public static Plan offered(Day day, Posted found, Instant now) {
        return costIn(Problems.of(day, now), settled(Problems.of(day.with(found), now)));
    }

    /** The plan with what it costs in this problem, where moving away from the posted plan counts. */
    static Plan costIn(Problem problem, Plan plan) {
        PlanCheck check = PlanCheck.of(problem, plan);
        return new Plan(
                check.cost(),
                plan.bound(),
                plan.unplaced(),
                plan.stays(),
                plan.tasks(),
                plan.seed(),
                plan.tries(),
                plan.millis());
    }
}
