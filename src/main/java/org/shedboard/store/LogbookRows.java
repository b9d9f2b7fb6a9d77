package org.shedboard.store;

import java.util.Collection;
import java.util.List;
import org.shedboard.register.Logbook;
import org.shedboard.register.Reading;
import org.shedboard.register.Rung;
import org.shedboard.register.Serviced;
import org.shedboard.shop.Mud;

/** Readings of meters and who was rung, in the tables meter_reading and rung; what was done is asked of visit and visit_line. */
final class LogbookRows {
    private static final Table READING = Table.named("meter_reading")
            .text("id", "machine_id")
            .instant("read_at")
            .text("unit")
            .real("shown")
            .text("told", "read_by")
            .keyed("id")
            .scoped("id");
    private static final Table RUNG = Table.named("rung")
            .text("id", "machine_id")
            .instant("rung_at")
            .text("rung_by", "said")
            .date("again_on")
            .text("note")
            .keyed("id")
            .scoped("id");
    private static final Table VISIT = Table.named("visit")
            .text("id", "machine_id", "mud")
            .instant("arrives_at", "finished_at")
            .keyed("id");
    private static final Table LINE =
            Table.named("visit_line").text("visit_id", "id", "work_id").keyed("visit_id", "id");

    private static final String IS_FINISHED = "state IN ('DONE', 'GONE') AND finished_at IS NOT NULL";
    private static final String BY_FINISH = " ORDER BY finished_at, id";
    /** Only work that comes again says when it comes again. */
    private static final String COMES_AGAIN = "work_id IN (SELECT work_id FROM work_interval)";

    private static final String BY_ORDINAL = " ORDER BY visit_id, ordinal";
    private static final String BY_READING = " ORDER BY read_at, id";
    private static final String BY_CALL = " ORDER BY rung_at, id";
    private static final String OF_THESE = "WHERE id = ANY (?)";

    private LogbookRows() {}

    static Logbook read(Sql sql) {
        return of(
                sql.select(READING, BY_READING),
                sql.select(VISIT, "WHERE " + IS_FINISHED + BY_FINISH),
                sql.select(LINE, "WHERE " + COMES_AGAIN + BY_ORDINAL),
                sql.select(RUNG, BY_CALL));
    }

    /** Of these visits, readings and calls alone. */
    static Logbook of(Sql sql, Collection<String> visits, Collection<String> readings, Collection<String> rung) {
        return of(
                sql.select(READING, OF_THESE + BY_READING, readings),
                sql.select(VISIT, OF_THESE + " AND " + IS_FINISHED + BY_FINISH, visits),
                sql.select(LINE, "WHERE visit_id = ANY (?) AND " + COMES_AGAIN + BY_ORDINAL, visits),
                sql.select(RUNG, OF_THESE + BY_CALL, rung));
    }

    private static Logbook of(List<Cells> readings, List<Cells> visits, List<Cells> services, List<Cells> rung) {
        Children lines = Children.of(services, "visit_id");
        return new Logbook(
                readings.stream().map(row -> row.map(LogbookRows::toReading)).toList(),
                visits.stream()
                        .map(row -> row.map(visit -> toServiced(visit, lines)))
                        .toList(),
                rung.stream().map(row -> row.map(LogbookRows::toRung)).toList());
    }

    private static Reading toReading(Cells row) {
        return new Reading(
                row.text("id"),
                row.text("machine_id"),
                row.instant("read_at"),
                row.one(Reading.Unit.class, "unit"),
                row.real("shown"),
                row.one(Reading.Told.class, "told"),
                row.text("read_by"));
    }

    private static Serviced toServiced(Cells visit, Children lines) {
        String id = visit.text("id");
        return new Serviced(
                visit.text("machine_id"),
                id,
                visit.instant("arrives_at"),
                visit.instant("finished_at"),
                visit.one(Mud.class, "mud"),
                lines.map(id, line -> line.text("work_id")));
    }

    private static Rung toRung(Cells row) {
        return new Rung(
                row.text("id"),
                row.text("machine_id"),
                row.instant("rung_at"),
                row.text("rung_by"),
                row.one(Rung.Said.class, "said"),
                row.findDate("again_on"),
                row.text("note"));
    }

    static Share shareOfReadings(Collection<Reading> readings) {
        return Share.of(
                READING,
                readings.stream().map(Reading::id).toList(),
                readings.stream().map(LogbookRows::cells).toList());
    }

    private static Cells cells(Reading reading) {
        return Cells.in(READING)
                .set("id", reading.id())
                .set("machine_id", reading.machineId())
                .set("read_at", reading.at())
                .set("unit", reading.unit())
                .set("shown", reading.value())
                .set("told", reading.told())
                .set("read_by", reading.by());
    }

    static Share shareOfRung(Collection<Rung> rung) {
        return Share.of(
                RUNG,
                rung.stream().map(Rung::id).toList(),
                rung.stream().map(LogbookRows::cells).toList());
    }

    private static Cells cells(Rung rung) {
        return Cells.in(RUNG)
                .set("id", rung.id())
                .set("machine_id", rung.machineId())
                .set("rung_at", rung.at())
                .set("rung_by", rung.by())
                .set("said", rung.said())
                .set("again_on", rung.again())
                .set("note", rung.note());
    }
}
