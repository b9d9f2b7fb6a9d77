package org.shedboard.register;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ErasureTest {
    private final Erasure erasure = Erasure.of(
            List.of("Quillgate, Far Flat"),
            List.of("0000 000 101"),
            List.of("Brindlecomb, Far Flat", "Underbank, Stone Yards"),
            "C1");

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "told Quillgate, Far Flat, at the counter | told C1, at the counter",
                "QUILLGATE rang twice | C1 rang twice",
                "rang 0000-000-101 again | rang C1 again",
                "rang 0000 000 1012 | rang 0000 000 1012",
                "Quillgates are others | Quillgates are others"
            })
    void names_and_numbers_go(String text, String erased) {
        assertEquals(erased, erasure.of(text));
    }

    @Test
    void what_a_neighbour_is_called_too_stays_and_so_does_a_common_word_of_the_property() {
        assertEquals("Brindlecomb, Far Flat", erasure.of("Brindlecomb, Far Flat"));
        assertEquals("Flat tyre at the rear", erasure.of("Flat tyre at the rear"));
    }

    @Test
    void a_property_that_nobody_else_has_goes_too() {
        Erasure alone = Erasure.of(List.of("Quillgate, Nettle Flat"), List.of(), List.of(), "C1");
        assertEquals("fetched from C1", alone.of("fetched from nettle flat"));
    }
}
