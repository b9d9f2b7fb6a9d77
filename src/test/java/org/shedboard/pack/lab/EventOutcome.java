package org.shedboard.pack.lab;

import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;

/**
 * What repacking with a posted plan came to after one event.
 *
 * @param percentOver how much more it costs, what moving costs left out, than packing freely
 * @param moved starts in the next hour that are otherwise than in the posted plan moved along by itself
 * @param gained promises kept that the plan moved along misses
 * @param lost the other way round
 */
record EventOutcome(double percentOver, int moved, int gained, int lost) {
    private static final double MOST_PERCENT = 1;
    private static final int SOON_MINUTES = 60;

    /**
     * @param plain the problem, without what moving costs
     * @param followed the posted plan moved along
     * @param offered packed with the posted plan, moving at its price
     * @param free packed as if moving cost nothing
     */
    static EventOutcome of(Problem plain, Plan followed, Plan offered, Plan free) {
        Promises before = Promises.of(plain, followed);
        Promises after = Promises.of(plain, offered);
        return new EventOutcome(
                Score.of(plain, offered).percentOver(Score.of(plain, free)),
                moved(plain, followed, offered),
                before.missedOf(after),
                after.missedOf(before));
    }

    /** Only what is in both plans can move. */
    static int moved(Problem problem, Plan from, Plan to) {
        int moved = 0;
        for (Plan.TaskTime time : from.tasks()) {
            boolean isSoon = time.start() >= problem.now() && time.start() < problem.now() + SOON_MINUTES;
            boolean isElsewhen = to.findTask(time.job(), time.stay(), time.task())
                    .filter(other -> other.start() != time.start())
                    .isPresent();
            moved += isSoon && isElsewhen ? 1 : 0;
        }
        return moved;
    }

    boolean isNear() {
        return percentOver <= MOST_PERCENT;
    }

    /** Moving one for a promise that costs another gains none. */
    boolean movesForNothing() {
        return moved > 0 && gained <= lost;
    }

    boolean isMet() {
        return isNear() && !movesForNothing();
    }
}
