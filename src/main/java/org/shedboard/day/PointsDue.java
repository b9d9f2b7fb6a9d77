package org.shedboard.day;

import java.util.List;
import org.shedboard.estimate.Estimator;
import org.shedboard.estimate.MachineClass;
import org.shedboard.estimate.Point;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;
import org.shedboard.shop.WorkKind;

/** The inspection points that a task of a visit has to look at. */
public final class PointsDue {
    private PointsDue() {}

    /** In the order of the catalogue; whoever signs off has the fixes to look at again, and other tasks have none. */
    public static List<Point> of(Day day, Visit visit, Task task) {
        if (task.kind() == WorkKind.SIGN_OFF) {
            return markedOf(day, visit, Mark.FIX);
        }
        if (task.kind() != WorkKind.INSPECT) {
            return List.of();
        }
        return new Estimator(day.books().catalogue())
                .pointsOf(
                        day.machineOf(visit).classId(),
                        visit.intake(),
                        visit.stayOf(task.id()).orElseThrow().step());
    }

    /** The points of a visit at which this was found. */
    public static List<Point> markedOf(Day day, Visit visit, Mark mark) {
        MachineClass machineClass =
                day.books().catalogue().expectClass(day.machineOf(visit).classId());
        return visit.findings().stream()
                .filter(finding -> finding.mark() == mark)
                .flatMap(finding -> machineClass.findPoint(finding.pointId()).stream())
                .toList();
    }

    /** Those that have no finding yet. */
    public static List<Point> openOf(Day day, Visit visit, Task task) {
        return of(day, visit, task).stream()
                .filter(point -> visit.findingAt(point.id()).isEmpty())
                .toList();
    }
}
