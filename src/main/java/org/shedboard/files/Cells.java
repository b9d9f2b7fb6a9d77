package org.shedboard.files;

import java.util.stream.Stream;
import org.shedboard.hours.DecimalHours;
import org.shedboard.tally.TallyWords;

/** Cells of a sheet's tables. A figure has its name as a class, and its minutes beside the text, for programs to find. */
final class Cells {
    private Cells() {}

    static Element table(String name, Element head) {
        return Element.of("table").with("class", name).add(Element.of("thead").add(head));
    }

    /** The names of the columns; those of figures stand right. */
    static Element head(int texts, String... names) {
        Element row = Element.of("tr");
        for (int column = 0; column < names.length; column++) {
            Element name = Element.of("th", names[column]).with("scope", "col");
            row.add(column < texts ? name : name.with("class", "figure"));
        }
        return row;
    }

    static Element row(Stream<Element> cells) {
        return Element.of("tr").addAll(cells.toList());
    }

    /** What the row is about. */
    static Element heading(String text) {
        return Element.of("th").with("scope", "row").add(typed(text));
    }

    static Element text(String name, String text) {
        return Element.of("td").with("class", name).add(typed(text));
    }

    /** Text that somebody typed, in its own direction, which ends where the text does. */
    static Element typed(String text) {
        return Element.of("bdi", text);
    }

    static Element hours(String name, int minutes) {
        return figure(name, minutes, DecimalHours.of(minutes).toPlainString());
    }

    static Element signed(String name, int minutes) {
        return figure(name, minutes, TallyWords.signed(minutes));
    }

    static Element minutes(String name, int minutes) {
        return figure(name, minutes, String.valueOf(minutes));
    }

    static Element none() {
        return Element.of("td");
    }

    private static Element figure(String name, int minutes, String text) {
        return Element.of("td", text).with("class", "figure " + name).with("data-minutes", minutes);
    }
}
