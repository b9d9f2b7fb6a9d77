package org.shedboard.store;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shedboard.shop.Attendance;
import org.shedboard.shop.HoistCheck;
import org.shedboard.shop.Opening;

/** How days were opened, in the tables opening, attendance and hoist_check. */
final class OpeningRows {
    private static final Table OPENING = Table.named("opening")
            .date("opened_on")
            .instant("opened_at")
            .text("opened_by")
            .instant("closed_at")
            .text("closed_by")
            .keyed("opened_on")
            .scoped("opened_on");
    private static final Table ATTENDANCE = Table.named("attendance")
            .date("opened_on")
            .number("ordinal")
            .text("person_id")
            .instant("from_at", "until_at", "left_at")
            .keyed("opened_on", "ordinal")
            .scoped("opened_on");
    private static final Table CHECK = Table.named("hoist_check")
            .date("opened_on")
            .number("ordinal")
            .text("place_id", "checked_by")
            .instant("checked_at")
            .text("locked_out")
            .keyed("opened_on", "ordinal")
            .scoped("opened_on");

    private static final String ON = "WHERE opened_on = ?";
    private static final String ON_IN_ORDER = "WHERE opened_on = ? ORDER BY ordinal";
    private static final String WITHIN = "WHERE opened_on >= ? AND opened_on < ? ORDER BY opened_on";
    private static final String UNCLOSED = """
            WHERE closed_at IS NULL AND opened_on < ?
            ORDER BY opened_on DESC""";
    private static final String NEWEST = "WHERE opened_on = (SELECT MAX(opened_on) FROM opening)";

    private OpeningRows() {}

    static Optional<Opening> find(Sql sql, LocalDate date) {
        return read(sql, sql.select(OPENING, ON, date));
    }

    static List<Opening> within(Sql sql, LocalDate from, LocalDate until) {
        return sql.select(OPENING, WITHIN, from, until).stream()
                .map(row -> row.map(opening -> toOpening(sql, opening)))
                .toList();
    }

    /** The newest date before this one that was opened and never closed. */
    static Optional<LocalDate> unclosedBefore(Sql sql, LocalDate date) {
        return sql.select(OPENING, UNCLOSED, date).stream().findFirst().map(row -> row.date("opened_on"));
    }

    static Optional<Opening> newest(Sql sql) {
        return read(sql, sql.select(OPENING, NEWEST));
    }

    private static Optional<Opening> read(Sql sql, List<Cells> rows) {
        return rows.stream().findFirst().map(row -> row.map(opening -> toOpening(sql, opening)));
    }

    private static Opening toOpening(Sql sql, Cells row) {
        LocalDate date = row.date("opened_on");
        return new Opening(
                date,
                row.instant("opened_at"),
                row.text("opened_by"),
                sql.select(ATTENDANCE, ON_IN_ORDER, date).stream()
                        .map(each -> each.map(OpeningRows::toAttendance))
                        .toList(),
                sql.select(CHECK, ON_IN_ORDER, date).stream()
                        .map(each -> each.map(OpeningRows::toCheck))
                        .toList(),
                row.findInstant("closed_at")
                        .map(at ->
                                new Opening.Closed(at, row.findText("closed_by").orElse(row.text("opened_by")))));
    }

    private static Attendance toAttendance(Cells row) {
        return new Attendance(
                row.text("person_id"), row.instant("from_at"), row.instant("until_at"), row.findInstant("left_at"));
    }

    private static HoistCheck toCheck(Cells row) {
        return new HoistCheck(
                row.text("place_id"), row.text("checked_by"), row.instant("checked_at"), row.findText("locked_out"));
    }

    static List<Share> shares(Opening opening) {
        List<LocalDate> dates = List.of(opening.date());
        Cells itself = Cells.in(OPENING)
                .set("opened_on", opening.date())
                .set("opened_at", opening.at())
                .set("opened_by", opening.by())
                .set("closed_at", opening.closed().map(Opening.Closed::at))
                .set("closed_by", opening.closed().map(Opening.Closed::by));
        return List.of(
                Share.of(OPENING, dates, List.of(itself)),
                Share.of(ATTENDANCE, dates, attendances(opening)),
                Share.of(CHECK, dates, checks(opening)));
    }

    private static List<Cells> attendances(Opening opening) {
        List<Cells> rows = new ArrayList<>();
        for (Attendance attendance : opening.attendances()) {
            rows.add(Cells.in(ATTENDANCE)
                    .set("opened_on", opening.date())
                    .set("ordinal", rows.size())
                    .set("person_id", attendance.personId())
                    .set("from_at", attendance.from())
                    .set("until_at", attendance.until())
                    .set("left_at", attendance.left()));
        }
        return rows;
    }

    private static List<Cells> checks(Opening opening) {
        List<Cells> rows = new ArrayList<>();
        for (HoistCheck check : opening.checks()) {
            rows.add(Cells.in(CHECK)
                    .set("opened_on", opening.date())
                    .set("ordinal", rows.size())
                    .set("place_id", check.placeId())
                    .set("checked_by", check.by())
                    .set("checked_at", check.at())
                    .set("locked_out", check.lockedOut()));
        }
        return rows;
    }
}
