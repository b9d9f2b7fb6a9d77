package org.shedboard.look;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The measure of contrast, and the fixed colours of terminals. */
class ColourTest {
    private static final Colour WHITE = new Colour(255, 255, 255);
    private static final Colour BLACK = new Colour(0, 0, 0);

    /** Source: the formula of WCAG 2.2 (w3c.github.io/wcag, relative luminance), with ratios recomputed for it. */
    @ParameterizedTest(name = "{0} {1} {2} is {3} on white and {4} on black")
    @CsvSource({
        "118,118,118,4.5422,4.6233", "119,119,119,4.4781,4.6895", "148,148,148,3.0335,6.9228", "89,89,89,7.0047,2.9980",
        "255,0,0,3.9985,5.2520", "0,255,0,1.3722,15.3040", "0,0,255,8.5925,2.4440", "255,255,0,1.0738,19.5560",
        "0,0,0,21,1", "255,255,255,1,21"
    })
    void contrast_is_measured_as_published(int red, int green, int blue, double onWhite, double onBlack) {
        Colour colour = new Colour(red, green, blue);
        assertEquals(onWhite, colour.contrastTo(WHITE), 0.00006);
        assertEquals(onWhite, WHITE.contrastTo(colour), 0.00006);
        assertEquals(onBlack, colour.contrastTo(BLACK), 0.00006);
    }

    /** Source: the colour cube and the greys of xterm's 256 colours. */
    @ParameterizedTest(name = "colour {0} is {1} {2} {3}")
    @CsvSource({
        "16,0,0,0",
        "33,0,135,255",
        "160,215,0,0",
        "196,255,0,0",
        "202,255,95,0",
        "220,255,215,0",
        "231,255,255,255",
        "232,8,8,8",
        "244,128,128,128",
        "255,238,238,238"
    })
    void fixed_colours_are_numbered_as_terminals_number_them(int number, int red, int green, int blue) {
        assertEquals(new Colour(red, green, blue), Colour.fixed(number));
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 15, 256})
    void what_people_redefine_is_no_fixed_colour(int number) {
        assertThrows(IllegalArgumentException.class, () -> Colour.fixed(number));
    }

    @Test
    void a_fixed_colour_is_nearest_to_itself() {
        for (int number = 16; number <= 255; number++) {
            Colour fixed = Colour.fixed(number);
            assertEquals(fixed, Colour.fixed(fixed.nearestFixed()));
        }
    }

    /** Source: nearest of 16 to 255 for the palette of Okabe and Ito, recomputed. */
    @ParameterizedTest(name = "{0} {1} {2} is nearest to {3}")
    @CsvSource({"86,180,233,74", "0,158,115,35", "0,114,178,25", "213,94,0,166", "204,121,167,175", "230,159,0,178"})
    void the_nearest_fixed_colour_is_found(int red, int green, int blue, int number) {
        assertEquals(number, new Colour(red, green, blue).nearestFixed());
    }

    @ParameterizedTest
    @CsvSource({"-1,0,0", "0,256,0", "0,0,999"})
    void a_light_is_from_0_to_255(int red, int green, int blue) {
        assertThrows(IllegalArgumentException.class, () -> new Colour(red, green, blue));
    }

    @Test
    void a_style_sheet_has_it_in_hexadecimal() {
        assertEquals("#0a5c86", Colour.of(0x0A5C86).hex());
    }
}
