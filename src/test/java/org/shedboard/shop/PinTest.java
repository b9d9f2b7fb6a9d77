package org.shedboard.shop;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PinTest {
    @ParameterizedTest
    @CsvSource(textBlock = """
            '',              false
            123,             false
            0000,            true
            1234,            true
            123456789012,    true
            1234567890123,   false
            12a4,            false
            ' 1234',         false
            12-34,           false
            '1234\u0000',    false
            \u0661\u0662\u0663\u0664, false
            """)
    void a_pin_is_four_to_twelve_plain_digits(String typed, boolean isPin) {
        assertEquals(isPin, Pin.of(typed.toCharArray()).isPresent());
    }

    @Test
    void what_is_no_pin_is_wiped_at_once() {
        char[] typed = "246x".toCharArray();
        assertTrue(Pin.of(typed).isEmpty());
        assertArrayEquals(new char[4], typed);
    }

    @Test
    void a_used_pin_is_wiped_and_cannot_be_used_again() {
        char[] typed = "2468".toCharArray();
        Pin pin = Pin.of(typed).orElseThrow();
        assertArrayEquals(new char[] {'2', '4', '6', '8'}, pin.digits());
        pin.close();
        assertArrayEquals(new char[4], typed);
        assertThrows(IllegalStateException.class, pin::digits);
    }

    @Test
    void neither_a_pin_nor_what_is_kept_of_it_shows_itself() {
        Pin pin = Pin.of("2468".toCharArray()).orElseThrow();
        assertFalse(pin.toString().contains("2468"));
        KeptPin kept = new KeptPin("P1", new PinHash("5a17", "4a54", 7), WrongTries.NONE);
        assertFalse(kept.toString().matches(".*(5a17|4a54).*"), kept.toString());
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            '',   4a54, 7
            5a17, '',   7
            5a1,  4a54, 7
            5a17, zz54, 7
            5a17, 4a54, 0
            """)
    void a_hash_that_is_none_is_refused_without_being_shown(String salt, String hash, int iterations) {
        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> new PinHash(salt, hash, iterations));
        assertFalse(refused.getMessage().matches(".*(5a1|54).*"), refused.getMessage());
    }
}
