package org.shedboard.hours;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shedboard.hours.Activity.Break;
import org.shedboard.hours.Activity.OnStay;
import org.shedboard.hours.Activity.OtherWork;
import org.shedboard.hours.Tally.PersonHours;
import org.shedboard.shop.Step;
import org.shedboard.shop.Window;

/** Clock entries of a day said shortly; who is not named is Ada. */
final class Clocked {
    static final LocalDate DATE = LocalDate.of(2026, 5, 12);
    static final ZoneId ZONE = ZoneId.of("Australia/Brisbane");

    private final List<ClockEntry> rows = new ArrayList<>();
    private final Map<String, List<Window>> breaks = new LinkedHashMap<>(Map.of("Ada", List.of()));
    private HoursRules rules = HoursRules.USUAL;
    private Instant now = at("23:00");

    Clocked here(String from, String to) {
        return on("Ada", new Activity.AtWork(), from, to);
    }

    Clocked stay(String from, String to) {
        return stay("V1", Step.WASH, from, to);
    }

    Clocked stay(String visit, Step step, String from, String to) {
        return on("Ada", new OnStay(visit, step), from, to);
    }

    Clocked other(OtherWork.Kind kind, String from, String to) {
        return on("Ada", new OtherWork(kind), from, to);
    }

    Clocked pause(Break.Kind kind, String from, String to) {
        return on("Ada", new Break(kind), from, to);
    }

    /** @param to empty while it goes on */
    Clocked on(String person, Activity activity, String from, String to) {
        Optional<Instant> end = to.isEmpty() ? Optional.empty() : Optional.of(at(to));
        return row(new ClockEntry("C" + (rows.size() + 1), person, activity, at(from), end));
    }

    Clocked row(ClockEntry row) {
        rows.add(row);
        return this;
    }

    /** A correction that Ada writes. */
    Clocked corrected(String replaces, Activity activity, String from, String to) {
        Correction why = new Correction(Optional.of(replaces), false, "Ada", at("22:00"), "forgot");
        return row(new ClockEntry(
                "C" + (rows.size() + 1), "Ada", activity, at(from), Optional.of(at(to)), Optional.of(why)));
    }

    Clocked struck(String replaces) {
        ClockEntry old = rows.stream()
                .filter(row -> row.id().equals(replaces))
                .findFirst()
                .orElseThrow();
        Correction why = new Correction(Optional.of(replaces), true, "Ada", at("22:00"), "never was");
        return row(
                new ClockEntry("C" + (rows.size() + 1), "Ada", old.activity(), old.from(), old.to(), Optional.of(why)));
    }

    Clocked planned(String from, String to) {
        List<Window> all = new ArrayList<>(breaks.get("Ada"));
        all.add(new Window(LocalTime.parse(from), LocalTime.parse(to)));
        breaks.put("Ada", all);
        return this;
    }

    Clocked by(HoursRules next) {
        rules = next;
        return this;
    }

    Clocked rounded(Rounding.Unit unit, Rounding.Direction direction) {
        return by(new HoursRules(
                new Rounding(unit, direction), rules.charge(), rules.basis(), rules.breaks(), rules.lentMinutes()));
    }

    Clocked seenAt(String time) {
        now = at(time);
        return this;
    }

    Tally tally() {
        return tally(DATE, DATE.plusDays(1));
    }

    Tally tally(LocalDate from, LocalDate until) {
        return new TimeBook(ZONE, rules, breaks, rows).tally(from, until, now);
    }

    PersonHours ada() {
        return tally().people().get(0);
    }

    /** A time of the day; with a sign and a number of days before it, of another: {@code +1 06:00}. */
    static Instant at(String time) {
        String[] parts = time.split(" ");
        LocalDate date = parts.length == 1 ? DATE : DATE.plusDays(Integer.parseInt(parts[0]));
        return date.atTime(LocalTime.parse(parts[parts.length - 1]))
                .atZone(ZONE)
                .toInstant();
    }
}
