package org.shedboard.pack.search;

import java.util.Arrays;
import org.shedboard.pack.Costs;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Span;
import org.shedboard.pack.numbers.FlatProblem;
import org.shedboard.pack.numbers.Hours;

/**
 * Gives every task its time. It takes the tasks one after the other and puts each at the earliest minute the rules allow: people
 * fill gaps, places are taken in the order in which stays are opened. A task whose earlier tasks, earlier stays or whose place's
 * present holder are unfinished gets those done first, so that every order of the list makes a plan.
 *
 * <p>A list whose beginning was decoded before is {@link #retrace retraced} so far, not decided again.
 *
 * <p>A job that does not fit runs on beyond the horizon (see {@link Hours}); a job that misses a pin is marked. Both are later left
 * out whole, which cannot disturb the others. How long a stay will take is not known when it is opened; one that turns out to stand
 * in the way of a closed time is opened after it, from the beginning again.
 */
final class Decoder {
    /** So many fresh beginnings for closed times, then the job counts as not fitting. Invented. */
    private static final int MOST_RESTARTS = 60;

    final FlatProblem flat;
    final Outlook outlook;
    final Roster roster;
    final Crews crews;
    final RunningCost running;

    final boolean[] isSet;
    final int[] start;
    final int[] end;
    final int[] complete;
    /** The order in which tasks got their time. */
    final int[] sequence;

    int placed;

    final boolean[] isOpen;
    final int[] placeOfStay;
    final int[] stayEarliest;
    final int[] stayStart;
    final int[] stayComplete;
    final int[] stayRemaining;
    final int[] placeFree;
    final int[] placeHolder;
    final boolean[] missed;
    /** Some job misses a pin or a closed time, or runs beyond the horizon. */
    boolean doesNotFit;

    private final int[][] numbers;
    private final boolean[][] marks;
    private final int[] tasksOfStay;
    private final int[] begunStays;
    private final int[] begunTasks;
    private final boolean[] left;
    private int restarts;
    private boolean mustRestart;
    private int takenOver;
    /** A plan that costs more than this for certain is not worth going on with. */
    private long limit = Long.MAX_VALUE;

    Solution solution;

    Decoder(FlatProblem flat) {
        this.flat = flat;
        outlook = new Outlook(flat);
        roster = new Roster(flat);
        running = new RunningCost(flat, outlook);
        isSet = new boolean[flat.tasks];
        start = new int[flat.tasks];
        end = new int[flat.tasks];
        complete = new int[flat.tasks];
        sequence = new int[flat.tasks];
        isOpen = new boolean[flat.stays];
        placeOfStay = new int[flat.stays];
        stayEarliest = new int[flat.stays];
        stayStart = new int[flat.stays];
        stayComplete = new int[flat.stays];
        stayRemaining = new int[flat.stays];
        placeFree = new int[flat.places];
        placeHolder = new int[flat.places];
        missed = new boolean[flat.jobs];
        left = new boolean[flat.jobs];
        tasksOfStay = new int[flat.stays];
        Arrays.setAll(tasksOfStay, stay -> flat.firstTask[stay + 1] - flat.firstTask[stay]);
        begunStays = FlatProblem.numbersOf(flat.stays, stay -> flat.stayHasBegun[stay]);
        begunTasks = FlatProblem.numbersOf(
                flat.tasks, task -> flat.state[task] == FlatProblem.DONE || flat.state[task] == FlatProblem.GOING);
        crews = new Crews(this);
        running.leaveOut(left);
        numbers = new int[][] {
            start,
            end,
            complete,
            sequence,
            crews.size,
            crews.who,
            crews.work,
            placeOfStay,
            stayEarliest,
            stayStart,
            stayComplete,
            stayRemaining,
            placeFree,
            placeHolder
        };
        marks = new boolean[][] {isSet, isOpen};
    }

    /** The numbers that are how it stands, but for {@link #roster}, {@link #running} and what {@link #resume} takes. */
    int[][] numbers() {
        return numbers;
    }

    /** As {@link #numbers()}, what is true or false. */
    boolean[][] marks() {
        return marks;
    }

    /** From now on plans that must cost more than this are given up half made; see {@link #isGivenUp}. */
    void giveUpAbove(long energy) {
        limit = energy;
    }

    boolean isGivenUp() {
        return running.points > limit;
    }

    /** Jobs marked here get no time at all from now on. */
    void leaveOut(boolean[] jobs) {
        System.arraycopy(jobs, 0, left, 0, left.length);
        running.leaveOut(left);
    }

    boolean isLeftOut(int job) {
        return left[job];
    }

    void decode(Solution wanted) {
        prepare(wanted);
        begin();
        decodeFrom(0);
    }

    /**
     * As {@link #decode(Solution)}, of a list that was changed in one part.
     *
     * @param trail how a list was decoded whose first {@code kept} tasks are this one's too
     */
    void decode(Solution wanted, Trail trail, int kept) {
        prepare(wanted);
        takeUp(trail, kept);
        decodeFrom(takenOver);
    }

