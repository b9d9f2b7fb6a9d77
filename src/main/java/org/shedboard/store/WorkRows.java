package org.shedboard.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.shedboard.estimate.Work;
import org.shedboard.shop.Depth;
import org.shedboard.shop.PlaceKind;
import org.shedboard.shop.ServiceInterval;
import org.shedboard.shop.Skill;
import org.shedboard.shop.Step;

/** The work on offer, in the tables work and work_task. */
final class WorkRows {
    private static final Table WORK = Table.named("work")
            .text("id")
            .number("ordinal")
            .text("name", "choice", "classes", "depth")
            .keyed("id");
    private static final Table TASK = Table.named("work_task")
            .text("work_id")
            .number("ordinal")
            .text("id", "name", "step", "skill", "kinds")
            .number("hands_on", "unattended")
            .text("after_tasks")
            .flag("checked_by_another")
            .text("caution")
            .keyed("work_id", "ordinal");

    private static final Table INTERVAL = Table.named("work_interval")
            .text("work_id")
            .number("hours", "kilometres", "months")
            .text("includes")
            .keyed("work_id");

    private WorkRows() {}

    static List<Work> read(Sql sql) {
        Children tasks = Children.of(sql.select(TASK, "ORDER BY work_id, ordinal"), "work_id");
        PartRows parts = PartRows.read(sql);
        Children intervals = Children.of(sql.select(INTERVAL, "ORDER BY work_id"), "work_id");
        return sql.select(WORK, "ORDER BY ordinal").stream()
                .map(row -> row.map(work -> toWork(work, tasks, parts, intervals)))
                .toList();
    }

    private static Work toWork(Cells row, Children tasks, PartRows parts, Children intervals) {
        String id = row.text("id");
        return new Work(
                id,
                row.text("name"),
                row.text("choice"),
                Set.copyOf(row.list("classes")),
                row.one(Depth.class, "depth"),
                tasks.map(id, WorkRows::toTask),
                parts.partsOf(id),
                intervals.map(id, WorkRows::toInterval).stream().findFirst());
    }

    private static ServiceInterval toInterval(Cells row) {
        return new ServiceInterval(
                row.findNumber("hours"), row.findNumber("kilometres"), row.findNumber("months"), row.list("includes"));
    }

    private static Work.WorkTask toTask(Cells row) {
        return new Work.WorkTask(
                row.text("id"),
                row.text("name"),
                row.one(Step.class, "step"),
                row.one(Skill.class, "skill"),
                row.list("kinds").stream().map(PlaceKind::valueOf).toList(),
                row.number("hands_on"),
                row.number("unattended"),
                row.list("after_tasks"),
                row.flag("checked_by_another"),
                row.text("caution"));
    }

    static List<Share> shares(List<Work> works) {
        List<Cells> rows = new ArrayList<>();
        List<Cells> tasks = new ArrayList<>();
        List<Cells> intervals = new ArrayList<>();
        for (Work work : works) {
            rows.add(cells(work, rows.size()));
            work.tasks().forEach(task -> tasks.add(cells(work.id(), task, tasks.size())));
            work.interval().ifPresent(interval -> intervals.add(cells(work.id(), interval)));
        }
        List<Share> shares = new ArrayList<>(
                List.of(Share.whole(WORK, rows), Share.whole(TASK, tasks), Share.whole(INTERVAL, intervals)));
        shares.addAll(PartRows.shares(works));
        return shares;
    }

    private static Cells cells(Work work, int ordinal) {
        return Cells.in(WORK)
                .set("id", work.id())
                .set("ordinal", ordinal)
                .set("name", work.name())
                .set("choice", work.key())
                .set("classes", work.classes().stream().sorted().toList())
                .set("depth", work.depth());
    }

    private static Cells cells(String workId, Work.WorkTask task, int ordinal) {
        return Cells.in(TASK)
                .set("work_id", workId)
                .set("ordinal", ordinal)
                .set("id", task.id())
                .set("name", task.name())
                .set("step", task.step())
                .set("skill", task.skill())
                .set("kinds", task.kinds())
                .set("hands_on", task.handsOn())
                .set("unattended", task.unattended())
                .set("after_tasks", task.after())
                .set("checked_by_another", task.checkedByAnother())
                .set("caution", task.caution());
    }

    private static Cells cells(String workId, ServiceInterval interval) {
        return Cells.in(INTERVAL)
                .set("work_id", workId)
                .set("hours", interval.hours())
                .set("kilometres", interval.kilometres())
                .set("months", interval.months())
                .set("includes", interval.includes());
    }
}
