package org.shedboard.store;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.shedboard.shop.PlaceKind;
import org.shedboard.shop.Progress;
import org.shedboard.shop.Skill;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Step;
import org.shedboard.shop.Task;
import org.shedboard.shop.TaskPin;
import org.shedboard.shop.Visit;
import org.shedboard.shop.WorkKind;

/** The stays of visits and their tasks, in the tables stay and task. */
final class StayRows {
    private static final Table STAY = Table.named("stay")
            .text("visit_id")
            .number("ordinal")
            .text("step", "kinds", "place_id")
            .keyed("visit_id", "ordinal")
            .scoped("visit_id");
    private static final Table TASK = Table.named("task")
            .text("visit_id", "id")
            .number("stay_ordinal", "ordinal")
            .text("name", "kind", "skill")
            .number("hands_on", "unattended")
            .text("after_tasks", "not_by_tasks", "line_ids", "caution", "status", "person_id")
            .instant("began_at", "since_at")
            .number("minutes_left")
            .instant("ended_at")
            .keyed("visit_id", "id")
            .scoped("visit_id");

    private static final Table PIN = Table.named("task_pin")
            .text("visit_id", "task_id", "place_id")
            .instant("start_at")
            .text("person_id")
            .keyed("visit_id", "task_id")
            .scoped("visit_id");

    private static final String STAYS_OF_VISITS = "WHERE visit_id = ANY (?) ORDER BY visit_id, ordinal";
    private static final String TASKS_OF_VISITS = "WHERE visit_id = ANY (?) ORDER BY visit_id, stay_ordinal, ordinal";
    private static final String PINS_OF_VISITS = "WHERE visit_id = ANY (?) ORDER BY visit_id, task_id";

    private final Children stays;
    private final Children tasks;
    private final Children pins;

    private StayRows(Children stays, Children tasks, Children pins) {
        this.stays = stays;
        this.tasks = tasks;
        this.pins = pins;
    }

    static StayRows of(Sql sql, List<String> visitIds) {
        return new StayRows(
                Children.of(sql.select(STAY, STAYS_OF_VISITS, visitIds), "visit_id"),
                Children.of(sql.select(TASK, TASKS_OF_VISITS, visitIds), "visit_id"),
                Children.of(sql.select(PIN, PINS_OF_VISITS, visitIds), "visit_id"));
    }

    List<Stay> staysOf(String visitId) {
        return stays.map(visitId, this::toStay);
    }

    private Stay toStay(Cells row) {
        List<Task> own = tasks.of(row.text("visit_id")).stream()
                .filter(task -> task.number("stay_ordinal") == row.number("ordinal"))
                .map(task -> task.map(this::toTask))
                .toList();
        return new Stay(
                row.one(Step.class, "step"),
                row.list("kinds").stream().map(PlaceKind::valueOf).toList(),
                row.findText("place_id"),
                own);
    }

    private Task toTask(Cells row) {
        return new Task(
                row.text("id"),
                row.text("name"),
                row.one(WorkKind.class, "kind"),
                row.one(Skill.class, "skill"),
                row.number("hands_on"),
                row.number("unattended"),
                row.list("after_tasks"),
                row.list("not_by_tasks"),
                row.list("line_ids"),
                row.text("caution"),
                toProgress(row),
                pinOf(row.text("visit_id"), row.text("id")));
    }

    private Optional<TaskPin> pinOf(String visitId, String taskId) {
        return pins.of(visitId).stream()
                .filter(row -> row.text("task_id").equals(taskId))
                .findFirst()
                .map(row -> row.map(StayRows::toPin));
    }

    private static TaskPin toPin(Cells row) {
        return new TaskPin(row.findText("place_id"), row.findInstant("start_at"), row.findText("person_id"));
    }

    private static Progress toProgress(Cells row) {
        return new Progress(
                row.one(Progress.Status.class, "status"),
                row.findText("person_id"),
                row.findInstant("began_at"),
                row.findInstant("since_at"),
                row.number("minutes_left"),
                row.findInstant("ended_at"));
    }

    static List<Share> shares(List<String> visitIds, Collection<Visit> visits) {
        List<Cells> stayRows = new ArrayList<>();
        List<Cells> taskRows = new ArrayList<>();
        List<Cells> pinRows = new ArrayList<>();
        for (Visit visit : visits) {
            for (int i = 0; i < visit.stays().size(); i++) {
                Stay stay = visit.stays().get(i);
                stayRows.add(cells(visit.id(), stay, i));
                for (int k = 0; k < stay.tasks().size(); k++) {
                    Task task = stay.tasks().get(k);
                    taskRows.add(cells(visit.id(), task, i, k));
                    task.pin().ifPresent(pin -> pinRows.add(cells(visit.id(), task, pin)));
                }
            }
        }
        return List.of(
                Share.of(STAY, visitIds, stayRows),
                Share.of(TASK, visitIds, taskRows),
                Share.of(PIN, visitIds, pinRows));
    }

    private static Cells cells(String visitId, Stay stay, int ordinal) {
        return Cells.in(STAY)
                .set("visit_id", visitId)
                .set("ordinal", ordinal)
                .set("step", stay.step())
                .set("kinds", stay.kinds())
                .set("place_id", stay.placeId());
    }

    private static Cells cells(String visitId, Task task, TaskPin pin) {
        return Cells.in(PIN)
                .set("visit_id", visitId)
                .set("task_id", task.id())
                .set("place_id", pin.placeId())
                .set("start_at", pin.at())
                .set("person_id", pin.personId());
    }

    private static Cells cells(String visitId, Task task, int stayOrdinal, int ordinal) {
        Progress progress = task.progress();
        return Cells.in(TASK)
                .set("visit_id", visitId)
                .set("id", task.id())
                .set("stay_ordinal", stayOrdinal)
                .set("ordinal", ordinal)
                .set("name", task.name())
                .set("kind", task.kind())
                .set("skill", task.skill())
                .set("hands_on", task.handsOn())
                .set("unattended", task.unattended())
                .set("after_tasks", task.after())
                .set("not_by_tasks", task.notBy())
                .set("line_ids", task.lines())
                .set("caution", task.caution())
                .set("status", progress.status())
                .set("person_id", progress.person())
                .set("began_at", progress.began())
                .set("since_at", progress.since())
                .set("minutes_left", progress.left())
                .set("ended_at", progress.ended());
    }
}
