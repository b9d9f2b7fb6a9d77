package org.shedboard.store;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.shedboard.register.History;
import org.shedboard.shop.Condition;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Handover;
import org.shedboard.shop.Hold;
import org.shedboard.shop.Intake;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;

/** Visits in the tables visit and tag; what belongs to them stands in {@link StayRows}, {@link LineRows} and {@link WordRows}. */
final class VisitRows {
    private static final Table VISIT = Table.named("visit")
            .text("id", "machine_id")
            .number("tag_number")
            .text("state")
            .instant("arrives_at")
            .text("mud", "depth")
            .flag("runs", "rolls", "steers", "stops")
            .text("note", "hold_reason", "hold_note")
            .instant("hold_since", "hold_until", "finished_at", "ended_at")
            .number("last_tag")
            .flag("wash_down_first")
            .text("also_look_at")
            .number("intake_meter_hours")
            .text("handed_by", "handed_to", "handed_told")
            .instant("handed_at")
            .keyed("id")
            .scoped("id");
    /** Keyed by the number, so that a tag passed on or swapped is a row that changes hands. */
    private static final Table TAG =
            Table.named("tag").number("number").text("visit_id").keyed("number").scoped("visit_id");

    /** Asked for apart, since an index finds each and none finds both. */
    private static final List<String> OPEN_AND_ENDED_SINCE = List.of("WHERE ended_at IS NULL", "WHERE ended_at >= ?");

    private static final String PROMISED_WITHIN =
            "WHERE id IN (SELECT visit_id FROM promise WHERE ready_at >= ? AND ready_at < ?)";

    private static final String OF_MACHINE = """
            WHERE machine_id = ?
            ORDER BY arrives_at, id""";
    private static final String FINISHED_WITHIN = """
            WHERE finished_at >= ? AND finished_at < ?
            ORDER BY finished_at, id""";
    private static final String NEWEST_BUT_SO_MANY = """
            WHERE finished_at < ?
            ORDER BY finished_at DESC, id
            OFFSET ? ROWS FETCH FIRST 1 ROW ONLY""";
    private static final String BY_ID = "WHERE id = ?";

    /** The tables whose rows begin with a visit's id and are all that is known of it. */
    static final Set<String> TABLES =
            Set.of("visit", "visit_line", "line_part", "stay", "task", "task_pin", "promise", "finding");

    private VisitRows() {}

    /** @param known those that are as they were, by id; nothing of them is read again */
    static List<Visit> openOrEndedSince(Sql sql, Instant moment, Map<String, Visit> known) {
        List<Cells> rows = byArrival(rowsOpenOrEndedSince(sql, moment));
        List<Cells> news =
                rows.stream().filter(row -> !known.containsKey(row.text("id"))).toList();
        Map<String, Visit> visits = new HashMap<>(known);
        if (!news.isEmpty()) {
            read(sql, news).forEach(visit -> visits.put(visit.id(), visit));
        }
        return rows.stream().map(row -> visits.get(row.text("id"))).toList();
    }

    private static List<Cells> rowsOpenOrEndedSince(Sql sql, Instant moment) {
        List<Cells> rows = new ArrayList<>(sql.select(VISIT, OPEN_AND_ENDED_SINCE.get(0)));
        rows.addAll(sql.select(VISIT, OPEN_AND_ENDED_SINCE.get(1), moment));
        return rows;
    }

    /** Each once. */
    private static List<Cells> byArrival(List<Cells> rows) {
        Map<String, Cells> visits = new LinkedHashMap<>();
        rows.stream()
                .sorted(Comparator.comparing((Cells row) -> row.instant("arrives_at"))
                        .thenComparing(row -> row.text("id")))
                .forEach(row -> visits.putIfAbsent(row.text("id"), row));
        return List.copyOf(visits.values());
    }

    /** Those here on some of the days, and those promised for one of them. */
    static List<Visit> during(Sql sql, Instant from, Instant to) {
        List<Cells> rows = new ArrayList<>(rowsOpenOrEndedSince(sql, from));
        rows.removeIf(row -> !row.instant("arrives_at").isBefore(to));
        rows.addAll(sql.select(VISIT, PROMISED_WITHIN, from, to));
        return read(sql, byArrival(rows));
    }

    static List<Visit> ofMachine(Sql sql, String machineId) {
        return read(sql, sql.select(VISIT, OF_MACHINE, machineId));
    }

    static List<Visit> finishedWithin(Sql sql, Instant from, Instant to) {
        return read(sql, sql.select(VISIT, FINISHED_WITHIN, from, to));
    }

    /** When the newest visit but so many of those finished before a moment was finished. */
    static Optional<Instant> finishOfNewestBut(Sql sql, int count, Instant before) {
        return sql.select(VISIT, NEWEST_BUT_SO_MANY, before, count).stream()
                .map(row -> row.instant("finished_at"))
                .findFirst();
    }

    static Optional<Visit> find(Sql sql, String id) {
        return read(sql, sql.select(VISIT, BY_ID, id)).stream().findFirst();
    }

    /** What a machine went through, the newest visit first. */
    static History history(Sql sql, String machineId) {
        List<Cells> rows = sql.select(VISIT, OF_MACHINE, machineId);
        List<Visit> visits = read(sql, rows);
        List<History.Visited> visited = new ArrayList<>();
        for (int i = rows.size() - 1; i >= 0; i--) {
            visited.add(new History.Visited(visits.get(i), rows.get(i).findNumber("last_tag")));
        }
        return new History(machineId, visited);
    }