    /** Stands as after the first so many tasks of the trail, or at the beginning where that cannot be had. */
    void takeUp(Trail trail, int kept) {
        takenOver = trail.resume(kept);
    }

    /** So many tasks at the beginning of the list have the times, people and places that they had in the trail's plan. */
    int takenOver() {
        return takenOver;
    }

    private void decodeFrom(int first) {
        int next = first;
        while (running.points <= limit && (mustRestart || next < flat.tasks)) {
            if (mustRestart) {
                beginAgain();
                next = 0;
            }
            int task = solution.list[next++];
            if (!left[flat.jobOfTask[task]]) {
                place(task);
            }
        }
    }

    void prepare(Solution wanted) {
        solution = wanted;
        restarts = 0;
        takenOver = 0;
    }

    boolean mustRestart() {
        return mustRestart;
    }

    /** After so many tasks, none of which missed a pin or a closed time. */
    void resume(int tasks, boolean overruns) {
        mustRestart = false;
        doesNotFit = overruns;
        placed = tasks;
        Arrays.fill(missed, false);
    }

    /** Nothing is taken over from another plan after all. */
    void beginAgain() {
        begin();
        takenOver = 0;
    }

    /** An empty shop, except for what is done, going on or pinned to a minute. */
    void begin() {
        mustRestart = false;
        doesNotFit = false;
        placed = 0;
        running.begin();
        roster.clear();
        Arrays.fill(isSet, false);
        Arrays.fill(isOpen, false);
        Arrays.fill(stayEarliest, 0);
        Arrays.fill(stayComplete, 0);
        Arrays.fill(stayStart, Hours.FAR);
        Arrays.fill(placeOfStay, -1);
        Arrays.fill(placeFree, 0);
        Arrays.fill(placeHolder, -1);
        Arrays.fill(missed, false);
        System.arraycopy(tasksOfStay, 0, stayRemaining, 0, stayRemaining.length);
        crews.clear();
        for (int stay : begunStays) {
            standThere(stay);
        }
        for (int task : begunTasks) {
            if (flat.state[task] == FlatProblem.DONE) {
                setDone(task);
            } else {
                goOn(task);
            }
        }
        crews.bookPins();
    }

    private void standThere(int stay) {
        isOpen[stay] = true;
        int[] where = flat.placesOfStay[stay];
        if (where.length > 0) {
            placeOfStay[stay] = where[0];
            placeHolder[where[0]] = isAllDone(stay) ? placeHolder[where[0]] : stay;
        }
    }

    private boolean isAllDone(int stay) {
        for (int task = flat.firstTask[stay]; task < flat.firstTask[stay + 1]; task++) {
            if (flat.state[task] != FlatProblem.DONE) {
                return false;
            }
        }
        return true;
    }

    private void setDone(int task) {
        Problem.Done done = flat.task[task].done().orElseThrow();
        crews.setDone(task);
        start[task] = done.from();
        end[task] = done.end();
        close(task);
    }

    private void goOn(int task) {
        Problem.Started started = flat.task[task].started().orElseThrow();
        start[task] = started.from();
        end[task] = crews.goOn(task, started.left());
        close(task);
    }

    /** Gives the task the time, people and place it had. */
    void retrace(int task, Timetable before) {
        if (isSet[task] || left[flat.jobOfTask[task]]) {
            return;
        }
        int stay = flat.stayOfTask[task];
        stayEarliest[stay] = before.stayEarliest[stay];
        if (!isOpen[stay]) {
            isOpen[stay] = true;
            if (before.placeOfStay[stay] >= 0) {
                stand(stay, before.placeOfStay[stay]);
            }
        }
        start[task] = before.start[task];
        end[task] = before.end[task];
        crews.retrace(task, before);
        close(task);
    }

    void place(int task) {
        if (isSet[task]) {
            return;
        }
        int stay = flat.stayOfTask[task];
        open(stay);
        int earliest = Math.max(stayEarliest[stay], flat.earliest[task]);
        earliest = Math.max(earliest, solution.notBefore[task]);
        for (int waited : flat.before[task]) {
            if (!isSet[waited]) {
                place(waited);
            }
            earliest = Math.max(earliest, complete[waited]);
        }
        if (mustRestart) {
            return;
        }
        if (flat.at[task] >= 0) {
            if (earliest > flat.at[task]) {
                miss(flat.jobOfTask[task]);
            }
            earliest = flat.at[task];
        }
        start[task] = earliest;
        end[task] = earliest;
        if (flat.crew[task] > 0) {
            crews.assign(task, earliest);
        } else {
            crews.needNobody(task);
        }
        close(task);
    }

    void miss(int job) {
        missed[job] = true;
        doesNotFit = true;
    }

