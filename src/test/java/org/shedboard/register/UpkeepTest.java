package org.shedboard.register;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.shedboard.register.Readings.at;
import static org.shedboard.register.Readings.serviced;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shedboard.register.NextDue.By;
import org.shedboard.register.NextDue.State;
import org.shedboard.shop.Machine;
import org.shedboard.shop.ServiceInterval;

/**
 * Whichever comes first: hours, kilometres or months. The rules are those of public manuals of the US Army, TM 5-3805-261-23-1 (whichever
 * interval comes first) and TM 9-2320-387-24-1, paragraph 2-9 (a tenth of tolerance on the distance, big services include the small).
 */
class UpkeepTest {
    private static final double EXACT = 1e-9;
    private static final Machine MACHINE =
            new Machine("M1", "O1", "quad", "", OptionalInt.empty(), "", 300, OptionalInt.empty());
    /** Every 100 hours or 6 months. */
    private static final ServicePlan ONE = plan(Map.of("minor", every(100, 0, 6)));

    /** Last at 412.3 hours on 15 March; 498.0 on 1 September: 512.3 hours or 15 September. */
    private static Readings manual() {
        return new Readings().hours("2025-03-15", 412.3).hours("2025-09-01", 498);
    }

    @Test
    void six_months_come_before_the_hours_when_it_runs_half_an_hour_a_day() {
        NextDue due = due(ONE, manual(), "2025-09-01", serviced("2025-03-15", "minor"));
        assertEquals(By.MONTHS, due.by());
        assertEquals(LocalDate.parse("2025-09-15"), due.dates().likely());
        assertEquals(14, due.daysLeft(LocalDate.parse("2025-09-01")));
    }

    @Test
    void the_hours_left_are_those_of_the_interval_less_those_run_since() {
        ServicePlan hours = plan(Map.of("minor", every(100, 0, 0)));
        NextDue due = due(hours, manual(), "2025-09-01", serviced("2025-03-15", "minor"));
        assertEquals(By.HOURS, due.by());
        assertEquals(512.3, due.dial().orElseThrow().due(), EXACT);
        assertEquals(14.3, due.dial().orElseThrow().left(), EXACT);
    }

    @Test
    void fourteen_hours_at_half_an_hour_a_day_come_in_twenty_eight_days_and_a_half() {
        Meter meter = manual().meter();
        assertEquals(28.6, meter.dayOf(512.3, 0.5) - Readings.day("2025-09-01"), 1e-6);
    }

    @Test
    void hours_come_before_the_months_when_it_runs_more() {
        Readings busy = new Readings().hours("2025-03-15", 400).hours("2025-04-04", 440);
        NextDue due = due(ONE, busy, "2025-04-04", serviced("2025-03-15", "minor"));
        assertEquals(By.HOURS, due.by());
        assertEquals(LocalDate.parse("2025-05-04"), due.dates().likely());
    }

    @Test
    void a_date_by_hours_has_a_range_and_one_by_months_has_none() {
        Readings busy = new Readings().hours("2025-03-15", 400).hours("2025-04-04", 440);
        NextDue.Dates byHours = due(
                        plan(Map.of("minor", every(100, 0, 0))), busy, "2025-04-04", serviced("2025-03-15", "minor"))
                .dates();
        assertTrue(
                byHours.early().isBefore(byHours.likely()) && byHours.late().isAfter(byHours.likely()),
                byHours.toString());
        assertTrue(due(ONE, manual(), "2025-09-01", serviced("2025-03-15", "minor"))
                .dates()
                .late()
                .isEqual(LocalDate.parse("2025-09-15")));
    }

    @Test
    void the_range_of_the_hours_ends_where_the_months_do() {
        Readings busy = new Readings().hours("2025-03-15", 400).hours("2025-04-04", 412);
        NextDue due = due(ONE, busy, "2025-04-04", serviced("2025-03-15", "minor"));
        assertEquals(By.HOURS, due.by());
        assertEquals(LocalDate.parse("2025-09-15"), due.dates().late());
    }

