package org.shedboard.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class CanvasTest {
    private final Canvas canvas = Canvas.of(new Size(12, 4));
    private final Region all = canvas.region();

    @Test
    void texts_follow_each_other_in_a_row() {
        Region rest = canvas.text(all, "Tag 14 ", Style.STRONG);
        rest = canvas.text(rest, "ok", Style.NORMAL);
        assertEquals(new Region(9, 0, 3, 1), rest);
        drawn("""
            Tag 14 ok



            """);
        assertEquals("SSSSSSS.....", canvas.grid().styleLines().get(0));
    }

    @Test
    void a_long_text_is_cut_at_the_end_of_its_region() {
        canvas.text(new Region(2, 1, 5, 2), 1, "Tussock Flat", Style.NORMAL);
        drawn("""


              Tuss…

            """);
    }

    @Test
    void texts_stand_right_or_in_the_middle() {
        canvas.textRight(all, "10:40", Style.NORMAL);
        canvas.textCentred(all.below(1), "due", Style.NORMAL);
        assertEquals(new Region(0, 2, 9, 1), canvas.textRight(all.below(2), "日x", Style.NORMAL));
        drawn("""
                   10:40
                due
                     日x

            """);
    }

    @Test
    void a_frame_has_its_title_in_the_edge_and_gives_its_inside() {
        Region inside = canvas.frame(all, "Hoist 1", Style.FRAME);
        assertEquals(new Region(1, 1, 10, 2), inside);
        drawn("""
            ┌─ Hoist… ─┐
            │          │
            │          │
            └──────────┘
            """);
    }

    @Test
    void borders_that_touch_are_joined() {
        canvas.frame(all, Style.FRAME);
        canvas.frame(new Region(4, 0, 5, 4), Style.FRAME);
        canvas.divider(all, 2, Style.FRAME);
        drawn("""
            ┌───┬───┬──┐
            │   │   │  │
            ├───┼───┼──┤
            └───┴───┴──┘
            """);
    }

    @Test
    void a_window_over_a_border_hides_it() {
        canvas.frame(all, Style.FRAME);
        Region window = new Region(3, 1, 6, 3);
        canvas.fill(window, Style.NORMAL);
        canvas.frame(window, Style.FRAME);
        drawn("""
            ┌──────────┐
            │  ┌────┐  │
            │  │    │  │
            └──└────┘──┘
            """);
    }

    @Test
    void a_paragraph_gives_the_rows_below_it() {
        assertEquals(new Region(0, 3, 12, 1), canvas.paragraph(all, "Drain the oil while warm", Style.NORMAL));
        drawn("""
            Drain the
            oil while
            warm

            """);
    }

    @Test
    void a_table_has_headings_and_keeps_its_sides() {
        List<Column> columns = List.of(Column.left("tag", 3), Column.left("what", 0), Column.right("min", 3));
        Region rest = canvas.columns(
                all, columns, List.of(List.of("14", "mower", "45"), List.of("7", "tractor", "120")), Style.NORMAL);
        assertEquals(new Region(0, 3, 12, 1), rest);
        drawn("""
            tag what min
            14  mow…  45
            7   tra… 120

            """);
    }

    @Test
    void only_the_clip_region_can_be_drawn_on() {
        Canvas inner = canvas.within(new Region(3, 1, 4, 2));
        inner.fill(all, '#', Style.STRONG);
        inner.within(all).text(all, 1, "abcdefghijkl", Style.NORMAL);
        inner.restyle(all, Style.LATE);
        drawn("""

               defg
               ####

            """);
        assertEquals("...LLLL.....", canvas.grid().styleLines().get(2));
        assertEquals("............", canvas.grid().styleLines().get(3));
    }

    @Test
    void a_wide_glyph_takes_two_cells_and_never_stands_there_by_half() {
        canvas.text(all, "日本", Style.NORMAL);
        assertTrue(canvas.grid().isTail(1, 0));
        canvas.text(new Region(1, 0, 2, 1), "ab", Style.NORMAL);
        canvas.within(new Region(0, 1, 3, 1)).text(all, 1, "日本", Style.NORMAL);
        canvas.text(all, 2, "日本", Style.NORMAL);
        canvas.text(new Region(1, 2, 2, 1), "語", Style.NORMAL);
        drawn("""
             ab
            日
             語

            """);
        assertFalse(canvas.grid().isTail(1, 0));
    }

    @Test
    void nobodys_text_gets_a_control_character_onto_the_screen() {
        List<String> hostile = List.of(
                "\u001B[2J\u001B]0;gone\u0007",
                "a\nb\tc\rd\u0000",
                "\u202Eevil\u2066\u200F",
                "\u009B31m",
                "x\u0301\u0302\u0303",
                "\uD83D\uDE9C\uD83D",
                "本".repeat(60),
                "\uFEFF\u2028\u2029\uFFFF\uE123",
                "\u1100\u1161\u11A8");
        for (String text : hostile) {
            canvas.text(all, text, Style.NORMAL);
            canvas.textRight(all.below(1), text, Style.NORMAL);
            canvas.paragraph(all.below(2), text, Style.NORMAL);
            isHarmless(canvas.grid());
            canvas.frame(all, text, Style.FRAME);
            canvas.big(all, text, Style.NORMAL);
            canvas.entry(all, List.of(Column.left("", 5), Column.right("", 0)), List.of(text, text), Style.NORMAL);
            isHarmless(canvas.grid());
            canvas.fill(all, text.charAt(0), Style.NORMAL);
            isHarmless(canvas.grid());
        }
    }

    @Test
    void nothing_fails_for_want_of_room_seed_7() {
        Random random = new Random(7);
        for (int i = 0; i < 3000; i++) {
            Canvas small = Canvas.of(new Size(random.nextInt(9), random.nextInt(9)));
            Region region = anyRegion(random);
            Canvas view = small.within(anyRegion(random));
            view.frame(region, "Hoist 日", Style.FRAME);
            view.divider(region, random.nextInt(9) - 2, Style.FRAME);
            view.text(region, random.nextInt(9) - 2, "語abc語", Style.NORMAL);
            view.textRight(region, "語abc語", Style.NORMAL);
            view.textCentred(region, "語", Style.NORMAL);
            view.paragraph(region, "日本 一 two three", Style.NORMAL);
            view.big(region, "1", Style.NORMAL);
            view.verticalLine(region, Style.FRAME);
            view.restyle(region, Style.LATE);
            view.columns(
                    region,
                    List.of(Column.left("a", 0), Column.right("b", 3)),
                    List.of(List.of("日本", "1")),
                    Style.NORMAL);
            isHarmless(small.grid());
        }
    }

    @Test
    void a_grid_does_not_change_with_the_canvas() {
        Grid before = canvas.grid();
        canvas.fill(all, '#', Style.LATE);
        assertEquals(Canvas.of(new Size(12, 4)).grid(), before);
        assertFalse(before.equals(canvas.grid()));
    }

    private static Region anyRegion(Random random) {
        return new Region(
                random.nextInt(14) - 4, random.nextInt(14) - 4, random.nextInt(12) - 1, random.nextInt(12) - 1);
    }

    private static void isHarmless(Grid grid) {
        for (int row = 0; row < grid.size().rows(); row++) {
            int columns = TextWidth.of(rowOf(grid, row));
            assertEquals(grid.size().columns(), columns, "columns of row " + row + " of\n" + grid);
            for (char glyph : rowOf(grid, row).toCharArray()) {
                assertTrue(TextWidth.of(glyph) > 0 && glyph >= ' ' && glyph != 0x7F, "U+%04X".formatted((int) glyph));
            }
        }
    }

    private static String rowOf(Grid grid, int row) {
        StringBuilder glyphs = new StringBuilder();
        for (int column = 0; column < grid.size().columns(); column++) {
            if (!grid.isTail(column, row)) glyphs.append(grid.glyph(column, row));
        }
        return glyphs.toString();
    }

    private void drawn(String expected) {
        assertEquals(expected, String.join("\n", canvas.grid().lines()) + "\n");
    }
}
