package org.shedboard.store;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.shedboard.shop.PlaceKind;
import org.shedboard.shop.Progress;
import org.shedboard.shop.Skill;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Step;
import org.shedboard.shop.Task;
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

    private static final String STAYS_OF_VISITS = "WHERE visit_id = ANY (?) ORDER BY visit_id, ordinal";
    private static final String TASKS_OF_VISITS = "WHERE visit_id = ANY (?) ORDER BY visit_id, stay_ordinal, ordinal";

    private final Children stays;
    private final Children tasks;

    private StayRows(Children stays, Children tasks) {
        this.stays = stays;
        this.tasks = tasks;
    }

    static StayRows of(Sql sql, List<String> visitIds) {
        return new StayRows(
                Children.of(sql.select(STAY, STAYS_OF_VISITS, visitIds), "visit_id"),
                Children.of(sql.select(TASK, TASKS_OF_VISITS, visitIds), "visit_id"));
    }

    List<Stay> staysOf(String visitId) {
        return stays.map(visitId, this::toStay);
    }

    private Stay toStay(Cells row) {
        List<Task> own = tasks.of(row.text("visit_id")).stream()
                .filter(task -> task.number("stay_ordinal") == row.number("ordinal"))
                .map(task -> task.map(StayRows::toTask))
                .toList();
        return new Stay(
                row.one(Step.class, "step"),
                row.list("kinds").stream().map(PlaceKind::valueOf).toList(),
                row.findText("place_id"),
                own);
    }

    private static Task toTask(Cells row) {
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
                toProgress(row));
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
        for (Visit visit : visits) {
            for (int i = 0; i < visit.stays().size(); i++) {
                Stay stay = visit.stays().get(i);
                stayRows.add(cells(visit.id(), stay, i));
                for (int k = 0; k < stay.tasks().size(); k++) {
                    taskRows.add(cells(visit.id(), stay.tasks().get(k), i, k));
                }
            }
        }
        return List.of(Share.of(STAY, visitIds, stayRows), Share.of(TASK, visitIds, taskRows));
    }

    private static Cells cells(String visitId, Stay stay, int ordinal) {
        return Cells.in(STAY)
                .set("visit_id", visitId)
                .set("ordinal", ordinal)
                .set("step", stay.step())
                .set("kinds", stay.kinds())
                .set("place_id", stay.placeId());
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
