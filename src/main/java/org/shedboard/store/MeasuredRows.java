package org.shedboard.store;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.shedboard.register.Measured;

/** Values that were read off, from the table finding, with what there is to know of the visits they belong to. */
final class MeasuredRows {
    private static final Table VISIT = Table.named("visit")
            .text("id", "machine_id")
            .number("intake_meter_hours")
            .instant("finished_at")
            .keyed("id");
    private static final Table LINE =
            Table.named("visit_line").text("visit_id", "id", "work_id").keyed("visit_id", "id");

    private static final String OF_MACHINES = "WHERE machine_id = ANY (?)";
    private static final String MEASURED = "WHERE visit_id = ANY (?) AND measured IS NOT NULL";
    private static final String OF_VISITS = "WHERE visit_id = ANY (?)";

    private MeasuredRows() {}

    /** The oldest first. */
    static List<Measured> of(Sql sql, Collection<String> machineIds) {
        Map<String, Cells> visits = new HashMap<>();
        sql.select(VISIT, OF_MACHINES, List.copyOf(machineIds)).forEach(row -> visits.put(row.text("id"), row));
        List<Cells> findings = sql.select(WordRows.FINDING, MEASURED, List.copyOf(visits.keySet()));
        Set<String> visitIds = new HashSet<>();
        findings.stream()
                .map(row -> row.text("visit_id"))
                .filter(id -> visits.get(id).findInstant("finished_at").isPresent())
                .forEach(visitIds::add);
        Map<String, Set<String>> works = works(sql, List.copyOf(visitIds));
        List<Measured> all = new ArrayList<>();
        for (Cells row : findings) {
            all.add(row.map(each -> toMeasured(each, visits, works)));
        }
        all.sort(Comparator.comparing(each -> each.finding().at()));
        return all;
    }

    /** All the work of a visit that is finished was done. */
    private static Map<String, Set<String>> works(Sql sql, List<String> visitIds) {
        Map<String, Set<String>> works = new HashMap<>();
        for (Cells row : sql.select(LINE, OF_VISITS, visitIds)) {
            works.computeIfAbsent(row.text("visit_id"), id -> new HashSet<>()).add(row.text("work_id"));
        }
        return works;
    }

    private static Measured toMeasured(Cells row, Map<String, Cells> visits, Map<String, Set<String>> works) {
        String visitId = row.text("visit_id");
        Cells visit = visits.get(visitId);
        return new Measured(
                visit.text("machine_id"),
                visitId,
                visit.findNumber("intake_meter_hours"),
                WordRows.toFinding(row),
                works.getOrDefault(visitId, Set.of()));
    }
}
