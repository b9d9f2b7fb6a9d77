package org.shedboard.pack.bound;

import java.util.Arrays;
import java.util.Objects;
import java.util.stream.IntStream;
import org.shedboard.pack.numbers.FlatProblem;

/** What the bound keeps of a problem. Points are counted {@code scale} times, so that prices can be finer than a point. */
final class Relaxed {
    final FlatProblem flat;
    final Axis axis;
    final Squad[] squads;
    final Room[] rooms;
    final Earliest earliest;
    final JobTree tree;
    final Surcharges surcharges;
    final long scale;
    /** The squads that can do each task. */
    final int[][] teams;
    /** The rooms that each stay takes space in. */
    final int[][] around;

    Relaxed(FlatProblem flat, Axis axis, long scale) {
        this.flat = flat;
        this.axis = axis;
        this.scale = scale;
        squads = Squad.of(flat, axis);
        rooms = Room.of(flat, axis);
        earliest = new Earliest(flat);
        tree = new JobTree(flat, earliest);
        surcharges = new Surcharges(flat, squads, earliest.only, scale);
        teams = new int[flat.tasks][];
        Arrays.setAll(teams, this::teamsFor);
        around = new int[flat.stays][];
        Arrays.setAll(around, stay -> Room.around(rooms, flat.placesOfStay[stay]));
    }

    private int[] teamsFor(int task) {
        if (flat.crew[task] == 0 || flat.state[task] == FlatProblem.DONE) {
            return new int[0];
        }
        int only = earliest.only[task];
        int[] people = only >= 0 ? new int[] {only} : flat.able[task];
        return IntStream.range(0, squads.length)
                .filter(squad -> Arrays.stream(people).anyMatch(squads[squad]::has))
                .toArray();
    }

    /**
     * The hands-on minutes of the task by someone of the squad. Where the squad does it alone, whoever it takes comes from there, each
     * with the same minutes.
     */
    int minutes(int task, int squad) {
        return flat.minutes[task][squads[squad].people[0]];
    }

    /**
     * How many of the squad the task takes at least. Where another squad could do it, or the one person is known who goes on with it
     * or is wanted for it, only one is sure to come from there.
     */
    int heads(int task) {
        return teams[task].length == 1 && earliest.only[task] < 0 ? flat.crew[task] : 1;
    }

    /** How many jobs every plan leaves out. */
    int hopeless() {
        return (int) Arrays.stream(flat.hopeless).filter(Objects::nonNull).count();
    }

    /** Steps of the loops in which {@link Course} and {@link Market} spend their time, for all jobs once. */
    long steps() {
        long steps = 3L * minutesForSale();
        for (int task = 0; task < flat.tasks; task++) {
            steps += 3L * axis.length;
            steps += Arrays.stream(teams[task])
                    .mapToLong(squad -> squads[squad].wall.length)
                    .sum();
        }
        return steps;
    }

    /** Steps of {@link FirstPrices} besides those. */
    long stepsToBegin() {
        return 4L * flat.jobs * minutesForSale();
    }

    private long minutesForSale() {
        long work = Arrays.stream(squads).mapToLong(squad -> squad.wall.length).sum();
        return work + (long) rooms.length * axis.length;
    }
}
