package org.shedboard.screen;

import java.util.ArrayList;
import java.util.List;
import org.shedboard.grid.Style;

/**
 * A part of a machine's page: a short title, and what stands beside it.
 *
 * @param title no more than ten letters
 */
public record Section(String title, List<Entry> entries) {
    /** A line of text; one that is too long for the page is broken. */
    public record Entry(String text, Style style) {}

    public Section {
        entries = List.copyOf(entries);
    }

    static Section of(String title) {
        return new Section(title, List.of());
    }

    Section plus(String text, Style style) {
        List<Entry> all = new ArrayList<>(entries);
        all.add(new Entry(text, style));
        return new Section(title, all);
    }

    Section plus(String text) {
        return plus(text, Style.NORMAL);
    }

    boolean isEmpty() {
        return entries.isEmpty();
    }
}
