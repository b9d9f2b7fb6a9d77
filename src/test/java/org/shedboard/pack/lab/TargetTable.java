package org.shedboard.pack.lab;

import java.util.ArrayList;
import java.util.List;

/** The table of targets, and below it the rows behind each line. */
final class TargetTable {
    /** One line, when it has been measured. */
    record Line(String name, String what, String target, Reached reached, List<String> rows) {
        Line {
            rows = List.copyOf(rows);
        }

        static Line of(Section section, Reached reached, Rows rows) {
            return new Line(section.name(), section.what(), section.target(), reached, rows.lines());
        }

        private String text() {
            return row(what, target, reached.text(), reached.verdict().word());
        }
    }

    private final List<Line> lines = new ArrayList<>();

    void add(Line line) {
        lines.add(line);
    }

    List<String> text() {
        List<String> text = new ArrayList<>(List.of(row("what", "target", "reached", "met?"), "|---|---|---|---|"));
        lines.forEach(line -> text.add(line.text()));
        for (Line line : lines) {
            text.addAll(List.of("", line.name() + ": " + line.what()));
            line.rows().forEach(row -> text.add("    " + row));
        }
        return text;
    }

    private static String row(String what, String target, String reached, String met) {
        return "| " + String.join(" | ", what, target, reached, met) + " |";
    }
}
