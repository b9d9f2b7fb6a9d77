package org.shedboard.tally;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.shedboard.hours.ClockEntry;
import org.shedboard.hours.Correction;

/**
 * A row that hours are counted from, with what it stands for.
 *
 * @param counts whether it stands; a row that was struck out is listed and counts nothing
 * @param replaced the row it stands for, where there was one
 */
public record HoursRow(ClockEntry entry, boolean counts, Optional<ClockEntry> replaced) {
    /** The rows that touch the days of a tally, person by person in the order of their start. */
    public static List<HoursRow> of(SpanTally tally) {
        List<ClockEntry> all = tally.ledger().book().rows();
        Set<ClockEntry> standing = new HashSet<>(ClockEntry.standing(all));
        Map<String, ClockEntry> byId = new HashMap<>();
        all.forEach(row -> byId.put(row.id(), row));
        List<HoursRow> rows = new ArrayList<>();
        for (ClockEntry row : all) {
            Optional<ClockEntry> old =
                    row.correction().flatMap(Correction::replaces).map(byId::get);
            boolean isStruck = row.correction().filter(Correction::isStruck).isPresent();
            if ((standing.contains(row) || isStruck) && isOf(tally.ledger(), row)) {
                rows.add(new HoursRow(row, !isStruck, old));
            }
        }
        List<String> people = tally.ledger().book().breaks().keySet().stream().toList();
        rows.sort(Comparator.<HoursRow>comparingInt(
                        row -> orderOf(people, row.entry().personId()))
                .thenComparing(row -> row.entry().personId())
                .thenComparing(row -> row.entry().from())
                .thenComparing(row -> !row.entry().isAtWork())
                .thenComparing(row -> row.entry().id()));
        return rows;
    }

    private static int orderOf(List<String> people, String personId) {
        int index = people.indexOf(personId);
        return index < 0 ? people.size() : index;
    }

    private static boolean isOf(Ledger ledger, ClockEntry row) {
        ZoneId zone = ledger.books().shop().zone();
        return row.overlaps(
                        ledger.from().atStartOfDay(zone).toInstant(),
                        ledger.until().atStartOfDay(zone).toInstant())
                || ledger.isWithin(row.from());
    }
}
