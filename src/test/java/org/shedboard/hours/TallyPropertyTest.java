package org.shedboard.hours;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.shedboard.hours.CountedDay.Minute;
import org.shedboard.hours.Stretch.Use;
import org.shedboard.hours.Tally.PersonHours;
import org.shedboard.hours.Tally.VisitHours;

/** The tally of random weeks against a count by the minute that shares no code with it. */
class TallyPropertyTest {
    private static final int WEEKS = 1450 * Integer.getInteger("proof.scale", 1);
    /** Days with somebody in the shop in so many weeks; the generator must not come to make empty ones. */
    private static final int DAYS_IN_A_WEEK = 14;

    private static void everyWeek(int weeks, Consumer<RandomWeek> holds) {
        for (int seed = 0; seed < weeks; seed++) {
            try {
                holds.accept(RandomDays.week(seed));
            } catch (RuntimeException wrong) {
                fail("seed " + seed + ": " + wrong, wrong);
            }
        }
    }

    @Test
    void a_tally_is_what_a_count_by_the_minute_says_seeds_from_0() {
        int[] present = {0};
        everyWeek(WEEKS, week -> {
            MinuteByMinute count = new MinuteByMinute(week.book(), week.now());
            List<CountedDay> counted = new ArrayList<>();
            for (String person : count.people()) {
                week.dates().forEach(date -> counted.add(count.day(person, date)));
            }
            Tally tally = week.tally();
            assertDays(week, counted, tally);
            assertPeople(week, counted, tally);
            assertVisits(week, counted, tally);
            assertAskedAbout(week, count, tally);
            present[0] +=
                    counted.stream().mapToInt(day -> day.isEmpty() ? 0 : 1).sum();
        });
        assertTrue(present[0] >= WEEKS * DAYS_IN_A_WEEK, "only " + present[0] + " days had anybody in the shop");
    }

    private static void assertDays(RandomWeek week, List<CountedDay> counted, Tally tally) {
        Map<String, PersonDay> told = new HashMap<>();
        for (PersonDay day : tally.days()) {
            PersonDay twice = told.put(day.personId() + day.date(), day);
            assertEquals(
                    null, twice, () -> "two of one day: " + twice + "\n" + week.listing(day.personId(), day.date()));
        }
        for (CountedDay day : counted) {
            PersonDay same = told.remove(day.personId() + day.date());
            assertDay(week, day, same == null ? new PersonDay(day.personId(), day.date(), List.of(), 0) : same);
        }
        assertEquals(Map.of(), told, () -> "days that nobody has in " + week.listing());
    }

    private static void assertDay(RandomWeek week, CountedDay day, PersonDay told) {
        List<Optional<Minute>> minutes = spelledOut(week, day, told);
        assertEquals(
                day.minutes().equals(minutes) ? "" : week.listing(day.first(), day.minutes()),
                day.minutes().equals(minutes) ? "" : week.listing(day.first(), minutes),
                () -> week.listing(day.personId(), day.date()));
        List<PersonHours> hours = new Tally(List.of(told), List.of(), List.of()).people();
        assertEquals(List.of(day.hours()), hours, () -> week.listing(day.personId(), day.date()));
        assertEquals(day.rounding(), told.rounding(), () -> week.listing(day.personId(), day.date()));
    }

    /** Each minute of the day's stretches, none of them twice and none outside of the day. */
    private static List<Optional<Minute>> spelledOut(RandomWeek week, CountedDay day, PersonDay told) {
        List<Optional<Minute>> minutes =
                new ArrayList<>(Collections.nCopies(day.minutes().size(), Optional.empty()));
        Instant last = Instant.MIN;
        for (Stretch stretch : told.stretches()) {
            boolean isAfter = !stretch.from().isBefore(last) && stretch.from().isBefore(stretch.to());
            assertTrue(isAfter, () -> stretch + " is out of order\n" + week.listing(day.personId(), day.date()));
            last = stretch.to();
            int from = (int) (stretch.from().getEpochSecond() / 60 - day.first());
            for (int minute = from; minute < from + stretch.minutes(); minute++) {
                minutes.set(minute, Optional.of(new Minute(stretch.use(), stretch.on(), stretch.isLent())));
            }
        }
        return minutes;
    }

    private static void assertPeople(RandomWeek week, List<CountedDay> counted, Tally tally) {
        Map<String, PersonHours> told =
                tally.people().stream().collect(Collectors.toMap(PersonHours::personId, hours -> hours));
        Map<String, List<CountedDay>> byPerson = counted.stream().collect(Collectors.groupingBy(CountedDay::personId));
        byPerson.forEach((person, days) -> {
            PersonHours nothing = new PersonHours(person, 0, Map.of(), Map.of(), 0, 0, 0, 0, 0);
            PersonHours hours = told.getOrDefault(person, nothing);
            assertEquals(CountedDay.hours(person, days), hours, () -> person + " in " + week.listing());
        });
        PersonHours all = CountedDay.hours("everybody", counted);
        assertEquals(all.attended(), tally.attended(), week::listing);
        assertEquals(all.onMachines(), tally.onMachines(), week::listing);
        assertEquals(all.rounding(), tally.rounding(), week::listing);
    }

