package org.shedboard.pack.lab;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The rows behind one line of the table; each is shown on the error stream as it comes, so that a long run can be watched. */
final class Rows {
    private final List<String> lines = new ArrayList<>();

    void add(String format, Object... values) {
        String line = String.format(Locale.ROOT, format, values).stripTrailing();
        lines.add(line);
        System.err.println(line);
    }

    List<String> lines() {
        return List.copyOf(lines);
    }
}