    @ParameterizedTest
    @CsvSource({
        "2024-01-31, 1, 2024-02-29",
        "2025-01-31, 1, 2025-02-28",
        "2024-02-29, 12, 2025-02-28",
        "2025-08-31, 6, 2026-02-28",
        "2023-08-31, 6, 2024-02-29"
    })
    void months_from_the_end_of_a_month_end_with_the_month(String last, int months, LocalDate expected) {
        ServicePlan plan = plan(Map.of("minor", every(0, 0, months)));
        assertEquals(
                expected,
                due(plan, new Readings(), last, serviced(last, "minor")).dates().likely());
    }

    /** Six months or 4828 kilometres, of which a tenth is tolerated: from 4345.2 to 5310.8, at a hundred a day. */
    @ParameterizedTest
    @CsvSource({"4200, AHEAD", "4400, DUE", "4828, DUE", "5300, DUE", "5400, OVERDUE"})
    void a_tenth_of_the_kilometres_is_tolerated_either_way(double run, State state) {
        Readings readings = new Readings();
        for (int day = 0; day <= run / 100; day++) {
            readings.kilometres(LocalDate.parse("2025-01-01").plusDays(day).toString(), 100.0 * day);
        }
        String today =
                LocalDate.parse("2025-01-01").plusDays((long) (run / 100)).toString();
        NextDue due = due(
                plan(Map.of("semiannual", every(0, 4828, 6))), readings, today, serviced("2025-01-01", "semiannual"));
        assertEquals(By.KILOMETRES, due.by());
        assertEquals(state, due.on(LocalDate.parse(today)));
    }

    @Test
    void nothing_is_tolerated_of_the_months() {
        ServicePlan months = plan(Map.of("minor", every(0, 0, 6)));
        NextDue due = due(months, manual(), "2025-09-01", serviced("2025-03-15", "minor"));
        assertEquals(State.AHEAD, due.on(LocalDate.parse("2025-09-14")));
        assertEquals(State.DUE, due.on(LocalDate.parse("2025-09-15")));
        assertEquals(State.OVERDUE, due.on(LocalDate.parse("2025-09-16")));
    }

    /** Under 1609 kilometres in six months it is done at the date. */
    @Test
    void a_machine_that_hardly_runs_is_due_at_its_date() {
        Readings little = new Readings().kilometres("2025-01-01", 0).kilometres("2025-06-30", 1600);
        NextDue due = due(
                plan(Map.of("semiannual", every(0, 4828, 6))),
                little,
                "2025-06-30",
                serviced("2025-01-01", "semiannual"));
        assertEquals(By.MONTHS, due.by());
        assertEquals(LocalDate.parse("2025-07-01"), due.dates().likely());
    }

    /** Semiannual, annual, biennial: 6, 12 and 24 months. */
    private static final ServicePlan NESTED = nested();

    private static ServicePlan nested() {
        Map<String, ServiceInterval> services = new LinkedHashMap<>();
        services.put("semiannual", every(0, 4828, 6));
        services.put("annual", every(0, 9656, 12, "semiannual"));
        services.put("biennial", every(0, 19310, 24, "annual"));
        return new ServicePlan(services);
    }

    @Test
    void a_big_service_counts_as_the_small_ones_within_it() {
        NextDue due = due(NESTED, new Readings(), "2025-02-01", serviced("2025-01-01", "biennial"));
        assertEquals(LocalDate.parse("2025-07-01"), due.dates().likely());
        assertEquals("semiannual", due.workId());
    }

    /** The small one is due after 100 hours; a tenth of the big one's hours are tolerated. */
    @ParameterizedTest
    @CsvSource({"111, big", "113, small", "200, small"})
    void the_biggest_service_that_may_be_done_by_then_is_done(int bigHours, String expected) {
        ServicePlan plan = plan(Map.of("small", every(100, 0, 0), "big", every(bigHours, 0, 0, "small")));
        Readings daily = new Readings().hours("2025-01-01", 0).hours("2025-03-02", 60);
        NextDue due = due(plan, daily, "2025-03-02", serviced("2025-01-01", "big"));
        assertEquals(LocalDate.parse("2025-04-11"), due.dates().likely());
        assertEquals(expected, due.workId());
    }

