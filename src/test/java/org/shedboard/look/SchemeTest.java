package org.shedboard.look;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.shedboard.grid.Style;

/** Whether everything can be read in both schemes, by the measure of WCAG 2.2, and tells nobody red from green. */
class SchemeTest {
    /** For text, level AA. */
    private static final double READABLE = 4.5;

    /** Those that are told apart by more than a look; what a finding and a block look like is among them. */
    private static final Set<Style> MEANINGS =
            EnumSet.of(Style.GOOD, Style.LATE, Style.DANGER, Style.HELD, Style.HANDS_ON, Style.UNATTENDED);

    static Stream<Arguments> all() {
        return Arrays.stream(Scheme.values())
                .flatMap(scheme -> Arrays.stream(Style.values()).map(style -> Arguments.of(scheme, style)));
    }

    @ParameterizedTest
    @MethodSource("all")
    void every_style_can_be_read(Scheme scheme, Style style) {
        Look look = scheme.of(style);
        double ratio = look.ink().contrastTo(look.paper());
        assertTrue(ratio >= READABLE, () -> "the contrast is " + ratio);
    }

    @ParameterizedTest
    @MethodSource("all")
    void every_style_can_be_read_in_the_nearest_fixed_colours(Scheme scheme, Style style) {
        Look look = scheme.of(style);
        Colour ink = Colour.fixed(look.ink().nearestFixed());
        Colour paper = Colour.fixed(look.paper().nearestFixed());
        double ratio = ink.contrastTo(paper);
        assertTrue(ratio >= READABLE, () -> "the contrast is " + ratio);
    }

    @Test
    void one_scheme_is_dark_and_the_other_is_light() {
        Look dark = Scheme.DARK.of(Style.NORMAL);
        Look light = Scheme.LIGHT.of(Style.NORMAL);
        assertTrue(dark.paper().luminance() < 0.05 && dark.ink().luminance() > 0.5);
        assertTrue(light.paper().luminance() > 0.9 && light.ink().luminance() < 0.05);
    }

    @ParameterizedTest
    @EnumSource(Scheme.class)
    void what_means_something_else_looks_like_nothing_else(Scheme scheme) {
        List<Look> looks = MEANINGS.stream().map(scheme::of).distinct().toList();
        assertEquals(MEANINGS.size(), looks.size());
    }

    /** A lamp is red, or green, or amber with the other two beside it: what is good is never the green one, what is not never red. */
    @ParameterizedTest
    @EnumSource(Scheme.class)
    void nothing_looks_like_a_lamp(Scheme scheme) {
        for (Style style : MEANINGS) {
            for (Colour colour :
                    List.of(scheme.of(style).ink(), scheme.of(style).paper())) {
                assertTrue(!isRed(colour) && !isGreen(colour), () -> style + " has " + colour.hex());
            }
        }
    }

    /** Red with next to no green in it; orange and brown have a good deal. Our own measure. */
    private static boolean isRed(Colour colour) {
        return colour.red() > 2 * Math.max(1, colour.blue()) && colour.red() > 2.5 * Math.max(1, colour.green());
    }

    /** Green that has clearly more of it than of blue or red. Our own measure. */
    private static boolean isGreen(Colour colour) {
        return colour.green() > 1.3 * Math.max(1, colour.blue()) && colour.green() > 1.3 * Math.max(1, colour.red());
    }

    @Test
    void lamps_would_be_noticed() {
        assertTrue(isRed(new Colour(205, 0, 0)) && isRed(new Colour(255, 60, 60)));
        assertTrue(isGreen(new Colour(0, 205, 0)) && isGreen(new Colour(80, 200, 90)));
    }

    /**
     * Source of the two kinds of sight: the matrices of Viénot, Brettel and Mollon 1999 for lights that are linear, from memory. What is
     * good and what is late are told apart by more than a step of lightness by who has no red or no green light.
     */
    @ParameterizedTest
    @EnumSource(Scheme.class)
    void good_and_late_differ_for_who_does_not_see_red_or_green(Scheme scheme) {
        Colour good = scheme.of(Style.GOOD).ink();
        Colour late = scheme.of(Style.LATE).ink();
        for (Sight sight : Sight.values()) {
            double yellows = Math.abs(sight.yellow(good) - sight.yellow(late));
            double blues = Math.abs(good.blue() - late.blue());
            assertTrue(yellows + blues > 60, () -> scheme + " for " + sight + ": " + yellows + " and " + blues);
        }
        assertNotEquals(scheme.of(Style.GOOD).isBold(), scheme.of(Style.LATE).isBold());
    }

    /** Two kinds of sight in which red and green are one light, and how much of each goes into it. */
    private enum Sight {
        WITHOUT_RED(0.11238, 0.88762),
        WITHOUT_GREEN(0.29275, 0.70725);

        private final double red;
        private final double green;

        Sight(double red, double green) {
            this.red = red;
            this.green = green;
        }

        private double yellow(Colour colour) {
            return red * colour.red() + green * colour.green();
        }
    }
}
