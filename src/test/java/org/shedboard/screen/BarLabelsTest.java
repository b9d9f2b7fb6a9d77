package org.shedboard.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Region;
import org.shedboard.grid.Size;
import org.shedboard.grid.Style;

/** Labels of bars; a bar is drawn with hashes. */
class BarLabelsTest {
    private static final Size SIZE = new Size(20, 1);
    private static final Region NOWHERE = new Region(0, 0, 0, 1);

    private static BarLabels.Bar bar(int from, int to, String... wordings) {
        return new BarLabels.Bar(new Region(from, 0, to - from, 1), List.of(wordings), false, Style.STRONG, "");
    }

    private static BarLabels.Bar booking(int from, int to, String name) {
        return new BarLabels.Bar(new Region(from, 0, to - from, 1), List.of(name), true, Style.STRONG, "");
    }

    private static String drawn(Region now, BarLabels.Bar... bars) {
        Canvas canvas = Canvas.of(SIZE);
        for (BarLabels.Bar bar : bars) {
            canvas.fill(bar.columns(), '#', Style.HANDS_ON);
        }
        canvas.fill(now, '|', Style.NOW);
        new BarLabels(canvas, SIZE.region(), now).draw(List.of(bars));
        return canvas.grid().lines().get(0).stripTrailing();
    }

    private static Region nowAt(int column) {
        return new Region(column, 0, 1, 1);
    }

    @Test
    void the_fullest_wording_that_fits_stands_in_the_bar() {
        assertEquals("9 +25m##", drawn(NOWHERE, bar(0, 8, "9 +25m", "9!", "9")));
        assertEquals("9!###", drawn(NOWHERE, bar(0, 5, "9 +25m", "9!", "9")));
        assertEquals("9", drawn(NOWHERE, bar(0, 1, "9 +25m", "9!", "9")));
    }

    @Test
    void a_tag_for_which_the_bar_is_too_narrow_stands_behind_it() {
        assertEquals("#12", drawn(NOWHERE, bar(0, 1, "12")));
    }

    @Test
    void tags_of_bars_side_by_side_stand_behind_the_last_in_their_order() {
        assertEquals("##12,14    7###", drawn(NOWHERE, bar(0, 1, "12"), bar(1, 2, "14"), bar(11, 15, "7")));
    }

    @Test
    void what_is_said_besides_never_stands_behind_another_bar() {
        assertEquals("9!##7###", drawn(NOWHERE, bar(0, 4, "9!", "9").followedBy("+25m"), bar(4, 8, "7")));
    }

    @Test
    void a_machine_with_several_narrow_bars_side_by_side_is_named_once() {
        assertEquals("###12,7", drawn(NOWHERE, bar(0, 1, "12"), bar(1, 2, "12"), bar(2, 3, "7")));
    }

    @Test
    void a_number_is_never_cut_for_want_of_room() {
        assertEquals("##12 7###", drawn(NOWHERE, bar(0, 1, "12"), bar(1, 2, "14"), bar(5, 9, "7")));
    }

    @Test
    void two_bars_in_one_column_are_both_named() {
        assertEquals("#7,9", drawn(NOWHERE, bar(0, 1, "7"), bar(0, 1, "9")));
    }

    @Test
    void two_numbers_side_by_side_are_not_read_as_one() {
        assertEquals("##1##12", drawn(NOWHERE, bar(0, 2, "12"), bar(2, 5, "1")));
    }

    @Test
    void what_is_said_besides_stands_in_the_bar_or_else_behind_it() {
        assertEquals("9! +25m#", drawn(NOWHERE, bar(0, 8, "9!", "9").followedBy("+25m")));
        assertEquals("9!##+25m", drawn(NOWHERE, bar(0, 4, "9!", "9").followedBy("+25m")));
        assertEquals("9!##   7#", drawn(NOWHERE, bar(0, 4, "9!", "9").followedBy("+25m"), bar(7, 9, "7")));
    }

    @Test
    void a_label_stands_beside_now() {
        assertEquals("12|###", drawn(nowAt(2), bar(0, 6, "12")));
        assertEquals("#|12###", drawn(nowAt(1), bar(0, 7, "12")));
    }

    @Test
    void what_stands_behind_a_bar_does_not_hide_now() {
        assertEquals("# |12", drawn(nowAt(2), bar(0, 1, "12")));
    }

    @Test
    void a_name_is_cut_where_a_number_would_not_be() {
        assertEquals("Thistl…#", drawn(NOWHERE, booking(0, 8, "Thistlewane")));
    }
}
