package org.shedboard.hours;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.shedboard.hours.Activity.Break;
import org.shedboard.hours.BreakRule.Verdict;
import org.shedboard.hours.Rounding.Direction;
import org.shedboard.hours.Rounding.Unit;
import org.shedboard.hours.Tally.PersonHours;
import org.shedboard.shop.Step;

/** Hours against published rules, worked examples and tables; the source stands beside each. */
class HoursStandardsTest {
    /** 29 CFR 785.18: rests from 5 to about 20 minutes are hours worked. */
    @ParameterizedTest
    @ValueSource(ints = {5, 10, 15, 20})
    void a_rest_of_up_to_twenty_minutes_is_time_worked(int minutes) {
        assertEquals(Verdict.WORKED, BreakRule.USUAL.of(Break.Kind.MEAL, minutes));
        PersonHours ada = meal(minutes);
        assertEquals(9 * 60, ada.attended());
    }

    /** 29 CFR 785.19(a): ordinarily 30 minutes or more is long enough for a meal period, which is not worktime. */
    @ParameterizedTest
    @ValueSource(ints = {30, 31, 45, 60})
    void a_meal_of_thirty_minutes_or_more_is_not(int minutes) {
        assertEquals(9 * 60 - minutes, meal(minutes).attended());
    }

    /** What lies between is decided by neither section: it is asked, and no time is dropped meanwhile (29 CFR 785.47). */
    @ParameterizedTest
    @ValueSource(ints = {21, 25, 29})
    void what_lies_between_is_asked_and_nothing_is_dropped(int minutes) {
        PersonHours ada = meal(minutes);
        assertEquals(minutes, ada.restsToSay());
        assertEquals(9 * 60, ada.attended());
    }

    private static PersonHours meal(int minutes) {
        String to = String.format(Locale.ROOT, "12:%02d", minutes % 60);
        return new Clocked()
                .here("07:00", "16:00")
                .pause(Break.Kind.MEAL, "12:00", minutes == 60 ? "13:00" : to)
                .ada();
    }

    /** United States Department of Labor, Wage and Hour Division, fact sheet on health care: 1 to 7 go down, 8 to 14 up. */
    @ParameterizedTest
    @CsvSource({"0,0", "1,0", "7,0", "8,15", "14,15", "15,15", "16,15", "22,15", "23,30"})
    void quarters_of_an_hour_go_down_to_seven_minutes_and_up_from_eight(int minutes, int rounded) {
        assertEquals(rounded, new Rounding(Unit.QUARTER, Direction.NEAREST).minutes(minutes));
    }

    /** The units are those of 29 CFR 785.48(b); that half a tenth goes up is fixed here, for the text leaves it open. */
    @ParameterizedTest
    @CsvSource({
        "TENTH,2,0",
        "TENTH,3,6",
        "TENTH,9,12",
        "TENTH,15,18",
        "FIVE,2,0",
        "FIVE,3,5",
        "FIVE,7,5",
        "FIVE,8,10",
        "EXACT,7,7"
    })
    void tenths_and_fives_go_to_the_nearest_and_half_of_them_up(Unit unit, int minutes, int rounded) {
        assertEquals(rounded, new Rounding(unit, Direction.NEAREST).minutes(minutes));
    }

    @ParameterizedTest
    @CsvSource({"QUARTER,0,0", "QUARTER,1,15", "QUARTER,15,15", "TENTH,7,12", "FIVE,6,10", "EXACT,7,7"})
    void up_is_to_the_next_whole_unit(Unit unit, int minutes, int rounded) {
        assertEquals(rounded, new Rounding(unit, Direction.UP).minutes(minutes));
    }

    /**
     * The same fact sheet, example 2: a schedule of 7:00 to 15:30 with half an hour of unpaid lunch, in ten minutes early and out seven
     * late on five days, is 6:45 to 15:30 each day and 41.25 hours in the week; unrounded 41.4167.
     */
    @Test
    void ten_minutes_early_and_seven_late_make_a_week_of_forty_one_and_a_quarter() {
        Clocked week = new Clocked().planned("12:00", "12:30").rounded(Unit.QUARTER, Direction.NEAREST);
        for (int day = 0; day < 5; day++) {
            week.here("%+d 06:50".formatted(day), "%+d 15:37".formatted(day));
        }
        PersonHours ada = week.seenAt("+6 00:00")
                .tally(Clocked.DATE, Clocked.DATE.plusDays(5))
                .people()
                .get(0);
        assertEquals(new BigDecimal("41.25"), DecimalHours.of(ada.paid()));
        assertEquals(new BigDecimal("41.42"), DecimalHours.of(ada.attended()));
        assertEquals(-10, ada.rounding());
    }

    /** The same fact sheet, example 3 (from memory): a clock that never rounds up takes twelve minutes a day, an hour a week. */
    @Test
    void what_rounding_takes_over_a_week_is_told_per_person() {
        Clocked week = new Clocked().rounded(Unit.QUARTER, Direction.NEAREST);
        for (int day = 0; day < 5; day++) {
            week.here("%+d 06:54".formatted(day), "%+d 15:36".formatted(day)); // to 7:00 and 15:30: twelve minutes
        }
        PersonHours ada = week.seenAt("+6 00:00")
                .tally(Clocked.DATE, Clocked.DATE.plusDays(5))
                .people()
                .get(0);
        assertEquals(-60, ada.rounding());
    }