    private static List<Visit> read(Sql sql, List<Cells> visits) {
        List<String> ids = visits.stream().map(visit -> visit.text("id")).toList();
        LineRows lines = LineRows.of(sql, ids);
        StayRows stays = StayRows.of(sql, ids);
        WordRows words = WordRows.of(sql, ids);
        return visits.stream()
                .map(row -> row.map(visit -> toVisit(visit, lines, stays, words)))
                .toList();
    }

    private static Visit toVisit(Cells row, LineRows lines, StayRows stays, WordRows words) {
        String id = row.text("id");
        return new Visit(
                id,
                row.text("machine_id"),
                row.findNumber("tag_number"),
                row.one(VisitState.class, "state"),
                toIntake(row),
                lines.linesOf(id),
                stays.staysOf(id),
                words.promisesOf(id),
                words.findingsOf(id),
                row.findText("hold_reason").map(reason -> toHold(row)),
                row.findInstant("finished_at"),
                row.findInstant("handed_at").map(at -> toHandover(row, at)));
    }

    private static Handover toHandover(Cells row, Instant at) {
        return new Handover(row.text("handed_by"), row.text("handed_to"), row.text("handed_told"), at);
    }

    private static Intake toIntake(Cells row) {
        return new Intake(
                row.instant("arrives_at"),
                row.one(Mud.class, "mud"),
                row.one(Depth.class, "depth"),
                new Condition(row.flag("runs"), row.flag("rolls"), row.flag("steers"), row.flag("stops")),
                row.text("note"),
                row.findText("also_look_at").map(Listed::split).orElse(List.of()),
                row.findNumber("intake_meter_hours"),
                row.flag("wash_down_first"));
    }

    private static Hold toHold(Cells row) {
        return new Hold(
                row.one(Hold.Reason.class, "hold_reason"),
                row.text("hold_note"),
                row.instant("hold_since"),
                row.instant("hold_until"));
    }

    /** What the tables are to hold of these visits, of which one that has just ended did so at that moment. */
    static List<Share> shares(Sql sql, Collection<Visit> visits, Instant now) {
        List<String> ids = visits.stream().map(Visit::id).toList();
        Map<String, Cells> known = new HashMap<>();
        sql.select(VISIT, "WHERE id = ANY (?)", ids).forEach(row -> known.put(row.text("id"), row));
        List<Cells> rows = visits.stream()
                .map(visit -> cells(visit, Optional.ofNullable(known.get(visit.id())), now))
                .toList();
        List<Share> shares = new ArrayList<>();
        shares.add(Share.of(VISIT, ids, rows));
        shares.add(Share.of(TAG, ids, tags(visits)));
        shares.addAll(LineRows.shares(ids, visits));
        shares.addAll(StayRows.shares(ids, visits));
        shares.addAll(WordRows.shares(ids, visits));
        return shares;
    }

    /** When the visit left our hands; one that comes in ended, as history does, left them when it was finished. */
    private static Optional<Instant> endOf(Visit visit, Optional<Cells> known, Instant now) {
        if (!hasEnded(visit)) {
            return Optional.empty();
        }
        return known.map(row -> row.findInstant("ended_at").orElse(now))
                .or(() -> visit.finished().or(() -> Optional.of(now)));
    }

    /** The tag it has; the one it had, where it has none any more. */
    private static OptionalInt lastTagOf(Visit visit, Optional<Cells> known) {
        return visit.tag().isPresent()
                ? visit.tag()
                : known.map(row -> row.findNumber("last_tag")).orElse(OptionalInt.empty());
    }

    private static boolean hasEnded(Visit visit) {
        return !visit.state().isOpen() && !visit.state().isHere();
    }

    private static List<Cells> tags(Collection<Visit> visits) {
        return visits.stream()
                .filter(visit -> visit.tag().isPresent() && !hasEnded(visit))
                .map(visit -> Cells.in(TAG).set("number", visit.tag()).set("visit_id", visit.id()))
                .toList();
    }

    private static Cells cells(Visit visit, Optional<Cells> known, Instant now) {
        Intake intake = visit.intake();
        Condition condition = intake.condition();
        Optional<Hold> hold = visit.hold();
        return Cells.in(VISIT)
                .set("id", visit.id())
                .set("machine_id", visit.machineId())
                .set("tag_number", visit.tag())
                .set("state", visit.state())
                .set("arrives_at", intake.arrives())
                .set("mud", intake.mud())
                .set("depth", intake.depth())
                .set("runs", condition.runs())
                .set("rolls", condition.rolls())
                .set("steers", condition.steers())
                .set("stops", condition.stops())
                .set("note", intake.note())
                .set("hold_reason", hold.map(Hold::reason))
                .set("hold_note", hold.map(Hold::note))
                .set("hold_since", hold.map(Hold::since))
                .set("hold_until", hold.map(Hold::until))
                .set("finished_at", visit.finished())
                .set("ended_at", endOf(visit, known, now))
                .set("last_tag", lastTagOf(visit, known))
                .set("wash_down_first", intake.washDownFirst())
                .set("also_look_at", intake.alsoLookAt())
                .set("intake_meter_hours", intake.meterHours())
                .set("handed_by", visit.handover().map(Handover::by))
                .set("handed_to", visit.handover().map(Handover::to))
                .set("handed_told", visit.handover().map(Handover::told))
                .set("handed_at", visit.handover().map(Handover::at));
    }
}
