package org.shedboard.day;

import java.util.List;
import java.util.stream.Stream;
import org.shedboard.estimate.MachineClass;
import org.shedboard.estimate.Point;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Visit;

/**
 * Whether a machine may be ridden: a fix found on brakes, steering, frame or fuel says no, and so does one that it took home
 * from an earlier visit, from its arrival until somebody has looked there again.
 */
public final class Riding {
    private Riding() {}

    public static boolean isStopped(Day day, Visit visit) {
        return !stoppedBy(day, visit).isEmpty();
    }

    /** The points at which something was found that forbids riding it. */
    public static List<Point> stoppedBy(Day day, Visit visit) {
        MachineClass machineClass =
                day.books().catalogue().expectClass(day.machineOf(visit).classId());
        Stream<Point> before = machineClass.points().stream().filter(point -> LastTime.fixStandsAt(day, visit, point));
        return Stream.concat(PointsDue.markedOf(day, visit, Mark.FIX).stream(), before)
                .filter(Point::stopsRiding)
                .toList();
    }
}
