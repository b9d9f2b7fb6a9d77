package org.shedboard.pack.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.shedboard.pack.numbers.FlatProblem;

/**
 * Moves the posted plan along. Everyone and everything keeps its person, place and start; what cannot is pushed as little as the
 * list decoder has to, and what has to wait until later stands behind what does not. Jobs that no longer fit that way are let loose, and jobs that are new are tried at every point of the list.
 */
final class Follow {
    /** At so many points of the list, at most, a new job is tried. Invented. */
    private static final int MOST_POINTS = 80;

    private final FlatProblem flat;
    private final Decoder decoder;
    private final Tally tally;
    private final boolean[] out;
    private Solution solution;

    Follow(FlatProblem flat, Decoder decoder, Tally tally, boolean[] left) {
        this.flat = flat;
        this.decoder = decoder;
        this.tally = tally;
        out = left.clone();
        solution = Solution.plain(flat);
    }

    /** The jobs it leaves out are marked in the decoder as left out. */
    Solution solve() {
        List<Integer> fresh = new ArrayList<>();
        for (int job = 0; job < flat.jobs; job++) {
            if (!out[job] && !isPosted(job)) {
                fresh.add(job);
                out[job] = true;
            }
        }
        keepPosted();
        letLoose();
        fresh.sort(Comparator.comparingInt((Integer job) -> flat.jobHasBegun[job] ? 0 : 1)
                .thenComparing(job -> flat.job(job).promise().orElse(Integer.MAX_VALUE)));
        fresh.forEach(this::insert);
        decoder.leaveOut(out);
        return solution;
    }

    private boolean isPosted(int job) {
        return IntStream.range(flat.firstTaskOfJob(job), flat.lastTaskOfJob(job))
                .anyMatch(task -> flat.postedStart[task] >= 0);
    }

    private void keepPosted() {
        long[] keys = new long[flat.tasks];
        long key = 0;
        for (int task = 0; task < flat.tasks; task++) {
            boolean first = task == flat.firstTaskOfJob(flat.jobOfTask[task]);
            key = first ? 0 : key;
            key = flat.postedStart[task] >= 0 ? Math.max(flat.postedStart[task], heldUntil(task)) : key;
            keys[task] = key * flat.tasks + task;
            wish(task, flat.postedCrew[task]);
            solution.notBefore[task] = Math.max(0, flat.postedStart[task]);
        }
        Arrays.sort(keys);
        Arrays.setAll(solution.list, index -> (int) (keys[index] % flat.tasks));
        System.arraycopy(flat.postedPlace, 0, solution.place, 0, flat.stays);
    }

    private void wish(int task, int[] crew) {
        if (crew != null && crew.length == flat.crew[task]) {
            System.arraycopy(crew, 0, solution.crew, flat.slot[task], crew.length);
        }
    }

    /** The minute to come before which the task may not start; 0 where it could start now. */
    private int heldUntil(int task) {
        return flat.earliest[task] > flat.problem.now() ? flat.earliest[task] : 0;
    }

    private long energy() {
        decoder.leaveOut(out);
        decoder.decode(solution);
        tally.count();
        return tally.energy;
    }

    /** First the jobs that do not fit as posted go where they can, then everything may start earlier. */
    private void letLoose() {
        energy();
        boolean[] tight = findTight();
        for (int round = 0; round < 2 && contains(tight); round++) {
            for (int task = 0; task < flat.tasks; task++) {
                if (tight[flat.jobOfTask[task]]) {
                    solution.crew[flat.slot[task]] = Solution.ANY;
                    solution.place[flat.stayOfTask[task]] = -1;
                    solution.notBefore[task] = 0;
                }
                solution.notBefore[task] = round == 1 ? 0 : solution.notBefore[task];
            }
            energy();
            tight = findTight();
        }
    }

    private boolean[] findTight() {
        boolean[] tight = new boolean[flat.jobs];
        for (int job = 0; job < flat.jobs; job++) {
            tight[job] = !out[job] && !tally.fits[job];
        }
        return tight;
    }

    private static boolean contains(boolean[] marks) {
        return IntStream.range(0, marks.length).anyMatch(index -> marks[index]);
    }

    /** What fits nowhere stays out, so that it is in nobody's way. */
    private void insert(int job) {
        out[job] = false;
        int[] own = IntStream.range(flat.firstTaskOfJob(job), flat.lastTaskOfJob(job))
                .toArray();
        int[] others = Arrays.stream(solution.list)
                .filter(task -> flat.jobOfTask[task] != job)
                .toArray();
        int step = 1 + others.length / MOST_POINTS;
        int best = others.length;
        long bestEnergy = Long.MAX_VALUE;
        for (int point = 0; point <= others.length; point += step) {
            insertAt(point, own, others);
            long energy = energy();
            if (energy < bestEnergy) {
                best = point;
                bestEnergy = energy;
            }
        }
        insertAt(best, own, others);
        energy();
        out[job] = !tally.fits[job] && !flat.jobHasBegun[job];
    }

    private void insertAt(int point, int[] own, int[] others) {
        System.arraycopy(others, 0, solution.list, 0, point);
        System.arraycopy(own, 0, solution.list, point, own.length);
        System.arraycopy(others, point, solution.list, point + own.length, others.length - point);
    }
}