    /**
     * Minutes as hundredths of an hour, as payroll tables have them (computed; identical tables are printed in several payroll
     * articles). No minute lies half-way.
     */
    @Test
    void minutes_are_hundredths_as_the_payroll_tables_have_them() {
        String table = "00 02 03 05 07 08 10 12 13 15 17 18 20 22 23 25 27 28 30 32 33 35 37 38 40 42 43 45 47 48 50 "
                + "52 53 55 57 58 60 62 63 65 67 68 70 72 73 75 77 78 80 82 83 85 87 88 90 92 93 95 97 98";
        String[] hundredths = table.split(" ");
        assertEquals(60, hundredths.length);
        for (int minute = 0; minute < 60; minute++) {
            assertEquals(new BigDecimal("0." + hundredths[minute]), DecimalHours.of(minute), minute + " min");
        }
        assertEquals(new BigDecimal("1.00"), DecimalHours.of(60));
        assertEquals(new BigDecimal("7.50"), DecimalHours.of(450));
    }

    /** Summed first and converted last: three times twenty minutes are 1.00 h, where three times .33 would be .99 (computed). */
    @ParameterizedTest
    @CsvSource({"3,20", "6,10", "12,5", "60,1"})
    void minutes_are_summed_before_they_are_converted(int times, int minutes) {
        Clocked day = new Clocked();
        for (int i = 0; i < times; i++) {
            int from = 6 * 60 + i * minutes;
            day.stay("V" + i, Step.TOPSIDE, clock(from), clock(from + minutes));
        }
        assertEquals(times, day.tally().visits().size());
        assertEquals(new BigDecimal("1.00"), DecimalHours.of(day.tally().onMachines()));
    }

    private static String clock(int minute) {
        return String.format(Locale.ROOT, "%02d:%02d", minute / 60, minute % 60);
    }

    /** Nights on which summer time begins or ends, and nights on which it does not (IANA time zone database, computed). */
    @ParameterizedTest
    @CsvSource({
        "Etc/GMT-10,2025-03-08,480",
        "America/New_York,2025-03-08,420",
        "America/New_York,2025-11-01,540",
        "Europe/London,2025-03-29,420",
        "Europe/London,2025-10-25,540",
        "Australia/Sydney,2025-04-05,540",
        "Australia/Sydney,2025-10-04,420",
        "Pacific/Auckland,2025-04-05,540",
        "Pacific/Auckland,2025-09-27,420",
        "Australia/Lord_Howe,2025-04-05,510",
        "Australia/Lord_Howe,2025-10-04,450",
        "Australia/Brisbane,2025-10-04,480",
        "America/Phoenix,2025-03-08,480"
    })
    void a_night_from_ten_to_six_is_as_long_as_it_was(String name, LocalDate date, int minutes) {
        ZoneId zone = ZoneId.of(name);
        Instant from = date.atTime(22, 0).atZone(zone).toInstant();
        Instant to = date.plusDays(1).atTime(6, 0).atZone(zone).toInstant();
        ClockEntry night = new ClockEntry("C1", "Ada", new Activity.AtWork(), from, Optional.of(to));
        TimeBook book = new TimeBook(zone, HoursRules.USUAL, Map.of("Ada", List.of()), List.of(night));
        Tally tally = book.tally(date, date.plusDays(2), to.plusSeconds(3600));
        assertEquals(minutes, tally.attended());
        assertEquals(120, tally.days().get(0).attended());
        assertEquals(minutes - 120, tally.days().get(1).attended());
    }

    /** The hour that comes twice: 1:30 in New York on 2 November 2025 is two moments (epoch seconds computed). */
    @Test
    void an_entry_in_the_hour_that_comes_twice_is_told_by_its_moments() {
        ZoneId zone = ZoneId.of("America/New_York");
        Instant first = Instant.ofEpochSecond(1762061400);
        Instant second = Instant.ofEpochSecond(1762065000);
        assertEquals(LocalDateTime.of(2025, 11, 2, 1, 30), LocalDateTime.ofInstant(first, zone));
        assertEquals(LocalDateTime.of(2025, 11, 2, 1, 30), LocalDateTime.ofInstant(second, zone));
        ClockEntry entry =
                new ClockEntry("C1", "Ada", new Activity.OnStay("V1", Step.WASH), first, Optional.of(second));
        TimeBook book = new TimeBook(zone, HoursRules.USUAL, Map.of("Ada", List.of()), List.of(entry));
        LocalDate date = LocalDate.of(2025, 11, 2);
        assertEquals(DayOfWeek.SUNDAY, date.getDayOfWeek());
        assertEquals(
                60, book.tally(date, date.plusDays(1), second.plusSeconds(60)).onMachines());
    }
}
