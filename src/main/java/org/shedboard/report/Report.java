package org.shedboard.report;

import java.util.List;

/**
 * What an owner is told of one visit, in plain words.
 *
 * @param about what machine it is and when it was here
 * @param warnings what forbids riding it, and how it was handed over; none for a machine that may be ridden
 * @param cautions what goes before all of it: the maker's manual, local codes, licensed people
 */
public record Report(
        String shop,
        String title,
        List<String> about,
        List<String> warnings,
        List<Section> sections,
        List<Row> measured,
        List<String> cautions) {
    /** Some sentences under a heading. */
    public record Section(Kind kind, List<String> lines) {
        public Section {
            lines = List.copyOf(lines);
        }
    }

    /** What a section is about, in the order in which it is told; what was measured stands behind what was found. */
    public enum Kind {
        DONE,
        FOUND,
        LEFT,
        NEXT
    }

    /**
     * A value that was read off.
     *
     * @param good from where to where it is good
     * @param wear how it changes and when it reaches its limit, as far as that can be said
     */
    public record Row(String point, String value, String good, String wear) {}

    public Report {
        about = List.copyOf(about);
        warnings = List.copyOf(warnings);
        sections = List.copyOf(sections);
        measured = List.copyOf(measured);
        cautions = List.copyOf(cautions);
    }
}
