package org.shedboard.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.shedboard.estimate.Point;
import org.shedboard.register.Measured;
import org.shedboard.report.WearWords;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Finding;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Step;

/** Brake pads that are good down to 1.5 mm and wear by the hour. */
class WearTest {
    private static final Point PADS = new Point(
            "pads",
            "Pads",
            "front",
            Step.UNDERSIDE,
            Depth.ONCE_OVER,
            2,
            List.of(0, 1, 2, 3),
            "",
            true,
            Optional.of(new Point.Measure("mm", 1.5, 12)),
            Optional.of("brakes"),
            Optional.empty());

    private final List<Measured> read = new ArrayList<>();

    @Test
    void values_on_a_line_say_the_wear_and_the_hours_at_which_the_limit_is_reached() {
        at(1000, 8.0).at(1200, 6.0).at(1400, 4.0);
        Wear wear = Wear.of(PADS, read);
        assertEquals(-1.0, wear.line().orElseThrow().perHundredHours(), 1e-9);
        // from 4.0 mm at 1400 h down to 1.5 mm at 1 mm a hundred hours
        assertEquals(1650, wear.limit().orElseThrow().at().likely(), 1e-6);
        assertEquals(1.5, wear.limit().orElseThrow().value());
        assertEquals(Optional.of("limit 1.5 mm; loses 1 mm a 100 h; reached about 1650 h"), WearWords.of(wear));
    }

    @Test
    void scattered_values_say_how_sure_that_is() {
        at(1000, 8.0).at(1200, 6.3).at(1400, 3.9).at(1500, 3.1);
        Wear.Limit limit = Wear.of(PADS, read).limit().orElseThrow();
        assertTrue(limit.at().early().orElseThrow() < limit.at().likely());
        assertTrue(limit.at().late().orElseThrow() > limit.at().likely());
    }

    @Test
    void the_wear_is_said_give_or_take_and_the_limit_from_when_to_when() {
        at(1000, 8.0).at(1200, 6.1).at(1400, 3.9).at(1500, 3.1);
        String said = WearWords.of(Wear.of(PADS, read)).orElseThrow();
        assertTrue(
                said.matches(
                        "limit 1\\.5 mm; loses \\S+ \\(give or take \\S+\\) mm a 100 h; reached about \\d+ h \\(\\d+-\\d+\\)"),
                said);
    }

    @Test
    void two_readings_say_no_more_than_they_can() {
        at(1000, 8.0).at(1200, 6.0);
        assertEquals(
                Optional.of("limit 1.5 mm; loses 1 mm a 100 h; reached about 1650 h, by two readings alone"),
                WearWords.of(Wear.of(PADS, read)));
    }

    @Test
    void one_reading_and_readings_at_the_same_hours_make_no_line() {
        at(1000, 8.0);
        assertEquals(Optional.empty(), Wear.of(PADS, read).line());
        at(1000, 7.9);
        assertEquals(Optional.empty(), Wear.of(PADS, read).line());
        assertEquals(Optional.empty(), WearWords.of(Wear.of(PADS, read)));
    }

    @Test
    void a_reading_without_hours_is_kept_but_makes_no_line() {
        at(1000, 8.0);
        read.add(measured(OptionalInt.empty(), 6.0, Mark.GOOD, Set.of()));
        Wear wear = Wear.of(PADS, read);
        assertEquals(2, wear.values().size());
        assertEquals(Optional.empty(), wear.line());
    }

    @Test
    void new_pads_begin_anew_with_the_reading_that_was_called_good() {
        at(1000, 4.0).at(1200, 2.0);
        read.add(measured(OptionalInt.of(1300), 10.0, Mark.GOOD, Set.of("brakes", "oil")));
        at(1500, 8.0);
        Wear wear = Wear.of(PADS, read);
        assertEquals(
                List.of(10.0, 8.0), wear.values().stream().map(Measured::value).toList());
        assertEquals(-1.0, wear.line().orElseThrow().perHundredHours(), 1e-9);
    }

    @Test
    void the_reading_for_which_they_were_renewed_is_the_last_of_the_old() {
        at(1000, 4.0);
        read.add(measured(OptionalInt.of(1300), 1.1, Mark.FIX, Set.of("brakes")));
        assertEquals(List.of(), Wear.of(PADS, read).values());
    }

    @Test
    void a_reading_outside_its_limits_is_said_first() {
        at(1000, 2.0).at(1200, 1.2);
        Wear wear = Wear.of(PADS, read);
        assertFalse(wear.isWithin());
        assertTrue(WearWords.of(wear).orElseThrow().startsWith("outside its limits; "));
    }

    @Test
    void what_grows_goes_towards_its_upper_limit() {
        at(1000, 8.0).at(1200, 9.0);
        assertEquals(12, Wear.of(PADS, read).limit().orElseThrow().value());
        assertEquals(1800, Wear.of(PADS, read).limit().orElseThrow().at().likely(), 1e-6);
    }

    private WearTest at(int hours, double value) {
        read.add(measured(OptionalInt.of(hours), value, Mark.GOOD, Set.of()));
        return this;
    }

    private Measured measured(OptionalInt hours, double value, Mark mark, Set<String> works) {
        Instant at = Instant.EPOCH.plusSeconds(86_400L * read.size());
        Finding finding = new Finding("pads", mark, OptionalDouble.of(value), "", "ada", at);
        return new Measured("m", "V" + read.size(), hours, finding, works);
    }
}
