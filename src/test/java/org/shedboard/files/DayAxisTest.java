package org.shedboard.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;

/** Where a moment stands on the hours of a sheet. */
class DayAxisTest {
    private static final ZoneId ZONE = ZoneId.of("Pacific/Auckland");
    private static final DayAxis AXIS = new DayAxis(ZONE, 6 * 60, 18 * 60);
    private static final LocalDate USUAL = LocalDate.of(2026, 5, 12);
    /** The clocks go forward at two in the night (from memory; the library's own rules say so too). */
    private static final LocalDate SHORT = LocalDate.of(2026, 9, 27);

    private static Instant at(LocalDate date, String time) {
        return date.atTime(LocalTime.parse(time)).atZone(ZONE).toInstant();
    }

    private static double x(LocalDate date, String time) {
        return AXIS.x(date, at(date, time));
    }

    @Test
    void noon_stands_in_the_middle_between_six_and_six() {
        assertEquals((x(USUAL, "06:00") + x(USUAL, "18:00")) / 2, x(USUAL, "12:00"), 1e-9);
        assertTrue(x(USUAL, "06:00") > 0 && x(USUAL, "18:00") < DayAxis.WIDTH);
    }

    @Test
    void hours_of_work_stand_under_their_names_when_the_clocks_were_changed_in_the_night() {
        assertEquals(
                23,
                Duration.between(at(SHORT, "00:00"), at(SHORT.plusDays(1), "00:00"))
                        .toHours());
        assertEquals(x(USUAL, "07:15"), x(SHORT, "07:15"), 1e-9);
        assertEquals(x(USUAL, "16:30"), x(SHORT, "16:30"), 1e-9);
    }
}
