package org.shedboard.day;

import java.util.List;
import org.shedboard.estimate.Point;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Visit;

/** Whether a machine may be ridden: a fix found on brakes, steering, frame or fuel says no. */
public final class Riding {
    private Riding() {}

    public static boolean isStopped(Day day, Visit visit) {
        return !stoppedBy(day, visit).isEmpty();
    }

    /** The points at which something was found that forbids riding it. */
    public static List<Point> stoppedBy(Day day, Visit visit) {
        return PointsDue.markedOf(day, visit, Mark.FIX).stream()
                .filter(Point::stopsRiding)
                .toList();
    }
}
