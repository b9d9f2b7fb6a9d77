package org.shedboard.store;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shedboard.pack.Plan;

/**
 * The posted plan, in the tables plan_posted, plan_stay, plan_task and plan_unplaced. The journal tells of it what it cost and
 * how it was searched for, not each of its minutes: those follow from the problem.
 */
final class PlanRows {
    private static final Table POSTED = Table.named("plan_posted")
            .number("id")
            .instant("origin_at")
            .wide("cost", "bound", "seed", "tries", "millis")
            .keyed("id");
    private static final Table UNPLACED = Table.named("plan_unplaced")
            .number("ordinal")
            .text("job", "why")
            .keyed("ordinal")
            .untold();
    private static final Table STAY = Table.named("plan_stay")
            .text("job")
            .number("stay", "ordinal")
            .text("place_id")
            .number("from_minute", "to_minute")
            .keyed("job", "stay")
            .untold();
    private static final Table TASK = Table.named("plan_task")
            .text("job")
            .number("stay")
            .text("task")
            .number("ordinal")
            .text("person_id", "with_people")
            .number("start_minute", "end_minute")
            .keyed("job", "stay", "task")
            .untold();

    private static final String IN_ORDER = "ORDER BY ordinal";

    private PlanRows() {}

    static Optional<Posted> find(Sql sql) {
        return sql.select(POSTED, "").stream()
                .findFirst()
                .map(row -> row.map(posted -> new Posted(toPlan(sql, posted), posted.instant("origin_at"))));
    }

    private static Plan toPlan(Sql sql, Cells row) {
        return new Plan(
                row.wide("cost"),
                row.wide("bound"),
                sql.select(UNPLACED, IN_ORDER).stream()
                        .map(left -> new Plan.Unplaced(left.text("job"), left.text("why")))
                        .toList(),
                sql.select(STAY, IN_ORDER).stream()
                        .map(each -> each.map(PlanRows::toStay))
                        .toList(),
                sql.select(TASK, IN_ORDER).stream()
                        .map(each -> each.map(PlanRows::toTask))
                        .toList(),
                row.wide("seed"),
                row.wide("tries"),
                row.wide("millis"));
    }

    private static Plan.StayPlace toStay(Cells row) {
        return new Plan.StayPlace(
                row.text("job"),
                row.number("stay"),
                row.text("place_id"),
                row.number("from_minute"),
                row.number("to_minute"));
    }

    private static Plan.TaskTime toTask(Cells row) {
        return new Plan.TaskTime(
                row.text("job"),
                row.number("stay"),
                row.text("task"),
                row.findText("person_id"),
                row.list("with_people"),
                row.number("start_minute"),
                row.number("end_minute"));
    }

    static List<Share> shares(Plan plan, Instant origin) {
        Cells posted = Cells.in(POSTED)
                .set("id", 1)
                .set("origin_at", origin)
                .set("cost", plan.cost())
                .set("bound", plan.bound())
                .set("seed", plan.seed())
                .set("tries", plan.tries())
                .set("millis", plan.millis());
        return List.of(
                Share.whole(POSTED, List.of(posted)),
                Share.whole(UNPLACED, unplaced(plan)),
                Share.whole(STAY, stays(plan)),
                Share.whole(TASK, tasks(plan)));
    }

    private static List<Cells> unplaced(Plan plan) {
        List<Cells> rows = new ArrayList<>();
        for (Plan.Unplaced left : plan.unplaced()) {
            rows.add(Cells.in(UNPLACED)
                    .set("ordinal", rows.size())
                    .set("job", left.job())
                    .set("why", left.why()));
        }
        return rows;
    }

    private static List<Cells> stays(Plan plan) {
        List<Cells> rows = new ArrayList<>();
        for (Plan.StayPlace stay : plan.stays()) {
            rows.add(Cells.in(STAY)
                    .set("job", stay.job())
                    .set("stay", stay.stay())
                    .set("ordinal", rows.size())
                    .set("place_id", stay.place())
                    .set("from_minute", stay.from())
                    .set("to_minute", stay.to()));
        }
        return rows;
    }

    private static List<Cells> tasks(Plan plan) {
        List<Cells> rows = new ArrayList<>();
        for (Plan.TaskTime time : plan.tasks()) {
            rows.add(Cells.in(TASK)
                    .set("job", time.job())
                    .set("stay", time.stay())
                    .set("task", time.task())
                    .set("ordinal", rows.size())
                    .set("person_id", time.person())
                    .set("with_people", time.with())
                    .set("start_minute", time.start())
                    .set("end_minute", time.end()));
        }
        return rows;
    }
}
