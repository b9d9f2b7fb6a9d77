package org.shedboard.day;

import java.util.List;
import org.shedboard.estimate.Estimator;
import org.shedboard.estimate.Point;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;
import org.shedboard.shop.WorkKind;

/** The inspection points that a task of a visit has to look at. */
public final class PointsDue {
    private PointsDue() {}

    /** In the order of the catalogue; none where the task is no inspection. */
    public static List<Point> of(Day day, Visit visit, Task task) {
        if (task.kind() != WorkKind.INSPECT) {
            return List.of();
        }
        return new Estimator(day.books().catalogue())
                .pointsOf(
                        day.machineOf(visit).classId(),
                        visit.intake(),
                        visit.stayOf(task.id()).orElseThrow().step());
    }

    /** Those that have no finding yet. */
    public static List<Point> openOf(Day day, Visit visit, Task task) {
        return of(day, visit, task).stream()
                .filter(point -> visit.findingAt(point.id()).isEmpty())
                .toList();
    }
}
