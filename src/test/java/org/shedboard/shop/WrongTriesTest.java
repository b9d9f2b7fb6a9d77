package org.shedboard.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How wrong tries slow down; the figures are invented. */
class WrongTriesTest {
    private static final Instant NOW = Instant.parse("2026-05-12T00:00:00Z");

    private static WrongTries wrong(int inARow) {
        return new WrongTries(inARow, Optional.empty());
    }

    private static WrongTries waiting(int seconds) {
        return new WrongTries(9, Optional.of(NOW.plusSeconds(seconds)));
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            1,          0
            2,          0
            3,          0
            4,          10
            5,          20
            6,          40
            7,          80
            8,          160
            9,          320
            10,         640
            11,         900
            12,         900
            100,        900
            2000000000, 900
            """)
    void from_the_fourth_wrong_try_in_a_row_each_costs_twice_the_wait_of_the_one_before(int tries, int seconds) {
        WrongTries before = wrong(tries - 1);
        assertEquals(new PinVerdict.Wrong(tries, Duration.ofSeconds(seconds)), before.verdict(false, NOW));
        Optional<Instant> until = seconds == 0 ? Optional.empty() : Optional.of(NOW.plusSeconds(seconds));
        assertEquals(new WrongTries(tries, until), before.after(false, NOW));
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            -100, 0
            -1,   0
            0,    0
            1,    1
            899,  899
            900,  900
            901,  0
            9000, 0
            """)
    void a_wait_is_over_at_its_end_and_holds_no_longer_than_the_longest_whatever_the_clock_did(int until, int left) {
        assertEquals(Duration.ofSeconds(left), waiting(until).waitLeft(NOW));
    }

    @Test
    void during_a_wait_no_pin_is_looked_at_and_nothing_is_counted() {
        WrongTries waiting = waiting(30);
        PinVerdict left = new PinVerdict.Waiting(Duration.ofSeconds(30));
        assertEquals(left, waiting.verdict(true, NOW));
        assertEquals(left, waiting.verdict(false, NOW));
        assertEquals(waiting, waiting.after(true, NOW));
        assertEquals(waiting, waiting.after(false, NOW));
    }

    @Test
    void after_the_wait_a_right_pin_begins_the_count_anew_and_a_wrong_one_goes_on_with_it() {
        WrongTries over = waiting(0);
        assertEquals(new PinVerdict.Right(), over.verdict(true, NOW));
        assertEquals(WrongTries.NONE, over.after(true, NOW));
        assertEquals(new WrongTries(10, Optional.of(NOW.plusSeconds(640))), over.after(false, NOW));
    }

    @Test
    void a_right_pin_forgets_the_tries_that_cost_nothing() {
        assertEquals(WrongTries.NONE, wrong(3).after(true, NOW));
    }

    @Test
    void fewer_tries_than_none_are_refused() {
        assertThrows(IllegalArgumentException.class, () -> wrong(-1));
    }
}
