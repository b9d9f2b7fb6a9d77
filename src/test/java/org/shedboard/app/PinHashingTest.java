package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shedboard.shop.KeptPin;
import org.shedboard.shop.Pin;
import org.shedboard.shop.PinHash;
import org.shedboard.shop.WrongTries;

class PinHashingTest {
    private final PinHashing hashing = new PinHashing(7);

    private static Pin pin(String digits) {
        return Pin.of(digits.toCharArray()).orElseThrow();
    }

    /** RFC 7914, section 11; seen to be what two other implementations make as well. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            passwd,   salt, 1,     55ac046e56e3089fec1691c22544b605f94185216dde0465e68b9d57c20dacbc49ca9cccf179b645991664b39d77ef317c71b845b1e30bd509112041d3a19783
            Password, NaCl, 80000, 4ddcd8f60b98be21830cee5ef22701f9641a4418d04c0414aeff08876b34ab56a1d425a1225833549adb841b51c9b3176a272bdebba1d078478f62b397f33c8d
            """)
    void the_function_gives_the_published_values(String secret, String salt, int iterations, String expected) {
        byte[] derived = PinHashing.derive(
                secret.toCharArray(), salt.getBytes(StandardCharsets.US_ASCII), iterations, expected.length() / 2);
        assertEquals(expected, HexFormat.of().formatHex(derived));
    }

    @Test
    void the_same_pin_is_never_hashed_to_the_same_and_is_known_again_by_each_hash() {
        PinHash first = hashing.hash(pin("2468"));
        PinHash second = hashing.hash(pin("2468"));
        assertNotEquals(first.salt(), second.salt());
        assertNotEquals(first.hash(), second.hash());
        for (PinHash each : List.of(first, second)) {
            assertTrue(hashing.matches(pin("2468"), each));
            assertFalse(hashing.matches(pin("2469"), each));
            assertFalse(hashing.matches(pin("24680"), each));
        }
    }

    @Test
    void sixteen_bytes_of_salt_and_thirty_two_of_hash_are_kept() {
        PinHash hash = hashing.hash(pin("2468"));
        assertEquals(32, hash.salt().length());
        assertEquals(64, hash.hash().length());
        assertEquals(7, hash.iterations());
    }

    @Test
    void a_hash_is_known_again_when_newer_ones_take_more_iterations() {
        PinHash old = hashing.hash(pin("2468"));
        assertTrue(new PinHashing(8).matches(pin("2468"), old));
        PinHash wronglyTold = new PinHash(old.salt(), old.hash(), 8);
        assertFalse(hashing.matches(pin("2468"), wronglyTold));
    }

    /** The Password Storage Cheat Sheet of OWASP, from memory. */
    @Test
    void the_usual_hash_takes_six_hundred_thousand_iterations() {
        assertEquals(600_000, PinHashing.usual().hash(pin("2468")).iterations());
    }

    @Test
    void the_pins_of_a_new_shop_are_hashed_and_wiped() {
        Pin pin = pin("2468");
        List<KeptPin> kept = hashing.keep(Map.of("P1", pin));
        assertEquals(List.of("P1"), kept.stream().map(KeptPin::personId).toList());
        assertEquals(WrongTries.NONE, kept.get(0).tries());
        assertTrue(hashing.matches(pin("2468"), kept.get(0).hash()));
        assertThrows(IllegalStateException.class, pin::digits);
    }
}
