package org.shedboard.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Pages as text: what was typed stays text. That a browser reads it so is tested with whole sheets. */
class ElementTest {
    private static String written(Element element) {
        return element.page().replaceFirst("<!doctype html>\n", "").strip();
    }

    @Test
    void elements_stand_in_one_another_in_order() {
        Element list = Element.of("ul").add(Element.of("li", "one")).add(Element.of("li", "two"));
        assertEquals("<ul><li>one</li><li>two</li></ul>", written(list));
    }

    @Test
    void what_has_no_inside_has_no_end() {
        assertEquals(
                "<head><meta charset=\"utf-8\"></head>",
                written(Element.of("head").add(Element.of("meta").with("charset", "utf-8"))));
    }

    /** The HTML standard, 13.1.2.3 and 13.1.3, from memory: what may not stand in a text or in a quoted value. */
    @Test
    void text_and_values_cannot_become_markup() {
        String typed = "</td><script>\"&amp;'";
        assertEquals(
                "<td title=\"&lt;/td&gt;&lt;script&gt;&quot;&amp;amp;'\">&lt;/td&gt;&lt;script&gt;&quot;&amp;amp;'</td>",
                written(Element.of("td", typed).with("title", typed)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"\u0000", "\u001b", "\u007f", "\u009b", "\ud83d", "\uffff"})
    void what_is_no_character_of_a_page_is_shown_as_unknown(String odd) {
        assertEquals("<p>a\uFFFDb</p>", written(Element.of("p", "a" + odd + "b")));
    }

    @Test
    void characters_of_two_halves_and_directions_stay() {
        assertEquals("<p>🚜 \u202eאב</p>", written(Element.of("p", "🚜 \u202eאב")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"a b", "a>", "1a", "", "on click=\"x\""})
    void a_name_that_is_none_is_refused(String name) {
        assertThrows(IllegalArgumentException.class, () -> Element.of(name));
        Element cell = Element.of("td");
        assertThrows(IllegalArgumentException.class, () -> cell.with(name, "x"));
    }

    @Test
    void a_style_sheet_is_not_escaped_and_so_cannot_hold_what_ends_it() {
        assertEquals("<style>a > b { c: \"d\" }</style>", written(Element.of("style", "a > b { c: \"d\" }")));
        assertThrows(IllegalArgumentException.class, () -> Element.of("style", "</style>"));
    }

    @ParameterizedTest
    @CsvSource({"1, 1", "0.1234, 0.12", "0.125, 0.13", "-2.5, -2.5", "100, 100", "0.001, 0"})
    void a_measure_is_written_to_a_hundredth_in_every_country(double measure, String written) {
        assertEquals("<g x=\"" + written + "\"></g>", written(Element.of("g").with("x", measure)));
    }
}
