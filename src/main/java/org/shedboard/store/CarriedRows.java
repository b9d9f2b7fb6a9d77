package org.shedboard.store;

import java.util.ArrayList;
import java.util.List;
import org.shedboard.register.Carried;

/** What machines took home to be looked at again, in the table carried. */
final class CarriedRows {
    private static final Table CARRIED = Table.named("carried")
            .text("machine_id", "point_id")
            .number("ordinal")
            .text("visit_id", "mark")
            .real("measured")
            .text("note", "found_by")
            .instant("found_at")
            .text("owner_answer", "asked_work", "asked_by", "asked_of")
            .instant("asked_at")
            .keyed("machine_id", "point_id")
            .scoped("machine_id");

    private CarriedRows() {}

    static List<Carried> all(Sql sql) {
        return sql.select(CARRIED, "ORDER BY machine_id, ordinal").stream()
                .map(row -> row.map(CarriedRows::toCarried))
                .toList();
    }

    private static Carried toCarried(Cells row) {
        return new Carried(row.text("machine_id"), row.text("visit_id"), WordRows.toFinding(row));
    }

    /** All that one machine took home; what it took home before is replaced. */
    static Share share(String machineId, List<Carried> carried) {
        List<Cells> rows = new ArrayList<>();
        for (Carried each : carried) {
            rows.add(cells(each, rows.size()));
        }
        return Share.of(CARRIED, List.of(machineId), rows);
    }

    private static Cells cells(Carried carried, int ordinal) {
        Cells cells = Cells.in(CARRIED)
                .set("machine_id", carried.machineId())
                .set("visit_id", carried.visitId())
                .set("ordinal", ordinal);
        return WordRows.withFinding(cells, carried.finding());
    }
}
