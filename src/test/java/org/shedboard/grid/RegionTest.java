package org.shedboard.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class RegionTest {
    private static final Region SCREEN = new Size(12, 5).region();

    @Test
    void margins_and_sides_lie_where_their_names_say() {
        drawn(
                """
            aaaaaaaaaaaa
            ............
            cc.dddddd.ee
            ..........ee
            bbbbbbbbbbee
            """,
                SCREEN.top(1),
                SCREEN.bottom(1),
                SCREEN.below(2).above(2).left(2),
                SCREEN.inside(3, 2),
                SCREEN.below(2).right(2));
    }

    @Test
    void rest_regions_are_what_the_sides_leave() {
        assertEquals(new Region(0, 2, 12, 3), SCREEN.below(2));
        assertEquals(new Region(0, 0, 12, 3), SCREEN.above(2));
        assertEquals(new Region(4, 0, 8, 5), SCREEN.rightOf(4));
        assertEquals(new Region(0, 0, 8, 5), SCREEN.leftOf(4));
    }

    @Test
    void split_rows_share_what_the_fixed_ones_leave() {
        drawn("""
            aaaaaaaaaaaa
            bbbbbbbbbbbb
            bbbbbbbbbbbb
            cccccccccccc
            dddddddddddd
            """, SCREEN.splitRows(1, 0, 0, 1));
    }

    @Test
    void split_columns_give_the_odd_one_to_the_first_that_shares() {
        drawn("""
            aaaaabbbbccc
            aaaaabbbbccc
            aaaaabbbbccc
            aaaaabbbbccc
            aaaaabbbbccc
            """, SCREEN.splitColumns(0, 0, 3));
    }

    @Test
    void the_last_parts_go_short_when_there_is_too_little() {
        assertEquals(
                List.of(SCREEN.top(3), SCREEN.below(3), SCREEN.bottom(0), SCREEN.bottom(0)),
                SCREEN.splitRows(3, 4, 2, 0));
    }

    @Test
    void a_centred_region_is_in_the_middle() {
        drawn("""
            ............
            ...aaaaaa...
            ...aaaaaa...
            ...aaaaaa...
            ............
            """, SCREEN.centred(6, 3));
        assertEquals(SCREEN, SCREEN.centred(99, 99));
    }

    @Test
    void asking_for_too_much_or_too_little_gives_all_or_nothing() {
        assertEquals(SCREEN, SCREEN.top(99));
        assertEquals(SCREEN, SCREEN.below(-3));
        assertTrue(SCREEN.top(-1).isEmpty());
        assertTrue(SCREEN.below(99).isEmpty());
        assertTrue(SCREEN.inside(9).isEmpty());
        assertTrue(SCREEN.row(5).isEmpty());
        assertTrue(SCREEN.row(-1).isEmpty());
        assertEquals(new Region(0, 4, 12, 1), SCREEN.row(4));
        assertEquals(0, new Region(3, 3, -4, -1).width());
    }

    @Test
    void every_part_of_a_region_lies_inside_it() {
        for (int n = -2; n < 15; n++) {
            Region odd = new Region(3, 2, 7, 4);
            for (Region part : List.of(
                    odd.inside(n),
                    odd.top(n),
                    odd.bottom(n),
                    odd.left(n),
                    odd.right(n),
                    odd.below(n),
                    odd.above(n),
                    odd.rightOf(n),
                    odd.leftOf(n),
                    odd.row(n),
                    odd.centred(n, n))) {
                assertEquals(part, part.intersect(odd), "part " + part + " for " + n);
            }
        }
    }

    @Test
    void the_edges_are_outside() {
        Region region = new Region(2, 1, 3, 2);
        assertTrue(region.contains(2, 1));
        assertTrue(region.contains(4, 2));
        assertFalse(region.contains(5, 2));
        assertFalse(region.contains(4, 3));
        assertFalse(region.contains(1, 1));
        assertTrue(region.intersect(new Region(5, 1, 3, 2)).isEmpty());
    }

    @Test
    void a_size_fits_only_what_is_no_larger_in_both_ways() {
        assertTrue(new Size(80, 24).fits(new Size(80, 24)));
        assertFalse(new Size(80, 24).fits(new Size(81, 2)));
        assertFalse(new Size(80, 24).fits(new Size(8, 25)));
    }

    private static void drawn(String expected, Region... regions) {
        drawn(expected, Arrays.asList(regions));
    }

    /** Draws each region with a letter of its own, the later ones on top. */
    private static void drawn(String expected, List<Region> regions) {
        Canvas canvas = Canvas.of(new Size(12, 5));
        canvas.fill(SCREEN, '.', Style.NORMAL);
        char letter = 'a';
        for (Region region : regions) canvas.fill(region, letter++, Style.NORMAL);
        assertEquals(expected, String.join("\n", canvas.grid().lines()) + "\n");
    }
}
