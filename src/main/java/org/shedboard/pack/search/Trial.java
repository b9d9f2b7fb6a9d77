package org.shedboard.pack.search;

import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.shedboard.pack.Plan;
import org.shedboard.pack.numbers.FlatProblem;

/** Tries solutions out, counts the tries, and keeps the best one found so far. */
final class Trial {
    static final long TOO_DEAR = Long.MAX_VALUE;
    /** A better plan is told after so many tries at the latest: written out at once, most would be overtaken in the next moment. */
    private static final int TRIES_UNTIL_TOLD = 1024;

    final Decoder decoder;
    private final FlatProblem flat;
    final Tally tally;
    private final Dispatcher dispatcher;
    private final BooleanSupplier stop;
    private final Consumer<Plan> better;

    private final Solution best;
    private final Timetable bestTable;
    private int bestStranded = Integer.MAX_VALUE;
    private int bestUnplaced;
    private long bestCost;
    private long bestEnergy;
    private boolean isUntold;

    long tries;
    private boolean stopped;

    Trial(Decoder decoder, Tally tally, BooleanSupplier stop, Consumer<Plan> better) {
        this.decoder = decoder;
        this.tally = tally;
        this.stop = stop;
        this.better = better;
        flat = decoder.flat;
        dispatcher = new Dispatcher(decoder);
        best = Solution.plain(flat);
        bestTable = new Timetable(flat);
    }

    /** The energy of what the list makes. */
    long decode(Solution solution) {
        decoder.giveUpAbove(Long.MAX_VALUE);
        decoder.decode(solution);
        return judge();
    }

    /**
     * The energy of what the list makes, or {@link #TOO_DEAR} as soon as it is known to be above the limit.
     *
     * @param trail how a list was decoded whose first {@code kept} tasks are this one's too
     */
    long decode(Solution solution, Trail trail, int kept, long limit) {
        decoder.giveUpAbove(limit);
        decoder.decode(solution, trail, kept);
        return judge();
    }

    /** As {@link #decode(Solution)}, of what dispatching makes. */
    long dispatch(Solution wishes, int[] handicap) {
        decoder.giveUpAbove(Long.MAX_VALUE);
        dispatcher.dispatch(wishes, handicap);
        return judge();
    }

    /**
     * The energy of what dispatching makes, or {@link #TOO_DEAR} as soon as it is known to be above the limit.
     *
     * @param turns those of a plan with other handicaps, of which {@code kept} tasks have the same time with these
     */
    long dispatch(Solution wishes, int[] handicap, Turns turns, int kept, long limit) {
        decoder.giveUpAbove(limit);
        dispatcher.dispatch(wishes, handicap, turns, kept);
        return judge();
    }

    /** The plan dispatched last is the one whose turns are followed. */
    void tell(Turns turns) {
        dispatcher.tell(turns);
    }

    private long judge() {
        tries++;
        stopped |= stop.getAsBoolean();
        if (isUntold && tries % TRIES_UNTIL_TOLD == 0) {
            tell();
        }
        if (decoder.isGivenUp()) {
            return TOO_DEAR;
        }
        tally.count();
        if (isBetter()) {
            bestStranded = tally.stranded;
            bestUnplaced = tally.unplaced;
            bestCost = tally.cost;
            bestEnergy = tally.energy;
            capture();
            isUntold = true;
        }
        return tally.energy;
    }

    private boolean isBetter() {
        if (tally.stranded != bestStranded) {
            return tally.stranded < bestStranded;
        }
        if (tally.unplaced != bestUnplaced) {
            return tally.unplaced < bestUnplaced;
        }
        return tally.cost < bestCost || (tally.cost == bestCost && tally.energy < bestEnergy);
    }

    private void capture() {
        bestTable.take(decoder);
        bestTable.judge(tally);
        best.become(decoder.solution);
        bestTable.nameAll(best);
    }

    /** Says the best plan so far, if it was not said before. */
    void tell() {
        if (isUntold && bestStranded == 0) {
            better.accept(bestPlan());
        }
        isUntold = false;
    }

    /** The best solution so far with the choice of people and places left open again. */
    Solution bestFreed() {
        Solution freed = best.copy();
        freed.letChoose();
        return freed;
    }

    boolean isStopped() {
        return stopped;
    }

    /** The best solution so far, everyone and every place in it named, in order of start. */
    Solution best() {
        return best.copy();
    }

    long bestEnergy() {
        return bestEnergy;
    }

    int bestStranded() {
        return bestStranded;
    }

    Plan bestPlan() {
        return new PlanWriter(flat, decoder.outlook, bestTable).write();
    }

    /** The best plan so far; there is none when a job that has begun cannot be finished. */
    Plan expectPlan() {
        if (bestStranded > 0) {
            throw new IllegalArgumentException("a job that has begun cannot be finished by the horizon");
        }
        return bestPlan();
    }
}
