package org.shedboard.pack.numbers;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shedboard.pack.Plan;

/** A plan in the numbers of its problem: who does each task, from when, and in which place. */
public final class PlanReading {
    private static final int[] NOBODY = {};

    private final FlatProblem flat;

    public final boolean[] isPlaced;
    public final int[][] who;
    /** When the work still to be done starts; of an interrupted task, when it is picked up again. */
    public final int[] start;

    public final int[] end;
    /** -1 where the stay has no place or is not in the plan. */
    public final int[] placeOfStay;
    /** Placed tasks in order of their start; whatever a task waits for stands before it. */
    public final int[] order;

    public PlanReading(FlatProblem flat, Plan plan) {
        this.flat = flat;
        isPlaced = new boolean[flat.tasks];
        who = new int[flat.tasks][];
        Arrays.fill(who, NOBODY);
        start = new int[flat.tasks];
        end = new int[flat.tasks];
        placeOfStay = new int[flat.stays];
        Arrays.fill(placeOfStay, -1);
        Map<List<Object>, Integer> stays = numberStays();
        plan.stays().forEach(at -> {
            Integer stay = stays.get(List.of(at.job(), at.stay()));
            if (stay != null) {
                placeOfStay[stay] = flat.placeNumber(at.place());
            }
        });
        plan.tasks().forEach(time -> read(stays.get(List.of(time.job(), time.stay())), time));
        order = inOrderOfWaiting(sorted());
    }

    private PlanReading(FlatProblem flat, int[][] who, int[] start, int[] end, int[] placeOfStay, int[] order) {
        this.flat = flat;
        this.who = who;
        this.start = start;
        this.end = end;
        this.placeOfStay = placeOfStay;
        this.order = order;
        isPlaced = new boolean[flat.tasks];
        for (int task : order) {
            isPlaced[task] = true;
        }
    }

    /** The same with more in it; when that ends is not known yet. */
    public PlanReading with(int[][] people, int[] starts, int[] places, int[] inOrder) {
        return new PlanReading(flat, people, starts, end, places, inOrder);
    }

    private Map<List<Object>, Integer> numberStays() {
        Map<List<Object>, Integer> stays = new HashMap<>();
        for (int stay = 0; stay < flat.stays; stay++) {
            int job = flat.jobOfStay[stay];
            stays.put(List.of(flat.job(job).id(), stay - flat.firstStay[job]), stay);
        }
        return stays;
    }

    private void read(Integer stay, Plan.TaskTime time) {
        int index = stay == null ? -1 : flat.stay(stay).indexOf(time.task());
        if (index < 0) {
            return;
        }
        int task = flat.firstTask[stay] + index;
        isPlaced[task] = true;
        who[task] = time.people().stream()
                .mapToInt(id -> flat.personNumber(Optional.of(id)))
                .toArray();
        end[task] = time.end();
        start[task] = flat.state[task] == FlatProblem.INTERRUPTED ? pickedUp(task, time) : time.start();
    }

    /** Reckoned back from the end of whoever is last to end. */
    private int pickedUp(int task, Plan.TaskTime time) {
        return Arrays.stream(who[task])
                .map(person -> {
                    Hours hours = flat.hours[person];
                    return hours.wall(hours.worked(time.end()) - flat.minutes[task][person]);
                })
                .min()
                .orElse(time.start());
    }

    private List<Integer> sorted() {
        List<Integer> placed = new ArrayList<>();
        for (int task = 0; task < flat.tasks; task++) {
            if (isPlaced[task]) {
                placed.add(task);
            }
        }
        placed.sort(Comparator.comparingInt((Integer task) -> start[task])
                .thenComparing(task -> end[task] + flat.unattended[task]));
        return placed;
    }

    /** Tasks that start together are put so that none comes before one it waits for. */
    private int[] inOrderOfWaiting(List<Integer> placed) {
        List<Integer> rest = new ArrayList<>(placed);
        int[] sorted = new int[rest.size()];
        boolean[] isOut = new boolean[flat.tasks];
        rest.forEach(task -> isOut[task] = true);
        for (int count = 0; count < sorted.length; count++) {
            int next = 0;
            while (next < rest.size() - 1 && !isFree(rest.get(next), isOut)) {
                next++;
            }
            sorted[count] = rest.remove(next);
            isOut[sorted[count]] = false;
        }
        return sorted;
    }

    private boolean isFree(int task, boolean[] isOut) {
        return Arrays.stream(flat.before[task]).noneMatch(waited -> isOut[waited]);
    }
}
