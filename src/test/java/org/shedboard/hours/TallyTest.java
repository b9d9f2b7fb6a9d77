package org.shedboard.hours;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shedboard.hours.Activity.OtherWork.Kind;
import org.shedboard.hours.Tally.PersonHours;
import org.shedboard.hours.Tally.VisitHours;
import org.shedboard.shop.Step;

class TallyTest {
    private static final LocalDate DATE = LocalDate.of(2026, 5, 12);
    private static final Instant LATE = at("23:00");
    private static final Presence FULL_DAY =
            new Presence("Ada", at("07:00"), at("16:00"), List.of(new Presence.Break(at("12:00"), at("12:30"))));

    @Test
    void touching_entries_share_no_minute_and_lose_none() {
        Tally tally =
                Tally.of(List.of(FULL_DAY), List.of(wash("07:00:00", "08:10:40"), wash("08:10:40", "09:00:00")), LATE);
        assertEquals(120, tally.people().get(0).onMachines());
        assertEquals(List.of(new VisitHours("V1", 120, 120, List.of("Ada"))), tally.visits());
    }

    @Test
    void an_unpaid_break_is_cut_out_of_an_entry_that_runs_through_it() {
        PersonHours ada = Tally.of(List.of(FULL_DAY), List.of(wash("11:45", "12:45")), LATE)
                .people()
                .get(0);
        assertEquals(30, ada.onMachines());
        assertEquals(9 * 60 - 30, ada.attended());
        assertEquals(8 * 60, ada.unaccounted());
    }

    @Test
    void an_entry_within_a_break_counts_nothing() {
        assertEquals(
                0,
                Tally.of(List.of(FULL_DAY), List.of(wash("12:05", "12:20")), LATE)
                        .onMachines());
    }

    @Test
    void who_has_entries_outside_the_noted_presence_was_present_for_them() {
        PersonHours ada = Tally.of(List.of(FULL_DAY), List.of(wash("06:40", "07:00"), wash("15:50", "16:15")), LATE)
                .people()
                .get(0);
        assertEquals(20 + 9 * 60 - 30 + 15, ada.attended());
        assertEquals(45, ada.onMachines());
    }

    @Test
    void an_open_entry_lasts_until_now() {
        ClockEntry open =
                new ClockEntry("C1", "Ada", new Activity.OnStay("V1", Step.DRIVE), at("08:00"), Optional.empty());
        Tally tally = Tally.of(List.of(FULL_DAY), List.of(open), at("08:25"));
        assertEquals(25, tally.onMachines());
        assertEquals(0, tally.visits().get(0).cleaning());
    }

    @Test
    void other_work_is_told_apart_by_its_kind_and_is_on_no_machine() {
        PersonHours ada = Tally.of(
                        List.of(FULL_DAY),
                        List.of(
                                other(Kind.FETCHING, "07:00", "07:20"),
                                other(Kind.PAPERWORK, "07:20", "07:30"),
                                other(Kind.FETCHING, "09:00", "09:05")),
                        LATE)
                .people()
                .get(0);
        assertEquals(Map.of(Kind.FETCHING, 25, Kind.PAPERWORK, 10), ada.other());
        assertEquals(0, ada.onMachines());
    }

    @Test
    void nobody_here_makes_an_empty_tally() {
        assertEquals(new Tally(List.of(), List.of()), Tally.of(List.of(), List.of(), LATE));
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void a_random_day_is_tallied_as_a_count_minute_by_minute_has_it(int seed) {
        Random random = new Random(seed);
        for (int round = 0; round < 50; round++) {
            checkAgainstCount(random);
        }
    }

    /** A day as an array of minutes, each of which is marked by what somebody is on in it. */
    private static void checkAgainstCount(Random random) {
        int from = 400 + random.nextInt(60);
        int to = from + 60 + random.nextInt(500);
        int dinner = from + random.nextInt(to - from);
        int dinnerEnd = Math.min(to, dinner + 1 + random.nextInt(45));
        String[] on = new String[24 * 60];
        List<ClockEntry> entries = new ArrayList<>();
        int first = from;
        int last = to;
        int minute = from - random.nextInt(30);
        while (minute < to) {
            int end = minute + 1 + random.nextInt(90);
            boolean onMachine = random.nextBoolean();
            String visit = "V" + random.nextInt(3);
            Activity activity = onMachine
                    ? new Activity.OnStay(visit, random.nextBoolean() ? Step.WASH : Step.TOPSIDE)
                    : new Activity.OtherWork(Kind.values()[random.nextInt(Kind.values().length)]);
            entries.add(new ClockEntry(
                    "C" + entries.size(), "Ada", activity, second(minute, random), Optional.of(second(end, random))));
            for (int each = minute; each < end; each++) {
                on[each] = onMachine ? visit : "other";
            }
            first = Math.min(first, minute);
            last = Math.max(last, end);
            minute = end + (random.nextBoolean() ? 0 : random.nextInt(40));
        }
        Presence presence = new Presence(
                "Ada",
                second(from, random),
                second(to, random),
                List.of(new Presence.Break(second(dinner, random), second(dinnerEnd, random))));
        int attended = 0;
        int onMachines = 0;
        int other = 0;
        for (int each = first; each < last; each++) {
            if (each < dinner || each >= dinnerEnd) {
                attended++;
                onMachines += on[each] != null && !on[each].equals("other") ? 1 : 0;
                other += "other".equals(on[each]) ? 1 : 0;
            }
        }
        PersonHours ada = Tally.of(List.of(presence), entries, LATE).people().get(0);
        assertEquals(attended, ada.attended());
        assertEquals(onMachines, ada.onMachines());
        assertEquals(other, ada.otherMinutes());
        assertEquals(attended, ada.onMachines() + ada.otherMinutes() + ada.unaccounted());
        assertTrue(ada.unaccounted() >= 0);
    }

    /** Some second of that minute of the day. */
    private static Instant second(int minute, Random random) {
        return at("00:00").plus(Duration.ofSeconds(60L * minute + random.nextInt(60)));
    }

    private static ClockEntry wash(String from, String to) {
        return new ClockEntry("C " + from, "Ada", new Activity.OnStay("V1", Step.WASH), at(from), Optional.of(at(to)));
    }

    private static ClockEntry other(Kind kind, String from, String to) {
        return new ClockEntry("C " + from, "Ada", new Activity.OtherWork(kind), at(from), Optional.of(at(to)));
    }

    private static Instant at(String time) {
        return DATE.atTime(LocalTime.parse(time)).toInstant(ZoneOffset.UTC);
    }
}
