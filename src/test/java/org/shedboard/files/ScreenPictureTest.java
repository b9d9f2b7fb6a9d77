package org.shedboard.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Grid;
import org.shedboard.grid.Region;
import org.shedboard.grid.Size;
import org.shedboard.grid.Style;
import org.shedboard.look.Scheme;
import org.shedboard.testing.Svg;
import org.w3c.dom.Element;

/** Screens as pictures, read back with a parser of XML. */
class ScreenPictureTest {
    private static final Size SIZE = new Size(40, 4);

    private static Svg picture(Grid grid, Scheme scheme) {
        return Svg.of(new ScreenPicture(grid, scheme, "The board", "As it is at ten.").text());
    }

    private static Grid saying(String text, Style style) {
        Canvas canvas = Canvas.of(SIZE);
        canvas.text(new Region(2, 1, 38, 1), text, style);
        return canvas.grid();
    }

    @Test
    void it_has_a_title_and_words_for_who_cannot_see_it() {
        Svg svg = picture(saying("hello", Style.NORMAL), Scheme.DARK);
        assertEquals("The board", svg.only("title").getTextContent());
        assertEquals("As it is at ten.", svg.only("desc").getTextContent());
        assertEquals("title words", svg.root().getAttribute("aria-labelledby"));
        assertEquals("title", svg.only("title").getAttribute("id"));
        assertEquals("words", svg.only("desc").getAttribute("id"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "</text><script>alert(1)</script>",
                "\" onload=\"alert(1)",
                "&amp; &#27; ]]> <!-- -->",
                "乾燥した丘の牧場 est. 1970",
                "12 אבגדה, ערבה 14:00",
                "Evil\u001b[2J\u0007\u009b31m \u202eback\u0000",
                "a   b  c   ",
                "┌──┐│█▓▒░▌✓✗◆…·"
            })
    void every_glyph_stands_in_its_cell_whatever_is_written(String text) {
        Grid grid = saying(text, Style.LATE);
        Svg svg = picture(grid, Scheme.DARK);
        assertEquals(grid.lines(), svg.lines(SIZE));
        assertTrue(svg.all("script").isEmpty());
        assertTrue(svg.all("text").stream().noneMatch(each -> each.hasAttribute("onload")));
    }

    @Test
    void there_is_one_text_for_each_run_of_a_style() {
        Canvas canvas = Canvas.of(SIZE);
        canvas.text(new Region(0, 0, 5, 1), "three", Style.NORMAL);
        canvas.text(new Region(5, 0, 7, 1), " is all", Style.LATE);
        canvas.text(new Region(12, 0, 5, 1), " late", Style.NORMAL);
        List<String> texts = new ArrayList<>();
        for (Element text : picture(canvas.grid(), Scheme.DARK).all("text")) {
            texts.add(text.getAttribute("class") + ":" + text.getTextContent());
        }
        assertEquals(List.of("normal:three", "late:is all", "normal:late"), texts);
    }

    @Test
    void a_wide_glyph_and_a_name_from_right_to_left_push_nothing_from_its_cell() {
        Svg svg = picture(saying("牧 אב 14:00", Style.NORMAL), Scheme.DARK);
        assertEquals(
                List.of("牧", "אב", "14:00"),
                svg.all("text").stream().map(Element::getTextContent).toList());
        List<Double> widths = svg.all("text").stream()
                .map(text -> Double.parseDouble(text.getAttribute("textLength")))
                .toList();
        assertEquals(
                List.of(2.0, 2.0, 5.0),
                widths.stream().map(each -> each / Svg.CELL_WIDTH).toList());
    }

    @ParameterizedTest
    @CsvSource({"80,24", "120,36", "1,1", "200,60"})
    void it_is_as_large_as_its_cells_and_a_margin(int columns, int rows) {
        Svg svg = picture(Canvas.of(new Size(columns, rows)).grid(), Scheme.DARK);
        double width = Double.parseDouble(svg.root().getAttribute("width"));
        double height = Double.parseDouble(svg.root().getAttribute("height"));
        assertEquals(columns * Svg.CELL_WIDTH + 2 * Svg.MARGIN, width, 0.01);
        assertEquals(rows * Svg.CELL_HEIGHT + 2 * Svg.MARGIN, height, 0.01);
        String[] box = svg.root().getAttribute("viewBox").split(" ");
        assertEquals(width, Double.parseDouble(box[2]), 0.01);
        assertEquals(height, Double.parseDouble(box[3]), 0.01);
    }

    @ParameterizedTest
    @EnumSource(Scheme.class)
    void styles_have_the_colours_of_the_scheme(Scheme scheme) {
        Svg svg = picture(saying("not to be ridden", Style.DANGER), scheme);
        String sheet = svg.only("style").getTextContent();
        String ink = scheme.of(Style.DANGER).ink().hex();
        String paper = scheme.of(Style.DANGER).paper().hex();
        assertTrue(sheet.contains("text.danger{fill:" + ink + ";font-weight:bold}"), sheet);
        assertTrue(sheet.contains("rect.danger{fill:" + paper + "}"), sheet);
        assertFalse(sheet.contains("late"), "a style that is not there needs no rule");
    }

    @Test
    void another_paper_lies_under_blanks_too() {
        Canvas canvas = Canvas.of(SIZE);
        canvas.fill(new Region(3, 2, 10, 1), Style.TITLE);
        List<Element> rectangles = picture(canvas.grid(), Scheme.LIGHT).all("rect");
        assertEquals(2, rectangles.size());
        Element title = rectangles.get(1);
        assertEquals("title", title.getAttribute("class"));
        assertEquals(10 * Svg.CELL_WIDTH, Double.parseDouble(title.getAttribute("width")), 0.01);
        assertEquals(Svg.MARGIN + 3 * Svg.CELL_WIDTH, Double.parseDouble(title.getAttribute("x")), 0.01);
    }
}
