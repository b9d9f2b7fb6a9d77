package org.shedboard.register;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shedboard.register.Rung.Said;

class RungTest {
    /** Rung on 10 March, serviced last on 1 January. */
    @ParameterizedTest
    @CsvSource({
        "BOOKED, 2026-04-06, true", "BOOKED, 2026-04-07, false",
        "AGAIN, 2026-03-19, true", "AGAIN, 2026-03-20, false",
        "NOT_COMING, 2026-12-31, true"
    })
    void what_was_said_settles_it_for_a_while(Said said, String today, boolean settled) {
        assertEquals(settled, rung(said).settles(Readings.at("2026-01-01"), Readings.at(today), ZoneOffset.UTC));
    }

    @Test
    void what_was_said_before_the_last_service_is_over() {
        assertEquals(
                false,
                rung(Said.NOT_COMING).settles(Readings.at("2026-03-11"), Readings.at("2026-03-12"), ZoneOffset.UTC));
    }

    @Test
    void ringing_again_needs_a_date() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new Rung("G1", "M1", Readings.at("2026-03-10"), "P1", Said.AGAIN, Optional.empty(), ""));
    }

    private static Rung rung(Said said) {
        Optional<LocalDate> again = said == Said.AGAIN ? Optional.of(LocalDate.parse("2026-03-20")) : Optional.empty();
        return new Rung("G1", "M1", Readings.at("2026-03-10"), "P1", said, again, "");
    }
}
