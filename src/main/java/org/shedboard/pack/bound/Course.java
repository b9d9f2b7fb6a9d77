package org.shedboard.pack.bound;

import java.util.Arrays;
import org.shedboard.pack.Costs;
import org.shedboard.pack.Problem;
import org.shedboard.pack.numbers.FlatProblem;

/**
 * The cheapest way for one job to go, when every minute of a squad's work and of a room's space has its price and nobody else is in
 * the way. For each task, in the order of the {@link JobTree}: the least that it and all that feeds it cost when they are complete by
 * each number of the axis. A stay pays for its room from its opener's start to its end; the sums hold that as minus what the room costs
 * before the start, plus what it costs before the end.
 *
 * <p>Why it costs no more than the job costs in any plan at these prices: the job's own times in the plan are among the ways compared
 * here, its work in the squads of those who do it, its room from the opener on, which is not before the stay begins, and its
 * finish at the number of its last completion.
 */
final class Course {
    private static final int NOTHING = Integer.MIN_VALUE;

    private final Relaxed relaxed;
    private final FlatProblem flat;
    private final Axis axis;
    /** One for each squad, then one for each room. */
    private final Market[] markets;

    private final Ledger[] taskCosts;
    private final Ledger[] stayCosts;
    private final long[] nothing;
    private final long[] rents;
    private final long[] sums;
    /** What the stay's room costs before each number. */
    private long[] rent;
    /** What it costs to be ready for the task at each number. */
    private long[] ready;
    /** The number at which each task starts. */
    private final int[] start;

    private int firstTask;
    private int firstStay;
    /** The number at which the job last followed is finished. */
    private int finish;

    Course(Relaxed relaxed, Market[] markets) {
        this.relaxed = relaxed;
        this.markets = markets;
        flat = relaxed.flat;
        axis = relaxed.axis;
        int width = axis.length + 1;
        int tasks = 0;
        int stays = 0;
        for (int job = 0; job < flat.jobs; job++) {
            tasks = Math.max(tasks, flat.lastTaskOfJob(job) - flat.firstTaskOfJob(job));
            stays = Math.max(stays, flat.firstStay[job + 1] - flat.firstStay[job]);
        }
        taskCosts = new Ledger[tasks];
        Arrays.setAll(taskCosts, index -> new Ledger(width));
        stayCosts = new Ledger[stays];
        Arrays.setAll(stayCosts, index -> new Ledger(width));
        nothing = new long[width];
        rents = new long[width];
        sums = new long[width];
        start = new int[flat.tasks];
    }

    /** The least cost; what it takes is noted with the markets. {@link Ledger#NEVER} when the job cannot be done at all. */
    long follow(int job) {
        firstTask = flat.firstTaskOfJob(job);
        firstStay = flat.firstStay[job];
        for (int stay = firstStay; stay < flat.firstStay[job + 1]; stay++) {
            countRent(stay);
            for (int index = flat.firstTask[stay]; index < flat.firstTask[stay + 1]; index++) {
                fill(relaxed.earliest.order[index]);
            }
            endStay(stay);
        }
        return finish(job);
    }

    private Market spaceOf(int room) {
        return markets[relaxed.squads.length + room];
    }

    private void countRent(int stay) {
        rent = nothing;
        for (int room : relaxed.around[stay]) {
            rent = sum(rent, spaceOf(room).before, rents);
        }
    }

    /** The sum of both, made in {@code room} unless one of them is nothing. */
    private long[] sum(long[] one, long[] other, long[] room) {
        if (one == nothing) {
            return other;
        }
        if (one != room) {
            System.arraycopy(one, 0, room, 0, room.length);
        }
        Ledger.add(room, other);
        return room;
    }

    private void fill(int task) {
        Ledger costs = taskCosts[task - firstTask];
        costs.clear();
        if (flat.state[task] == FlatProblem.DONE) {
            costs.offer(axis.numberOf(relaxed.earliest.complete[task]), 0, NOTHING);
        } else {
            prepare(task);
            if (flat.crew[task] == 0) {
                offerUnattended(task, costs);
            }
            for (int squad : relaxed.teams[task]) {
                offerWork(task, squad, costs);
            }
            if (canStartBeyond(task)) {
                costs.offer(axis.length, ready[axis.length], -1 - axis.length);
            }
        }
        costs.settle();
    }

