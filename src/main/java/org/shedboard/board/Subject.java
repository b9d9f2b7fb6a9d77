package org.shedboard.board;

import java.util.List;
import java.util.Optional;
import org.shedboard.day.Outlook;
import org.shedboard.pack.Plan;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;

/**
 * What the keys are about: a visit, and on its sheet one of its tasks.
 *
 * @param picked the task the cursor is on; empty where only a visit is selected
 */
record Subject(Outlook outlook, Visit visit, Optional<Task> picked) {
    /** What the keys of this screen are about; empty where nothing is selected. */
    static Optional<Subject> of(Board board) {
        if (board.seen().isEmpty()) {
            return Optional.empty();
        }
        Outlook outlook = board.expectOutlook();
        if (board.screen() instanceof Screen.Places places) {
            return selected(outlook, places).map(visit -> new Subject(outlook, visit, Optional.empty()));
        }
        if (board.screen() instanceof Screen.YardPage yard) {
            return YardKeys.chosen(outlook, yard).map(visit -> new Subject(outlook, visit, Optional.empty()));
        }
        if (board.screen() instanceof Screen.Sheet sheet) {
            return outlook.day().findVisit(sheet.visitId()).map(visit -> of(outlook, visit, sheet.task()));
        }
        if (board.screen() instanceof Screen.Why why) {
            return outlook.day().findVisit(why.visitId()).map(visit -> of(outlook, visit, why.task()));
        }
        return Optional.empty();
    }

    private static Subject of(Outlook outlook, Visit visit, int index) {
        List<Task> tasks = visit.tasks();
        Optional<Task> picked =
                tasks.isEmpty() ? Optional.empty() : Optional.of(tasks.get(Math.min(index, tasks.size() - 1)));
        return new Subject(outlook, visit, picked);
    }

    /** The selected visit of the bay board; the first in the yard while none is selected. */
    static Optional<Visit> selected(Outlook outlook, Screen.Places places) {
        List<Visit> listed = Yard.of(outlook);
        return places.selected()
                .flatMap(id ->
                        listed.stream().filter(visit -> visit.id().equals(id)).findFirst())
                .or(() -> listed.stream().findFirst());
    }

    /** The task to start: the one picked, else the next one in the plan that nobody is on. */
    Optional<Task> toStart() {
        Optional<Task> startable =
                picked.filter(task -> !task.isDone() && !task.progress().isRunning());
        return startable.or(() -> outlook.nextTaskOf(visit));
    }

    /** The task somebody is on: the one picked, else the first of the visit's. */
    Optional<Task> running() {
        return picked.filter(task -> task.progress().isRunning())
                .or(() -> visit.tasks().stream()
                        .filter(task -> task.progress().isRunning())
                        .findFirst());
    }

    /** Who the plan has on a task. */
    Optional<String> plannedPerson(Task task) {
        return outlook.timeOf(visit.id(), task.id()).flatMap(Plan.TaskTime::person);
    }
}