    private static void assertVisits(RandomWeek week, List<CountedDay> counted, Tally tally) {
        Map<String, VisitHours> expected = new TreeMap<>();
        for (String id : List.of("V0", "V1", "V2")) {
            VisitHours hours = CountedDay.visit(id, counted);
            if (hours.worked() > 0) {
                expected.put(id, hours);
            }
        }
        Map<String, VisitHours> told =
                tally.visits().stream().collect(Collectors.toMap(VisitHours::visitId, hours -> hours));
        assertEquals(expected, told, () -> "visits of " + week.listing());
    }

    private static void assertAskedAbout(RandomWeek week, MinuteByMinute count, Tally tally) {
        Set<String> overlapped = new TreeSet<>();
        for (String person : count.people()) {
            week.dates().forEach(date -> overlapped.addAll(count.overlapped(person, date)));
        }
        assertEquals(count.forgotten(week.until()), ids(tally.unsettled()), () -> "unsettled of " + week.listing());
        assertEquals(overlapped, ids(tally.overlapped()), () -> "overlapped of " + week.listing());
    }

    private static Set<String> ids(List<ClockEntry> entries) {
        Set<String> ids = entries.stream().map(ClockEntry::id).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(entries.size(), ids.size(), () -> "an entry is told twice: " + entries);
        return ids;
    }

    @Test
    void attended_is_the_sum_of_its_parts_for_each_person_and_for_all_seeds_from_0() {
        everyWeek(WEEKS, week -> {
            Tally tally = week.tally();
            int all = 0;
            for (PersonHours hours : tally.people()) {
                int parts = hours.onMachines() + hours.otherMinutes() + hours.rests() + hours.unaccounted();
                assertEquals(hours.attended(), parts, () -> hours.personId() + " in " + week.listing());
                all += parts;
            }
            int onVisits = tally.visits().stream().mapToInt(VisitHours::worked).sum();
            assertEquals(tally.attended(), all, week::listing);
            assertEquals(tally.onMachines(), onVisits, week::listing);
        });
    }

    @Test
    void rounding_changes_nothing_but_what_it_gives_or_takes_seeds_from_0() {
        int[] rounded = {0};
        everyWeek(WEEKS, week -> {
            Tally tally = week.tally();
            Tally exact = week.roundedBy(Rounding.EXACT).tally();
            rounded[0] += tally.rounding() != 0 ? 1 : 0;
            assertEquals(
                    exact.days(),
                    tally.days().stream().map(TallyPropertyTest::unrounded).toList(),
                    week::listing);
            assertEquals(exact.visits(), tally.visits(), week::listing);
            assertEquals(exact.unsettled(), tally.unsettled(), week::listing);
            assertEquals(exact.overlapped(), tally.overlapped(), week::listing);
        });
        assertTrue(rounded[0] > WEEKS / 2, "only " + rounded[0] + " weeks were rounded");
    }

    private static PersonDay unrounded(PersonDay day) {
        return new PersonDay(day.personId(), day.date(), day.stretches(), 0);
    }

    @Test
    void a_day_is_the_same_by_itself_as_in_its_week_seeds_from_0() {
        everyWeek(WEEKS, week -> {
            Set<PersonDay> alone = new HashSet<>();
            for (LocalDate date : week.dates()) {
                alone.addAll(
                        week.book().tally(date, date.plusDays(1), week.now()).days());
            }
            assertEquals(alone, new HashSet<>(week.tally().days()), week::listing);
        });
    }

    @Test
    void the_random_weeks_meet_every_rule_seeds_from_0() {
        Map<String, Integer> met = new TreeMap<>();
        everyWeek(100, week -> {
            MinuteByMinute count = new MinuteByMinute(week.book(), week.now());
            for (String person : count.people()) {
                week.dates().forEach(date -> meet(met, count.day(person, date)));
            }
            met.merge("forgotten", count.forgotten(week.until()).size(), Integer::sum);
        });
        for (Use use : Use.values()) {
            assertTrue(met.getOrDefault(use.toString(), 0) > 20, () -> use + ": " + met);
        }
        for (String rule : List.of(
                "forgotten",
                "lent",
                "planned REST",
                "planned REST_TO_SAY",
                "planned FREE",
                "1380",
                "1410",
                "1470",
                "1500",
                "rounded up",
                "rounded down")) {
            assertTrue(met.getOrDefault(rule, 0) > 5, () -> rule + ": " + met);
        }
    }

    private static void meet(Map<String, Integer> met, CountedDay day) {
        Set<String> seen = new TreeSet<>(Set.of("" + day.minutes().size()));
        seen.add(day.rounding() > 0 ? "rounded up" : day.rounding() < 0 ? "rounded down" : "exact");
        day.minutes().stream().flatMap(Optional::stream).distinct().forEach(minute -> {
            seen.add(minute.use().toString());
            seen.add(minute.isLent() ? "lent" : minute.on().isEmpty() ? "planned " + minute.use() : "own");
        });
        seen.forEach(each -> met.merge(each, 1, Integer::sum));
    }
}
