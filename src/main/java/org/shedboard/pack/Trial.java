package org.shedboard.pack;

import java.util.Arrays;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/** Tries solutions out, counts the tries, and keeps the best one found so far. */
final class Trial {
    static final long TOO_DEAR = Long.MAX_VALUE;

    private final FlatProblem flat;
    final Decoder decoder;
    final Tally tally;
    private final Dispatcher dispatcher;
    private final boolean[] left;
    private final BooleanSupplier stop;
    private final Consumer<Plan> better;

    private final PlanWriter writer;

    private Solution best;
    private Plan bestPlan;
    private int bestStranded = Integer.MAX_VALUE;
    private int bestUnplaced;
    private long bestCost;
    private long bestEnergy;

    long tries;
    private boolean stopped;

    Trial(Decoder decoder, Tally tally, boolean[] left, BooleanSupplier stop, Consumer<Plan> better) {
        this.decoder = decoder;
        this.tally = tally;
        this.left = left;
        this.stop = stop;
        this.better = better;
        flat = decoder.flat;
        dispatcher = new Dispatcher(decoder);
        writer = new PlanWriter(decoder, tally);
    }

    /** The energy of what the list makes. */
    long decode(Solution solution) {
        return decode(solution, Long.MAX_VALUE);
    }

    /** The energy of what the list makes, or {@link #TOO_DEAR} as soon as it is known to be above the limit. */
    long decode(Solution solution, long limit) {
        decoder.giveUpAbove(limit);
        decoder.decode(solution, left);
        return judge();
    }

    /** As {@link #decode(Solution, long)}, of what dispatching makes. */
    long dispatch(Solution wishes, int[] handicap, long limit) {
        decoder.giveUpAbove(limit);
        dispatcher.dispatch(wishes, handicap, left);
        return judge();
    }

    private long judge() {
        tries++;
        stopped |= stop.getAsBoolean();
        boolean givenUp = decoder.isGivenUp();
        decoder.giveUpAbove(Long.MAX_VALUE);
        if (givenUp) {
            return TOO_DEAR;
        }
        tally.count(left);
        if (isBetter()) {
            bestStranded = tally.stranded;
            bestUnplaced = tally.unplaced;
            bestCost = tally.cost;
            bestEnergy = tally.energy;
            best = capture();
            bestPlan = writer.write();
            better.accept(bestPlan);
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

    boolean isStopped() {
        return stopped;
    }

    /** The best solution so far, everyone and every place in it named. */
    Solution best() {
        return best;
    }

    long bestEnergy() {
        return bestEnergy;
    }

    int bestStranded() {
        return bestStranded;
    }

    Plan bestPlan() {
        return bestPlan;
    }

    /** The best plan so far; there is none when a job that has begun cannot be finished. */
    Plan expectPlan() {
        if (bestStranded > 0) {
            throw new IllegalArgumentException("a job that has begun cannot be finished by the horizon");
        }
        return bestPlan;
    }

    /** What the decoder holds as a solution: in order of start, with the people and places it chose. */
    Solution capture() {
        Solution solution = decoder.solution.copy();
        sortByStart(solution.list);
        for (int task = 0; task < flat.tasks; task++) {
            boolean chosen = decoder.isSet[task] && flat.crew[task] > 0;
            solution.crew[task] = chosen ? decoder.crews.who[task].clone() : null;
        }
        System.arraycopy(decoder.placeOfStay, 0, solution.place, 0, flat.stays);
        return solution;
    }

    /** The list in order of start; what has no time stays at the end. */
    void sortByStart(int[] list) {
        int[] position = new int[list.length];
        for (int index = 0; index < decoder.placed; index++) {
            position[decoder.sequence[index]] = index;
        }
        long[] sorted = new long[list.length];
        for (int task = 0; task < list.length; task++) {
            long start = decoder.isSet[task] ? decoder.start[task] : Integer.MAX_VALUE;
            sorted[task] = (start * (list.length + 1L) + position[task]) * list.length + task;
        }
        Arrays.sort(sorted);
        for (int index = 0; index < list.length; index++) {
            list[index] = (int) (sorted[index] % list.length);
        }
    }
}
