package org.shedboard.forecast;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shedboard.estimate.Catalogue;
import org.shedboard.estimate.Estimator;
import org.shedboard.shop.Intake;
import org.shedboard.shop.Line;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Step;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;

/**
 * A visit's work by the catalogue as it is today: the minutes that were in it when the visit came in may have been put right since.
 */
final class Today {
    private final Catalogue catalogue;

    Today(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** The stays with the minutes of today's catalogue; tasks of work it no longer has keep those they had. */
    List<Stay> staysOf(String classId, Visit visit) {
        if (!isKnown(classId, visit.lines())) {
            return visit.stays();
        }
        List<Stay> now = stays(classId, visit.intake(), visit.lines());
        return visit.stays().stream().map(stay -> renewed(stay, now)).toList();
    }

    /** What such a visit takes by the catalogue; nothing where that has no such class or work. */
    List<Stay> stays(String classId, Intake intake, List<Line> lines) {
        return isKnown(classId, lines)
                ? new Estimator(catalogue).estimate(classId, intake, lines).stays()
                : List.of();
    }

    Map<Piece, List<Task>> piecesOf(String classId, Intake intake, List<Line> lines) {
        return Piece.tasksOf(stays(classId, intake, lines));
    }

    private boolean isKnown(String classId, List<Line> lines) {
        return catalogue.findClass(classId).isPresent()
                && lines.stream()
                        .allMatch(line -> catalogue.findWork(line.workId()).isPresent());
    }

    private static Stay renewed(Stay stay, List<Stay> now) {
        return stay.withTasks(stay.tasks().stream()
                .map(task -> find(now, stay.step(), task)
                        .map(fresh -> task.withMinutes(fresh.handsOn(), fresh.unattended()))
                        .orElse(task))
                .toList());
    }

    private static Optional<Task> find(List<Stay> stays, Step step, Task task) {
        return stays.stream()
                .filter(stay -> stay.step() == step)
                .flatMap(stay -> stay.tasks().stream())
                .filter(fresh -> task.isCalled(fresh.id()))
                .findFirst();
    }
}
