package org.shedboard.hours;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.shedboard.hours.Activity.AtWork;
import org.shedboard.hours.Activity.Break;
import org.shedboard.hours.Activity.Lent;
import org.shedboard.hours.Activity.OnStay;
import org.shedboard.hours.Activity.OtherWork;
import org.shedboard.shop.Step;
import org.shedboard.shop.Window;

/**
 * Weeks of one to four people with everything that clocks, clockers and correctors do, each from a seed. Moments crowd around the
 * edges at which a rule turns: marks, limits, ends of gaps, midnight, the nights on which the clock is changed. All is invented.
 */
final class RandomDays {
    /** A zone and a date in it; it begins or ends summer time on most of them (IANA time zone database, from memory). */
    private record Spot(String zone, String date) {}

    private static final List<Spot> SPOTS = List.of(
            new Spot("Etc/GMT-10", "2025-05-14"),
            new Spot("America/New_York", "2025-03-09"),
            new Spot("America/New_York", "2025-11-02"),
            new Spot("Australia/Lord_Howe", "2025-04-06"),
            new Spot("Australia/Lord_Howe", "2025-10-05"),
            new Spot("Europe/London", "2025-03-30"),
            new Spot("Europe/London", "2025-10-26"),
            new Spot("Pacific/Auckland", "2025-04-06"),
            new Spot("Pacific/Auckland", "2025-09-28"),
            new Spot("Asia/Kathmandu", "2025-07-02"),
            // here the clock is changed at midnight
            new Spot("America/Santiago", "2025-04-06"),
            new Spot("America/Santiago", "2025-09-07"));
    private static final List<String> PEOPLE = List.of("Marnie", "Tobin", "Wren", "Jory");
    private static final int DAYS = 7;

    private final Random random;
    private final ZoneId zone;
    private final LocalDate from;
    private final HoursRules rules;
    private final Instant now;
    private final Map<String, List<Window>> gaps = new LinkedHashMap<>();
    private final List<ClockEntry> rows = new ArrayList<>();

    private RandomDays(long seed) {
        // seeds next to each other begin alike
        random = new Random(seed * 0x9E3779B97F4A7C15L);
        Spot spot = any(SPOTS);
        zone = ZoneId.of(spot.zone);
        from = LocalDate.parse(spot.date).minusDays(random.nextInt(DAYS));
        rules = rules();
        now = at(from.plusDays(DAYS - 3 + random.nextInt(4)), random.nextInt(24 * 60));
    }

    static RandomWeek week(long seed) {
        return new RandomDays(seed).made(seed);
    }

    private RandomWeek made(long seed) {
        for (String person : PEOPLE.subList(0, 1 + random.nextInt(PEOPLE.size()))) {
            gaps.put(person, gaps());
            for (int day = -1; day <= DAYS; day++) {
                day(person, from.plusDays(day));
            }
        }
        if (oneIn(2)) {
            forgetWhatComesAfterNow();
        }
        correct();
        if (oneIn(3)) {
            Collections.shuffle(rows, random);
        }
        if (oneIn(8)) {
            gaps.remove("Marnie"); // is not of the shop any more
        }
        return new RandomWeek(seed, new TimeBook(zone, rules, gaps, rows), from, from.plusDays(DAYS), now);
    }

    private HoursRules rules() {
        Rounding attendance = new Rounding(any(Rounding.Unit.values()), any(Rounding.Direction.values()));
        int rest = any(20, 20, 20, 0, 10, 15, 29);
        int meal = any(30, 30, 30, rest + 1, rest + 15, 60);
        BreakRule breaks = new BreakRule(rest, meal, !oneIn(5));
        return new HoursRules(
                attendance, Rounding.EXACT, HoursRules.Basis.WORKED, breaks, any(10, 10, 10, 0, 1, 5, 30));
    }

    /** Gaps between usual shifts: none to three, apart from each other, a few of them at night. */
    private List<Window> gaps() {
        List<Window> all = new ArrayList<>();
        int minute = oneIn(8) ? random.nextInt(180) : 480 + random.nextInt(180);
        for (int left = random.nextInt(4); left > 0; left--) {
            int end = minute + Math.max(1, breakMinutes());
            all.add(new Window(LocalTime.ofSecondOfDay(60L * minute), LocalTime.ofSecondOfDay(60L * end)));
            minute = end + 1 + random.nextInt(240);
        }
        return all;
    }

    private void day(String person, LocalDate date) {
        if (oneIn(9)) {
            return;
        }
        int begins = oneIn(6) ? random.nextInt(24 * 60) : 300 + random.nextInt(300);
        Instant cursor = settled(person, at(date, begins));
        for (int spells = any(1, 1, 1, 2, 3); spells > 0; spells--) {
            Instant end = spell(person, cursor);
            if (!oneIn(7)) {
                add(person, new AtWork(), cursor, settled(person, later(end, random.nextInt(40) - 5)));
            }
            cursor = settled(person, later(end, 5 + random.nextInt(150)));
        }
    }

    /** One thing after the other, with holes between them, and with the clock put back now and then. */
    private Instant spell(String person, Instant begins) {
        Instant cursor = begins;
        for (int left = random.nextInt(8); left > 0; left--) {
            Activity activity = activity();
            Instant start = later(cursor, any(0, 0, 0, 0, 0, 1, 12, 45, -1, -20, -70));
            Instant end = later(start, minutes(activity));
            end = oneIn(12) ? start.plusSeconds(random.nextInt(60)) : oneIn(3) ? settled(person, end) : end;
            add(person, activity, start, end);
            if (oneIn(40)) {
                add(person, activity(), start, later(end, -1)); // began at the same moment
            }
            cursor = end.isAfter(start) ? end : start;
        }
        return cursor;
    }