    /** Whether the task can start where the axis is cut, and nothing has a price. */
    private boolean canStartBeyond(int task) {
        boolean isPinnedBefore = flat.at[task] >= 0 && axis.numberOf(flat.at[task]) < axis.length;
        return axis.isCut && !isPinnedBefore && flat.state[task] != FlatProblem.GOING;
    }

    private void prepare(int task) {
        int stay = flat.stayOfTask[task];
        ready = nothing;
        for (int feeder : relaxed.tree.fedBy[task]) {
            ready = sum(ready, taskCosts[feeder - firstTask].least, sums);
        }
        if (relaxed.tree.isNext[task]) {
            ready = sum(ready, stayCosts[stay - 1 - firstStay].least, sums);
        }
        if (relaxed.tree.opener[stay] == task && rent != nothing) {
            takeOffRent();
        }
    }

    private void takeOffRent() {
        for (int number = 0; number < sums.length; number++) {
            sums[number] = ready[number] == Ledger.NEVER ? Ledger.NEVER : ready[number] - rent[number];
        }
        ready = sums;
    }

    private void offerUnattended(int task, Ledger costs) {
        int pinned = flat.at[task];
        int last = pinned >= 0 ? axis.numberOf(pinned) : axis.length;
        int number = 0;
        for (int from = axis.numberOf(relaxed.earliest.start[task]); from <= last; from++) {
            long end = Math.max(relaxed.earliest.start[task], axis.firstMinute(from)) + (long) flat.unattended[task];
            if (end > flat.problem.horizon()) {
                return;
            }
            number = axis.numberOf(end, Math.max(from, number));
            costs.offer(number, ready[from], -1 - from);
        }
    }

    private void offerWork(int task, int squad, Ledger costs) {
        int[] wall = relaxed.squads[squad].wall;
        int minutes = relaxed.minutes(task, squad);
        boolean isGoing = flat.state[task] == FlatProblem.GOING;
        int first = isGoing ? 0 : relaxed.squads[squad].firstFrom(axis.numberOf(relaxed.earliest.start[task]));
        int last = isGoing ? Math.min(1, wall.length) : lastStart(task, relaxed.squads[squad]);
        int within = Math.min(last, wall.length - minutes + 1);
        if (flat.unattended[task] > 0 || minutes == 0) {
            offerWithUnattended(task, squad, first, within, costs);
        } else {
            offerHandsOn(task, squad, first, within, costs);
        }
        for (int index = Math.max(first, within); axis.isCut && index < last; index++) {
            long cost = ready[wall[index]] + price(task, squad, index, wall.length);
            costs.offer(axis.length, cost, index * relaxed.squads.length + squad);
        }
    }

    private int lastStart(int task, Squad squad) {
        return flat.at[task] < 0 ? squad.wall.length : squad.firstFrom(axis.numberOf(flat.at[task]) + 1);
    }

    private long price(int task, int squad, int from, int to) {
        long[] before = markets[squad].before;
        return relaxed.heads(task) * (before[to] - before[from]) + relaxed.surcharges.points[task][squad];
    }

    /** The innermost loop of the bound. */
    private void offerHandsOn(int task, int squad, int first, int last, Ledger costs) {
        int[] wall = relaxed.squads[squad].wall;
        long[] before = markets[squad].before;
        long heads = relaxed.heads(task);
        long fixed = relaxed.surcharges.points[task][squad];
        int minutes = relaxed.minutes(task, squad);
        int squads = relaxed.squads.length;
        for (int index = first; index < last; index++) {
            int over = index + minutes;
            long cost = ready[wall[index]] + heads * (before[over] - before[index]) + fixed;
            costs.offer(wall[over - 1] + 1, cost, index * squads + squad);
        }
    }

    private void offerWithUnattended(int task, int squad, int first, int last, Ledger costs) {
        int[] wall = relaxed.squads[squad].wall;
        int minutes = relaxed.minutes(task, squad);
        int number = 0;
        for (int index = first; index < last; index++) {
            int over = index + minutes;
            int handsOff = minutes == 0 ? wall[index] : wall[over - 1] + 1;
            int minute = minutes == 0 ? axis.workingMinute(handsOff) : axis.firstMinute(handsOff);
            long end = minute + (long) flat.unattended[task];
            if (end > flat.problem.horizon()) {
                return;
            }
            number = axis.numberOf(end, Math.max(number, handsOff));
            long cost = ready[wall[index]] + price(task, squad, index, over);
            costs.offer(number, cost, index * relaxed.squads.length + squad);
        }
    }

