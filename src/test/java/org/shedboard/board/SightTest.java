package org.shedboard.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Minutes are counted from midnight: 580 is 09:40. The plan of these tests ends after a week. */
class SightTest {
    private static final int DAY = 24 * 60;
    private static final int WEEK = 7 * DAY;
    private static final int NOW = 9 * 60 + 40;
    private static final Sight.Extent MORNING = new Sight.Extent(NOW, WEEK);

    private static Sight follows(Zoom zoom) {
        return new Sight(zoom, OptionalInt.empty());
    }

    private static Sight from(Zoom zoom, int minute) {
        return new Sight(zoom, OptionalInt.of(minute));
    }

    @ParameterizedTest
    @CsvSource({
        "TWO_HOURS, 0, -15",
        "TWO_HOURS, 14, -15",
        "TWO_HOURS, 15, 0",
        "TWO_HOURS, 580, 555",
        "FOUR_HOURS, 580, 540",
        "WORKDAY, 0, -30",
        "WORKDAY, 29, -30",
        "WORKDAY, 30, 0",
        "WORKDAY, 580, 540",
        "WORKDAY, 599, 540",
        "WORKDAY, 600, 570",
        "WORKDAY, 1439, 1380",
        "DAY, 580, 480",
        "TWO_DAYS, 580, 0",
        "FIVE_DAYS, 0, 0",
        "FIVE_DAYS, 1439, 0"
    })
    void what_follows_the_present_minute_begins_a_little_before_it_and_on_its_grid(Zoom zoom, int now, int begins) {
        assertEquals(begins, follows(zoom).from(new Sight.Extent(now, WEEK)));
    }

    @ParameterizedTest
    @EnumSource(Zoom.class)
    void the_present_minute_is_seen_by_what_follows_it_all_day_long(Zoom zoom) {
        for (int now = 0; now < DAY; now++) {
            Sight.Extent extent = new Sight.Extent(now, WEEK);
            assertTrue(follows(zoom).from(extent) <= now, zoom + " at " + now);
            assertTrue(follows(zoom).to(extent) > now, zoom + " at " + now);
        }
    }

    @ParameterizedTest
    @CsvSource({"-1, 0", "0, 0", "1, 1", "9600, 9600", "9601, 9600", "99999, 9600"})
    void what_is_shown_lies_between_midnight_and_the_end_of_the_plan(int wanted, int begins) {
        assertEquals(begins, from(Zoom.WORKDAY, wanted).from(MORNING));
    }

    @Test
    void a_plan_that_ends_sooner_than_the_screen_is_shown_from_where_it_is_followed() {
        Sight.Extent short_ = new Sight.Extent(NOW, NOW + 60);
        assertEquals(0, from(Zoom.FIVE_DAYS, DAY).from(short_));
        assertFalse(follows(Zoom.FIVE_DAYS).canMove(1, short_));
    }

    @ParameterizedTest
    @CsvSource({
        "TWO_HOURS, 1, 585",
        "TWO_HOURS, -1, 525",
        "WORKDAY, 1, 660",
        "WORKDAY, -1, 420",
        "WORKDAY, -9, 0",
        "DAY, 1, 840",
        "FIVE_DAYS, 1, 1440",
        "FIVE_DAYS, 2, 2880",
        "FIVE_DAYS, 3, 2880"
    })
    void a_stride_goes_earlier_or_later_as_far_as_there_is_anything(Zoom zoom, int strides, int begins) {
        assertEquals(begins, follows(zoom).moved(strides, MORNING).from(MORNING));
    }

    @Test
    void what_went_later_and_as_far_back_follows_again() {
        Sight there = follows(Zoom.WORKDAY).moved(1, MORNING);
        assertFalse(there.isFollowing());
        assertTrue(there.moved(-1, MORNING).isFollowing());
    }

    @Test
    void what_stands_still_does_not_go_along_with_the_present_minute() {
        Sight still = follows(Zoom.WORKDAY).moved(1, MORNING);
        assertEquals(660, still.from(new Sight.Extent(NOW + 300, WEEK)));
    }

    @Test
    void at_either_end_there_is_no_further_way() {
        assertFalse(from(Zoom.WORKDAY, 0).canMove(-1, MORNING));
        assertTrue(from(Zoom.WORKDAY, 0).canMove(1, MORNING));
        assertFalse(from(Zoom.WORKDAY, 9600).canMove(1, MORNING));
        assertTrue(from(Zoom.WORKDAY, 9600).canMove(-1, MORNING));
    }

    @Test
    void from_two_hours_to_five_days_there_are_five_steps_and_no_more() {
        Sight sight = follows(Zoom.TWO_HOURS);
        assertEquals(Optional.empty(), sight.closer(1, MORNING));
        for (int step = 0; step < 5; step++) {
            sight = sight.closer(-1, MORNING).orElseThrow();
        }
        assertEquals(Zoom.FIVE_DAYS, sight.zoom());
        assertEquals(Optional.empty(), sight.closer(-1, MORNING));
        assertTrue(sight.isFollowing());
    }

    @ParameterizedTest
    @CsvSource({
        // the middle of 11:00 to 19:00 is 15:00
        "WORKDAY, 660, 1, 780",
        "WORKDAY, 660, -1, 180",
        "FOUR_HOURS, 780, 1, 840",
        // the middle of Wednesday to Sunday is Friday noon
        "FIVE_DAYS, 1440, 1, 2880"
    })
    void nearer_and_further_the_middle_stays(Zoom zoom, int begin, int steps, int begins) {
        assertEquals(
                begins, from(zoom, begin).closer(steps, MORNING).orElseThrow().from(MORNING));
    }
}
