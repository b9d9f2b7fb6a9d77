package org.shedboard.register;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class MeterTest {
    private static final double EXACT = 1e-9;

    @Test
    void two_readings_make_a_use_per_day() {
        UsePerDay use = new Readings()
                .hours("2026-01-01", 100)
                .hours("2026-01-21", 140)
                .meter()
                .use()
                .orElseThrow();
        assertEquals(2, use.likely(), EXACT);
        assertTrue(use.low() < 2 && use.high() > 2, "two readings are not sure of it");
    }

    @Test
    void one_reading_says_nothing_of_use() {
        assertEquals(
                Optional.empty(),
                new Readings().hours("2026-01-01", 100).meter().use());
    }

    @Test
    void one_misread_value_among_six_does_not_move_the_use() {
        Meter meter = new Readings()
                .hours("2026-01-01", 100)
                .hours("2026-01-11", 110)
                .hours("2026-01-21", 210)
                .right("2026-01-31", 130)
                .hours("2026-02-10", 140)
                .hours("2026-02-20", 150)
                .meter();
        assertEquals(1, meter.use().orElseThrow().likely(), EXACT);
    }

    @Test
    void a_reading_confirmed_below_an_earlier_one_shows_that_one_to_be_wrong() {
        Meter meter = new Readings()
                .hours("2026-01-01", 100)
                .hours("2026-01-11", 1100)
                .right("2026-01-21", 120)
                .meter();
        assertEquals(
                List.of(100.0, 120.0),
                meter.standing().stream().map(Reading::value).toList());
    }

    @Test
    void a_new_meter_goes_on_from_what_the_old_one_had_run() {
        Meter meter = new Readings()
                .hours("2026-01-01", 1000)
                .hours("2026-01-11", 1010)
                .newMeter("2026-01-21", 3)
                .hours("2026-01-31", 13)
                .meter();
        assertEquals(1, meter.use().orElseThrow().likely(), EXACT);
        assertEquals(1020, meter.runBy(Readings.day("2026-01-21"), 1), EXACT);
        assertEquals(1030, meter.runBy(Readings.day("2026-01-31"), 1), EXACT);
        assertEquals(23, meter.dialAt(1040), EXACT);
    }

    @Test
    void a_fall_that_nobody_spoke_of_is_taken_for_a_new_meter() {
        Meter meter = new Readings()
                .hours("2026-01-01", 1000)
                .hours("2026-01-11", 1010)
                .hours("2026-01-21", 5)
                .hours("2026-01-31", 15)
                .meter();
        assertEquals(1, meter.use().orElseThrow().likely(), EXACT);
        assertEquals(15, meter.last().value());
    }

    @Test
    void between_two_readings_it_ran_evenly_and_outside_them_as_usual() {
        Meter meter =
                new Readings().hours("2026-01-11", 100).hours("2026-01-21", 130).meter();
        assertEquals(115, meter.runBy(Readings.day("2026-01-16"), 3), EXACT);
        assertEquals(70, meter.runBy(Readings.day("2026-01-01"), 3), EXACT);
        assertEquals(160, meter.runBy(Readings.day("2026-01-31"), 3), EXACT);
    }

    @Test
    void the_day_of_what_it_had_run_is_found_before_and_after_the_last_reading() {
        Meter meter =
                new Readings().hours("2026-01-11", 100).hours("2026-01-21", 130).meter();
        assertEquals(Readings.day("2026-01-16"), meter.dayOf(115, 3), EXACT);
        assertEquals(Readings.day("2026-01-31"), meter.dayOf(160, 3), EXACT);
        assertEquals(Double.POSITIVE_INFINITY, meter.dayOf(131, 0));
    }

    @Test
    void more_readings_in_line_make_it_surer() {
        Readings readings = new Readings().hours("2026-01-01", 100).hours("2026-02-01", 131);
        UsePerDay few = readings.meter().use().orElseThrow();
        UsePerDay more = readings.hours("2026-03-01", 159)
                .hours("2026-04-01", 190)
                .hours("2026-05-01", 220)
                .meter()
                .use()
                .orElseThrow();
        assertEquals(1, more.likely(), EXACT);
        assertTrue(more.high() - more.low() < few.high() - few.low(), more + " after " + few);
    }

    @Test
    void a_machine_that_stands_still_uses_nothing() {
        UsePerDay use = new Readings()
                .hours("2026-01-01", 100)
                .hours("2026-03-01", 100)
                .meter()
                .use()
                .orElseThrow();
        assertEquals(new UsePerDay(0, 0, 0), use);
    }

    @Test
    void machines_of_a_kind_use_what_the_middle_one_of_them_does() {
        UsePerDay usual = UsePerDay.usual(List.of(use(1), use(4), use(2))).orElseThrow();
        assertEquals(2, usual.likely(), EXACT);
        assertEquals(1, usual.low(), EXACT);
        assertEquals(4, usual.high(), EXACT);
        assertEquals(Optional.empty(), UsePerDay.usual(List.of()));
    }

    private static UsePerDay use(double perDay) {
        return new UsePerDay(perDay, perDay, perDay);
    }

    @Test
    void the_first_reading_of_each_meter_but_the_first_is_of_a_new_one() {
        Meter meter = new Readings()
                .hours("2026-01-01", 2000)
                .newMeter("2026-01-11", 3)
                .hours("2026-01-21", 10)
                .hours("2026-01-31", 1)
                .meter();
        assertEquals(
                List.of("1 h new", "10 h", "3 h new", "2000 h"),
                meter.newestFirst().stream()
                        .map(reading -> reading.shown() + (meter.isOfNewMeter(reading) ? " new" : ""))
                        .toList());
    }
}