    private void close(int task) {
        int stay = flat.stayOfTask[task];
        int job = flat.jobOfTask[task];
        int over = Math.min(Hours.FAR, end[task] + flat.unattended[task]);
        isSet[task] = true;
        sequence[placed++] = task;
        complete[task] = over;
        stayStart[stay] = Math.min(stayStart[stay], listedStart(task));
        stayComplete[stay] = Math.max(stayComplete[stay], over);
        stayRemaining[stay]--;
        doesNotFit |= over > flat.problem.horizon();
        running.start(task, start[task], crews.first(task));
        running.finishNoEarlier(job, over + outlook.tail[task]);
        int place = placeOfStay[stay];
        if (place < 0) {
            return;
        }
        if (flat.closed[place].length > 0 && !flat.stayHasBegun[stay]) {
            keepOutOfClosed(stay, place);
        }
        if (stayRemaining[stay] == 0) {
            placeFree[place] = Math.max(placeFree[place], stayComplete[stay]);
            placeHolder[place] = placeHolder[place] == stay ? -1 : placeHolder[place];
        }
    }

    private void keepOutOfClosed(int stay, int place) {
        for (Span span : flat.closed[place]) {
            if (span.from() < stayComplete[stay] && stayStart[stay] < span.to()) {
                if (restarts < MOST_RESTARTS && solution.shutUntil(stay, place) < span.to()) {
                    restarts++;
                    solution.shutUntil[stay] = span.to();
                    solution.shutPlace[stay] = place;
                    mustRestart = true;
                } else {
                    miss(flat.jobOfStay[stay]);
                }
            }
        }
    }

    private void finish(int stay) {
        for (int task = flat.firstTask[stay]; task < flat.firstTask[stay + 1]; task++) {
            place(task);
        }
    }

    /** The stay gets its place, after the job's earlier stays and after whoever stands there now. */
    private void open(int stay) {
        boolean isFirst = stay == flat.firstStay[flat.jobOfStay[stay]];
        if (isOpen[stay] && (isFirst || !flat.stayHasBegun[stay])) {
            return;
        }
        if (!isFirst) {
            if (stayRemaining[stay - 1] > 0) {
                finish(stay - 1);
            }
            stayEarliest[stay] = Math.max(stayEarliest[stay], stayComplete[stay - 1]);
        }
        if (isOpen[stay]) {
            return;
        }
        if (flat.placesOfStay[stay].length > 0) {
            int place = choosePlace(stay);
            if (placeHolder[place] >= 0) {
                finish(placeHolder[place]);
            }
            stayEarliest[stay] = openFrom(stay, place, Math.max(stayEarliest[stay], placeFree[place]));
            stand(stay, place);
        }
        isOpen[stay] = true;
    }

    private void stand(int stay, int place) {
        placeOfStay[stay] = place;
        placeHolder[place] = stay;
        running.open(stay, place);
    }

    private int choosePlace(int stay) {
        int wanted = solution.place[stay];
        if (wanted >= 0 && contains(flat.placesOfStay[stay], wanted)) {
            return wanted;
        }
        int best = -1;
        long bestScore = Long.MAX_VALUE;
        Costs costs = flat.problem.costs();
        long rate = Math.max(1, costs.flow() * flat.job(flat.jobOfStay[stay]).weight());
        for (int place : flat.placesOfStay[stay]) {
            int from = openFrom(stay, place, Math.max(stayEarliest[stay], likelyFree(place)));
            boolean swapped = flat.postedPlace[stay] != -1 && flat.postedPlace[stay] != place;
            long score = rate * from + (swapped ? costs.swapped() : 0);
            if (score < bestScore) {
                bestScore = score;
                best = place;
            }
        }
        return best;
    }

    static boolean contains(int[] numbers, int wanted) {
        for (int number : numbers) {
            if (number == wanted) {
                return true;
            }
        }
        return false;
    }

    /** When the place is free: exactly when nobody stands there, otherwise a guess that leaves out waiting. */
    int likelyFree(int place) {
        int holder = placeHolder[place];
        if (holder < 0) {
            return placeFree[place];
        }
        int likely = Math.max(Math.max(placeFree[place], flat.problem.now()), stayComplete[holder]);
        for (int task = flat.firstTask[holder]; task < flat.firstTask[holder + 1]; task++) {
            if (!isSet[task]) {
                likely += flat.unattended[task] + flat.likelyMinutes[task];
            }
        }
        return likely;
    }

    /** The first minute from {@code earliest} on that is not closed and was not found too early before. */
    int openFrom(int stay, int place, int earliest) {
        Span[] closed = flat.closed[place];
        if (closed.length == 0) {
            return earliest;
        }
        int from = Math.max(earliest, solution.shutUntil(stay, place));
        for (Span span : closed) {
            if (span.contains(from)) {
                from = span.to();
            }
        }
        return from;
    }

    /** A begun task is listed from where it began, also when it is picked up again later. */
    int listedStart(int task) {
        return flat.state[task] == FlatProblem.INTERRUPTED
                ? flat.task[task].started().orElseThrow().from()
                : start[task];
    }

    boolean isReady(int task) {
        for (int waited : flat.before[task]) {
            if (!isSet[waited]) {
                return false;
            }
        }
        return !isSet[task];
    }
}
