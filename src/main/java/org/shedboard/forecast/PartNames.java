package org.shedboard.forecast;

import java.util.Optional;
import org.shedboard.estimate.Catalogue;
import org.shedboard.estimate.Figure;
import org.shedboard.estimate.Usual;
import org.shedboard.estimate.Work;
import org.shedboard.learn.Clocked;
import org.shedboard.learn.Sort;
import org.shedboard.shop.Line;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Step;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;

/** Which figure of the catalogue a task of a visit has its minutes from. What is no such figure has a name that no figure has. */
final class PartNames {
    private final Catalogue catalogue;

    PartNames(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** The task's minutes, which are those of today's catalogue, with the name of where they are from. */
    Clocked.Part partOf(String classId, Visit visit, Step step, Task task) {
        Sort sort = Sort.of(step, task.kind());
        if (!task.lines().isEmpty()) {
            String figure = figureOf(visit, step, task).map(Figure::id).orElse(other(task));
            return new Clocked.Part(sort, figure, task.handsOn());
        }
        if (task.isCalled(Usual.WASH.idIn(step))) {
            return new Clocked.Part(sort, new Figure.Wash(classId, washed(visit)).id(), task.handsOn());
        }
        if (task.isCalled(Usual.UNCOVER.idIn(step))) {
            return new Clocked.Part(sort, other(task) + ":" + classId, task.handsOn());
        }
        String figure = isInspection(step, task) ? new Figure.Inspection(classId, step).id() : other(task);
        return new Clocked.Part(sort, figure, task.handsOn());
    }

    private static boolean isInspection(Step step, Task task) {
        return task.isCalled(Usual.INSPECT_UNDERSIDE.idIn(step)) || task.isCalled(Usual.INSPECT_TOPSIDE.idIn(step));
    }

    /** As a machine that looks clean is washed where it has to be washed down. */
    private static Mud washed(Visit visit) {
        Mud mud = visit.intake().mud();
        return visit.intake().washDownFirst() && mud == Mud.CLEAN ? Mud.DUSTY : mud;
    }

    /** The task of the first line's work that has it and just these minutes: where two share it, the longer one counts. */
    private Optional<Figure> figureOf(Visit visit, Step step, Task task) {
        return visit.lines().stream()
                .filter(line -> task.lines().contains(line.id()))
                .map(Line::workId)
                .flatMap(workId -> catalogue.findWork(workId).stream())
                .flatMap(work -> work.tasks().stream()
                        .filter(each -> each.step() == step && task.isCalled(each.id()))
                        .filter(each -> each.handsOn() == task.handsOn())
                        .map((Work.WorkTask each) -> (Figure) new Figure.OfTask(work.id(), each.id())))
                .findFirst();
    }

    private static String other(Task task) {
        return "other:" + task.id().replaceFirst("-\\d+$", "");
    }
}
