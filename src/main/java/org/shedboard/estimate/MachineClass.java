package org.shedboard.estimate;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Intake;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Step;

/**
 * A class of machine: what it weighs, what it takes to wash and to move, and its inspection points.
 *
 * @param washMinutes minutes to wash it at each mud grade, four of them
 */
public record MachineClass(
        String id, String name, int massKg, List<Integer> washMinutes, Moving moving, List<Point> points) {
    /** Minutes to bring a machine into a place when it drives and when it must be pushed, and to raise and lower it. */
    public record Moving(int driven, int pushed, int raise, int lower) {}

    public MachineClass {
        washMinutes = List.copyOf(washMinutes);
        points = List.copyOf(points);
        if (washMinutes.size() != Mud.values().length) {
            throw new IllegalArgumentException("class %s needs wash minutes for each mud grade".formatted(id));
        }
    }

    public int washMinutes(Mud mud) {
        return washMinutes.get(mud.grade());
    }

    /** The points an inspection of this depth looks at, in catalogue order. */
    public List<Point> pointsAt(Depth depth) {
        return points.stream().filter(point -> depth.covers(point.due())).toList();
    }

    /** The points this visit looks at: those of its depth, and those where something was left last time. */
    public List<Point> pointsFor(Intake intake) {
        return points.stream()
                .filter(point -> intake.depth().covers(point.due())
                        || intake.alsoLookAt().contains(point.id()))
                .toList();
    }

    /** Minutes to look at all points of a step. */
    public int inspectMinutes(Step step) {
        return inspectMinutesOf(step).stream().mapToInt(Integer::intValue).sum();
    }

    private List<Integer> inspectMinutesOf(Step step) {
        return points.stream()
                .filter(point -> point.step() == step)
                .map(Point::inspectMinutes)
                .toList();
    }

    MachineClass withWashMinutes(Mud mud, int minutes) {
        List<Integer> next = new ArrayList<>(washMinutes);
        next.set(mud.grade(), minutes);
        return new MachineClass(id, name, massKg, next, moving, points);
    }

    /** With so many minutes for all points of a step together, shared out as they were. */
    MachineClass withInspectMinutes(Step step, int minutes) {
        Iterator<Integer> portions =
                Portions.of(inspectMinutesOf(step), minutes).iterator();
        List<Point> next = points.stream()
                .map(point -> point.step() == step ? point.withInspectMinutes(portions.next()) : point)
                .toList();
        return new MachineClass(id, name, massKg, washMinutes, moving, next);
    }

    public Optional<Point> findPoint(String pointId) {
        return points.stream().filter(point -> point.id().equals(pointId)).findFirst();
    }
}
