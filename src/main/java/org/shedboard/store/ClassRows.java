package org.shedboard.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shedboard.estimate.MachineClass;
import org.shedboard.estimate.Point;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Step;

/** The machine classes and their inspection points, in the tables machine_class and point. */
final class ClassRows {
    private static final Table CLASS = Table.named("machine_class")
            .text("id")
            .number("ordinal")
            .text("name")
            .number("mass_kg")
            .text("wash_minutes")
            .number("driven_minutes", "pushed_minutes", "raise_minutes", "lower_minutes")
            .keyed("id");
    private static final Table POINT = Table.named("point")
            .text("class_id", "id")
            .number("ordinal")
            .text("name", "location", "step", "due")
            .number("inspect_minutes")
            .text("uncover_minutes", "caution")
            .flag("stops_riding")
            .text("unit")
            .real("low", "high")
            .text("renewed_with")
            .keyed("class_id", "id");

    private ClassRows() {}

    static List<MachineClass> read(Sql sql) {
        Children points = Children.of(sql.select(POINT, "ORDER BY class_id, ordinal"), "class_id");
        return sql.select(CLASS, "ORDER BY ordinal").stream()
                .map(row -> row.map(each -> toClass(each, points)))
                .toList();
    }

    private static MachineClass toClass(Cells row, Children points) {
        return new MachineClass(
                row.text("id"),
                row.text("name"),
                row.number("mass_kg"),
                row.numbers("wash_minutes"),
                new MachineClass.Moving(
                        row.number("driven_minutes"),
                        row.number("pushed_minutes"),
                        row.number("raise_minutes"),
                        row.number("lower_minutes")),
                points.map(row.text("id"), ClassRows::toPoint));
    }

    private static Point toPoint(Cells row) {
        return new Point(
                row.text("id"),
                row.text("name"),
                row.text("location"),
                row.one(Step.class, "step"),
                row.one(Depth.class, "due"),
                row.number("inspect_minutes"),
                row.numbers("uncover_minutes"),
                row.text("caution"),
                row.flag("stops_riding"),
                row.findText("unit").map(unit -> new Point.Measure(unit, row.real("low"), row.real("high"))),
                row.findText("renewed_with"));
    }

    static List<Share> shares(List<MachineClass> classes) {
        List<Cells> points = new ArrayList<>();
        List<Cells> rows = new ArrayList<>();
        for (MachineClass each : classes) {
            rows.add(cells(each, rows.size()));
            for (Point point : each.points()) {
                points.add(cells(each.id(), point, points.size()));
            }
        }
        return List.of(Share.whole(CLASS, rows), Share.whole(POINT, points));
    }

    private static Cells cells(MachineClass each, int ordinal) {
        return Cells.in(CLASS)
                .set("id", each.id())
                .set("ordinal", ordinal)
                .set("name", each.name())
                .set("mass_kg", each.massKg())
                .set("wash_minutes", each.washMinutes())
                .set("driven_minutes", each.moving().driven())
                .set("pushed_minutes", each.moving().pushed())
                .set("raise_minutes", each.moving().raise())
                .set("lower_minutes", each.moving().lower());
    }

    private static Cells cells(String classId, Point point, int ordinal) {
        Optional<Point.Measure> measure = point.measure();
        return Cells.in(POINT)
                .set("class_id", classId)
                .set("id", point.id())
                .set("ordinal", ordinal)
                .set("name", point.name())
                .set("location", point.where())
                .set("step", point.step())
                .set("due", point.due())
                .set("inspect_minutes", point.inspectMinutes())
                .set("uncover_minutes", point.uncoverMinutes())
                .set("caution", point.caution())
                .set("stops_riding", point.stopsRiding())
                .set("unit", measure.map(Point.Measure::unit))
                .set("low", measure.map(Point.Measure::low))
                .set("high", measure.map(Point.Measure::high))
                .set("renewed_with", point.renewedWith());
    }
}
