package org.shedboard.day;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.shedboard.pack.Packer;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Search;
import org.shedboard.pack.check.PlanCheck;

/** Keeps the posted plan true: every act is followed by the plan that it makes of the one on the board. */
public final class Planning {
    /** Tries for the first plan of a day, a second or less of looking. */
    private static final long OPENING_TRIES = 4_000;

    private static final long SEED = 1;

    private Planning() {}

    /** Carries an act out and moves the posted plan along with it. */
    public static Outcome carryOut(Day day, Act act, Instant now) {
        Outcome outcome = Acts.apply(day, act, now);
        if (!(outcome instanceof Outcome.Done done)
                || act instanceof Act.Post
                || !done.day().isOpened()) {
            return outcome;
        }
        Posted posted = act instanceof Act.OpenDay ? firstPlan(done.day(), now) : follow(done.day(), now);
        List<Change> changes = new ArrayList<>(done.changes());
        changes.add(new Change.PlanPosted(posted));
        return new Outcome.Done(done.day().with(posted), changes, done.subject());
    }

    /** A plan packed from nothing. */
    static Posted firstPlan(Day day, Instant now) {
        return new Posted(Packer.pack(Problems.of(day, now), new Search(SEED, OPENING_TRIES)), day.origin());
    }

    /** The posted plan moved along to this moment: same people, places and order wherever that still goes. */
    public static Posted follow(Day day, Instant now) {
        return new Posted(settled(Problems.of(day, now)), day.origin());
    }

    static Plan settled(Problem problem) {
        return Packer.follow(problem);
    }

    static Plan quick(Problem problem) {
        return Packer.first(problem);
    }

    /** A plan is posted only while it is true of the day: nothing it depends on has changed meanwhile. */
    static Outcome post(Draft draft, Act.Post act, Instant now) {
        Problem problem = Problems.of(draft.day(), now);
        if (!act.plan().origin().equals(draft.day().origin())
                || !isLegal(problem, act.plan().plan())) {
            return new Outcome.Refused(Refusal.of("plan_is_stale"));
        }
        draft.put(act.plan());
        return draft.done();
    }

    static boolean isLegal(Problem problem, Plan plan) {
        return PlanCheck.of(problem, plan).isLegal();
    }
}