    private void endStay(int stay) {
        Ledger costs = stayCosts[stay - firstStay];
        System.arraycopy(rent, 0, costs.least, 0, rent.length);
        for (int task = flat.firstTask[stay]; task < flat.firstTask[stay + 1]; task++) {
            if (relaxed.tree.feeds[task] == JobTree.STAY_END) {
                addLast(costs.least, taskCosts[task - firstTask].least);
            }
        }
        Arrays.setAll(costs.choice, number -> number);
        costs.settle();
    }

    /** As {@link Ledger#add}, where the costs may be below 0 because the rent before the start has been taken off. */
    private static void addLast(long[] sums, long[] costs) {
        for (int number = 0; number < sums.length; number++) {
            sums[number] =
                    costs[number] == Ledger.NEVER ? Ledger.NEVER : Math.min(Ledger.NEVER, sums[number] + costs[number]);
        }
    }

    private long finish(int job) {
        long least = Ledger.NEVER;
        int best = -1;
        for (int number = axis.numberOf(relaxed.earliest.finish[job]); number <= axis.length; number++) {
            long cost = finishCost(job, number);
            for (int stay = firstStay; stay < flat.firstStay[job + 1]; stay++) {
                cost += relaxed.tree.next[stay] < 0 ? stayCosts[stay - firstStay].least[number] : 0;
                cost = Math.min(Ledger.NEVER, cost);
            }
            if (cost < least) {
                least = cost;
                best = number;
            }
        }
        if (best >= 0) {
            finish = best;
            trace(job);
        }
        return least;
    }

    private long finishCost(int job, int number) {
        Problem.Job values = flat.job(job);
        Costs costs = flat.problem.costs();
        int earliest = Math.min(relaxed.earliest.finish[job], flat.problem.horizon());
        long finish = number == 0 ? earliest : Math.max(earliest, axis.firstMinute(number));
        long late = Math.max(0, finish - values.promise().orElse(Integer.MAX_VALUE));
        long points = values.weight() * (costs.flow() * finish + costs.late() * late);
        return relaxed.scale * points + relaxed.surcharges.fixed[job];
    }

    /** What each minute costs by which the job last followed would finish later. */
    long pointsPerMinute(int job) {
        Problem.Job values = flat.job(job);
        boolean isLate = axis.firstMinute(finish) > values.promise().orElse(Integer.MAX_VALUE);
        Costs costs = flat.problem.costs();
        return relaxed.scale * values.weight() * (costs.flow() + (isLate ? costs.late() : 0));
    }

    int lastFinish() {
        return finish;
    }

    /** Goes back from the finish through the choices, and takes what they need. */
    private void trace(int job) {
        JobTree tree = relaxed.tree;
        for (int stay = flat.firstStay[job + 1] - 1; stay >= firstStay; stay--) {
            int end = stayCosts[stay - firstStay].choice[tree.next[stay] < 0 ? finish : start[tree.next[stay]]];
            for (int index = flat.firstTask[stay + 1] - 1; index >= flat.firstTask[stay]; index--) {
                int task = relaxed.earliest.order[index];
                int by = tree.feeds[task] == JobTree.STAY_END ? end : start[tree.feeds[task]];
                start[task] = take(task, taskCosts[task - firstTask].choice[by]);
            }
            int opened = tree.opener[stay] < 0 ? 0 : start[tree.opener[stay]];
            for (int room : relaxed.around[stay]) {
                spaceOf(room).take(opened, end, 1);
            }
        }
    }

    /** Takes the work that a choice needs; the answer is the number at which the task starts. */
    private int take(int task, int choice) {
        if (choice < 0) {
            return choice == NOTHING ? 0 : -1 - choice;
        }
        int squad = choice % relaxed.squads.length;
        int index = choice / relaxed.squads.length;
        int[] wall = relaxed.squads[squad].wall;
        markets[squad].take(index, Math.min(index + relaxed.minutes(task, squad), wall.length), relaxed.heads(task));
        return wall[index];
    }
}
