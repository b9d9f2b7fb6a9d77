package org.shedboard.estimate;

import java.util.List;
import java.util.Optional;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Intake;
import org.shedboard.shop.Mud;

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

    public Optional<Point> findPoint(String pointId) {
        return points.stream().filter(point -> point.id().equals(pointId)).findFirst();
    }
}
