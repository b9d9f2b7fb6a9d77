package org.shedboard.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTest {
    @ParameterizedTest
    @CsvSource({
        "2, 2000, EACH, 2",
        "2.5 L, 2500, LITRES, 2.5 L",
        "150 g, 150000, GRAMS, 150 g",
        "20 mL, 20000, MILLILITRES, 20 mL",
        "0.001 L, 1, LITRES, 0.001 L",
        "10, 10000, EACH, 10"
    })
    void a_text_is_read_and_said_again(String text, long thousandths, Unit unit, String said) {
        Quantity quantity = Quantity.find(text).orElseThrow();
        assertEquals(new Quantity(new Amount(thousandths), unit), quantity);
        assertEquals(said, quantity.toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "some", "-1", "2,5 L", "2 pints", "0.0001 L", "L", "1 2"})
    void what_is_no_amount_of_a_known_unit_is_none(String text) {
        assertEquals(Optional.empty(), Quantity.find(text));
    }

    @Test
    void more_taken_than_was_counted_is_less_than_nothing() {
        assertEquals("-1.5", Amount.of(1).minus(new Amount(2500)).toString());
    }
}