    private Activity activity() {
        return switch (random.nextInt(10)) {
            case 0, 1, 2, 3 -> onStay();
            case 4 -> new Lent(onStay(), onStay());
            case 5, 6 -> new OtherWork(any(OtherWork.Kind.values()));
            default -> new Break(any(Break.Kind.values()));
        };
    }

    private OnStay onStay() {
        Optional<String> task = oneIn(3) ? Optional.empty() : Optional.of("T" + random.nextInt(2));
        return new OnStay("V" + random.nextInt(3), any(Step.values()), task);
    }

    private int minutes(Activity activity) {
        if (activity instanceof Break) {
            return breakMinutes();
        }
        if (activity instanceof Lent) {
            return Math.max(0, oneIn(3) ? random.nextInt(45) : rules.lentMinutes() + any(-1, 0, 1));
        }
        return oneIn(30) ? random.nextInt(900) : oneIn(3) ? random.nextInt(20) : 20 + random.nextInt(100);
    }

    private int breakMinutes() {
        int limit = oneIn(2) ? rules.breaks().restMinutes() : rules.breaks().mealMinutes();
        return Math.max(0, oneIn(3) ? random.nextInt(75) : limit + any(-1, 0, 1));
    }

    private void add(String person, Activity activity, Instant start, Instant end) {
        Optional<Instant> to = oneIn(60) ? Optional.empty() : Optional.of(end.isBefore(start) ? start : end);
        rows.add(new ClockEntry("C" + (rows.size() + 1), person, activity, start, to));
    }

    /** What is on the book at that moment of a day that goes on. */
    private void forgetWhatComesAfterNow() {
        rows.removeIf(row -> row.from().isAfter(now));
        rows.replaceAll(row -> row.to().orElse(now).isAfter(now)
                ? new ClockEntry(row.id(), row.personId(), row.activity(), row.from(), Optional.empty())
                : row);
    }

    private void correct() {
        int corrections = oneIn(3) || rows.isEmpty() ? 0 : random.nextInt(2 + rows.size() / 5);
        for (int number = 1; number <= corrections; number++) {
            ClockEntry old = any(rows); // or an earlier correction
            rows.add(correction("K" + number, old));
        }
    }

    private ClockEntry correction(String id, ClockEntry old) {
        Instant start = old.from();
        Instant end = old.to().orElse(later(start, random.nextInt(120)));
        int shift = random.nextInt(180) - 90;
        return switch (random.nextInt(8)) {
            case 0 -> correction(id, old, true, old.activity(), start, end);
            case 1 -> correction(id, old, false, old.activity(), later(start, 1440), later(end, 1440));
            case 2 -> correction(id, old, false, old.activity(), later(start, -1440), later(end, -1440));
            case 3 -> correction(id, old, false, activity(), start, end);
            case 4 -> correction(id, old, false, old.activity(), later(start, shift), later(end, shift));
            case 5 -> correction(id, old, false, old.activity(), start, later(end, Math.abs(shift)));
            case 6 -> correction(id, old, false, old.activity(), start, end);
            default -> added(id, old.personId(), later(end, shift));
        };
    }

    private ClockEntry correction(
            String id, ClockEntry old, boolean isStruck, Activity activity, Instant start, Instant end) {
        String person = oneIn(15) ? any(PEOPLE) : old.personId();
        Correction why = new Correction(Optional.of(old.id()), isStruck, "Marnie", now, "was told");
        return new ClockEntry(id, person, activity, start, Optional.of(end), Optional.of(why));
    }

    private ClockEntry added(String id, String person, Instant start) {
        Activity activity = oneIn(4) ? new AtWork() : activity();
        Instant end = later(start, activity instanceof AtWork ? 300 : minutes(activity));
        Correction why = new Correction(Optional.empty(), false, "Marnie", now, "forgot");
        return new ClockEntry(id, person, activity, start, Optional.of(end), Optional.of(why));
    }

    /** Moved to a whole minute, to some second, or close to the end of a gap that is not far. */
    private Instant settled(String person, Instant moment) {
        Instant second = moment.plusSeconds(random.nextInt(60)).plusNanos(oneIn(4) ? random.nextInt(1_000_000_000) : 0);
        return switch (random.nextInt(4)) {
            case 0 -> Instant.ofEpochSecond(60 * Math.floorDiv(moment.getEpochSecond(), 60L));
            case 1 -> closeToGap(person, moment).orElse(second);
            default -> second;
        };
    }

    private Optional<Instant> closeToGap(String person, Instant moment) {
        LocalDate date = LocalDate.ofInstant(moment, zone);
        List<Instant> ends = new ArrayList<>();
        for (Window gap : gaps.get(person)) {
            ends.add(date.atTime(gap.from()).atZone(zone).toInstant());
            ends.add(date.atTime(gap.to()).atZone(zone).toInstant());
        }
        ends.removeIf(end -> Duration.between(end, moment).abs().toMinutes() > 60);
        return ends.isEmpty() ? Optional.empty() : Optional.of(any(ends).plusSeconds(any(0, 0, 30, 60, -1, -60, -61)));
    }

    private Instant at(LocalDate date, int minute) {
        return date.atTime(LocalTime.ofSecondOfDay(60L * minute)).atZone(zone).toInstant();
    }

    private static Instant later(Instant moment, int minutes) {
        return moment.plusSeconds(60L * minutes);
    }

    private boolean oneIn(int number) {
        return random.nextInt(number) == 0;
    }

    private int any(int... all) {
        return all[random.nextInt(all.length)];
    }

    private <T> T any(T[] all) {
        return all[random.nextInt(all.length)];
    }

    private <T> T any(List<T> all) {
        return all.get(random.nextInt(all.size()));
    }
}
