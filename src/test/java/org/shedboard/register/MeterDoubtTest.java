package org.shedboard.register;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MeterDoubtTest {
    /** It shows 130 hours on 31 January, at an hour a day. */
    private static Readings readings() {
        return new Readings().hours("2026-01-01", 100).hours("2026-01-16", 115).hours("2026-01-31", 130);
    }

    @ParameterizedTest
    @CsvSource({
        "2026-02-10, 140, ",
        "2026-02-10, 130, ",
        "2026-02-10, 129, BACKWARDS",
        "2026-02-01, 154, ",
        "2026-02-01, 155, ",
        "2026-02-01, 156, IMPOSSIBLE",
        "2026-02-10, 172, LEAP",
        "2026-02-10, 371, LEAP",
        "2026-02-10, 372, IMPOSSIBLE"
    })
    void a_reading_is_doubted_where_it_falls_or_leaps(String date, double value, MeterDoubt doubt) {
        assertEquals(Optional.ofNullable(doubt), doubtOf(readings().hours(date, value)));
    }

    @Test
    void the_first_reading_of_a_machine_is_believed() {
        assertEquals(Optional.empty(), doubtOf(new Readings().hours("2026-01-01", 4711)));
    }

    @Test
    void kilometres_on_a_machine_that_has_an_hour_meter_are_asked_about() {
        assertEquals(Optional.of(MeterDoubt.OTHER_UNIT), doubtOf(readings().kilometres("2026-02-10", 14_000)));
    }

    @Test
    void kilometres_on_a_machine_that_has_both_meters_are_compared_with_kilometres() {
        Readings both = readings().kilometres("2026-01-31", 14_000);
        assertEquals(Optional.empty(), doubtOf(both.kilometres("2026-02-10", 14_050)));
        assertEquals(Optional.of(MeterDoubt.BACKWARDS), doubtOf(both.kilometres("2026-02-20", 13_000)));
    }

    @Test
    void after_one_reading_a_leap_is_measured_by_what_machines_like_it_run() {
        Readings one = new Readings().hours("2026-01-01", 100).hours("2026-01-31", 300);
        assertEquals(Optional.empty(), doubtOf(one));
        assertEquals(
                Optional.of(MeterDoubt.LEAP),
                MeterDoubt.of(one.all().subList(0, 1), one.last(), Optional.of(new UsePerDay(1, 0.5, 2))));
    }

    @Test
    void after_a_new_meter_its_readings_are_compared_with_its_own() {
        assertEquals(
                Optional.empty(), doubtOf(readings().newMeter("2026-02-10", 2).hours("2026-02-20", 12)));
    }

    private static Optional<MeterDoubt> doubtOf(Readings readings) {
        List<Reading> all = readings.all();
        return MeterDoubt.of(all.subList(0, all.size() - 1), readings.last(), Optional.empty());
    }
}