    /** Common practice, no source. */
    @Test
    void after_a_service_that_was_not_a_full_one_the_next_is() {
        NextDue due = due(
                NESTED,
                new Readings(),
                "2025-08-01",
                serviced("2025-01-01", "biennial"),
                serviced("2025-07-01", "semiannual"));
        assertEquals(LocalDate.parse("2026-01-01"), due.dates().likely());
        assertEquals("biennial", due.workId());
    }

    @Test
    void other_work_is_no_service() {
        NextDue due =
                due(ONE, new Readings(), "2025-08-01", serviced("2025-03-15", "minor"), serviced("2025-06-01", "tyre"));
        assertEquals(LocalDate.parse("2025-09-15"), due.dates().likely());
    }

    @Test
    void a_machine_never_serviced_here_is_due_for_nothing() {
        assertEquals(
                Optional.empty(),
                upkeep(ONE, manual(), serviced("2025-06-01", "tyre")).nextDue(MACHINE, at("2025-09-01")));
    }

    @Test
    void a_service_done_before_the_meter_was_replaced_counts_on() {
        Readings replaced = new Readings()
                .hours("2025-03-01", 900)
                .hours("2025-03-31", 930)
                .newMeter("2025-03-31", 0)
                .hours("2025-04-30", 30);
        NextDue due =
                due(plan(Map.of("minor", every(100, 0, 0))), replaced, "2025-04-30", serviced("2025-03-01", "minor"));
        assertEquals(70, due.dial().orElseThrow().due(), EXACT);
        assertEquals(LocalDate.parse("2025-06-09"), due.dates().likely());
    }

    @Test
    void a_machine_with_one_reading_runs_as_others_of_its_class_do() {
        Readings own = new Readings().hours("2025-03-15", 400);
        Reading first = own.last();
        List<Reading> readings = List.of(
                first,
                new Reading("R8", "M2", at("2025-03-01"), first.unit(), 10, first.told(), "P1"),
                new Reading("R9", "M2", at("2025-03-31"), first.unit(), 70, first.told(), "P1"));
        Machine other = new Machine("M2", "O1", "quad", "", OptionalInt.empty(), "", 300, OptionalInt.empty());
        Upkeep upkeep = Upkeep.of(
                Map.of("quad", plan(Map.of("minor", every(100, 0, 0)))),
                List.of(MACHINE, other),
                new Logbook(readings, List.of(serviced("2025-03-15", "minor")), List.of()),
                ZoneOffset.UTC);
        assertEquals(
                LocalDate.parse("2025-05-04"),
                upkeep.nextDue(MACHINE, at("2025-03-20")).orElseThrow().dates().likely());
    }

    private static NextDue due(ServicePlan plan, Readings readings, String today, Serviced... serviced) {
        return upkeep(plan, readings, serviced).nextDue(MACHINE, at(today)).orElseThrow();
    }

    private static Upkeep upkeep(ServicePlan plan, Readings readings, Serviced... serviced) {
        return Upkeep.of(
                Map.of("quad", plan),
                List.of(MACHINE),
                new Logbook(readings.all(), List.of(serviced), List.of()),
                ZoneOffset.UTC);
    }

    private static ServicePlan plan(Map<String, ServiceInterval> services) {
        return new ServicePlan(services);
    }

    /** Zero where it does not count. */
    private static ServiceInterval every(int hours, int kilometres, int months, String... includes) {
        return new ServiceInterval(some(hours), some(kilometres), some(months), List.of(includes));
    }

    private static OptionalInt some(int length) {
        return length == 0 ? OptionalInt.empty() : OptionalInt.of(length);
    }
}
