package org.shedboard.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Region;
import org.shedboard.grid.Size;
import org.shedboard.grid.Style;

/** Who works on what, under the bars of one place; the mark of now is an upright line. */
class BarPeopleTest {
    private static final Size SIZE = new Size(24, 1);
    private static final Region NOWHERE = new Region(0, 0, 0, 1);

    private static BarPeople.Under bar(int from, int to, String... names) {
        return new BarPeople.Under(new Region(from, 0, to - from, 1), List.of(names));
    }

    private static String drawn(Region now, BarPeople.Under... bars) {
        Canvas canvas = Canvas.of(SIZE);
        canvas.fill(now, '|', Style.NOW);
        new BarPeople(canvas, SIZE.region(), now).draw(List.of(bars));
        return canvas.grid().lines().get(0).stripTrailing();
    }

    @Test
    void names_of_neighbours_have_a_blank_between_them() {
        assertEquals("Tobin Wren", drawn(NOWHERE, bar(0, 6, "Tobin"), bar(6, 12, "Wren")));
    }

    @Test
    void a_name_that_would_touch_the_next_bar_is_not_there() {
        assertEquals("     Wren", drawn(NOWHERE, bar(0, 5, "Tobin"), bar(5, 12, "Wren")));
    }

    @Test
    void where_two_have_no_room_the_first_stands_for_both() {
        assertEquals("Tobin+1 Wren", drawn(NOWHERE, bar(0, 8, "Tobin", "Marnie"), bar(8, 12, "Wren")));
    }

    @Test
    void the_free_columns_behind_a_narrow_bar_are_used() {
        assertEquals("Tobin Marnie", drawn(NOWHERE, bar(0, 2, "Tobin", "Marnie")));
    }

    @Test
    void now_is_not_written_over() {
        assertEquals("  | Tobin", drawn(new Region(2, 0, 1, 1), bar(0, 2), bar(4, 12, "Tobin")));
        assertEquals("  |Tobin", drawn(new Region(2, 0, 1, 1), bar(0, 12, "Tobin")));
        assertEquals("Tobin |", drawn(new Region(6, 0, 1, 1), bar(0, 12, "Tobin")));
    }

    @Test
    void bars_that_share_a_column_do_not_run_into_each_other() {
        assertEquals(" Wren", drawn(NOWHERE, bar(1, 2, "Tobin"), bar(1, 2, "Wren")));
    }

    @Test
    void a_bar_that_nobody_works_on_has_no_name() {
        assertEquals("      Wren", drawn(NOWHERE, bar(0, 6), bar(6, 12, "Wren")));
    }
}
