package org.shedboard.board;

import java.util.List;
import java.util.Optional;
import org.shedboard.day.NextTask;
import org.shedboard.day.Outlook;
import org.shedboard.day.PointsDue;
import org.shedboard.estimate.Point;

/**
 * The inspection point that one person looks at now.
 *
 * @param number which it is of the task's points, from 1
 * @param count how many points the task has
 */
public record NextPoint(NextTask task, Point point, int number, int count) {
    /** The point looked at again, else the first without a finding, of the inspection the person is on. */
    public static Optional<NextPoint> of(Board board, Screen.Next screen) {
        Outlook outlook = board.expectOutlook();
        return NextTask.of(outlook, outlook.day().shop().expectPerson(screen.personId()))
                .filter(NextTask::isRunning)
                .flatMap(task -> of(outlook, screen, task));
    }

    private static Optional<NextPoint> of(Outlook outlook, Screen.Next screen, NextTask task) {
        List<Point> points = PointsDue.of(outlook.day(), task.visit(), task.task());
        Optional<Point> now = screen.pointBack()
                .flatMap(id ->
                        points.stream().filter(point -> point.id().equals(id)).findFirst())
                .or(() -> task.openPoints().stream().findFirst());
        return now.map(point -> new NextPoint(task, point, points.indexOf(point) + 1, points.size()));
    }

    /** The point before this one; the last of the task's points when all have a finding. */
    static Optional<String> before(Board board, Screen.Next screen) {
        Outlook outlook = board.expectOutlook();
        return NextTask.of(outlook, outlook.day().shop().expectPerson(screen.personId()))
                .filter(NextTask::isRunning)
                .flatMap(task -> {
                    List<Point> points = PointsDue.of(outlook.day(), task.visit(), task.task());
                    int index = of(outlook, screen, task)
                            .map(now -> now.number() - 2)
                            .orElse(points.size() - 1);
                    return index < 0 || points.isEmpty()
                            ? Optional.empty()
                            : Optional.of(points.get(index).id());
                });
    }
}
