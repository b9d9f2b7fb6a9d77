package org.shedboard.app.command;

import java.util.ArrayList;
import java.util.List;
import org.shedboard.grid.TextWidth;

/** Lines of text in columns, as wide as their widest text, two blanks apart. */
final class Table {
    private static final String INDENT = "  ";

    private final List<List<String>> rows = new ArrayList<>();
    private final String right;

    /** @param right one letter a column: {@code r} for numbers, which stand to the right */
    Table(String right) {
        this.right = right;
    }

    Table row(String... texts) {
        rows.add(List.of(texts));
        return this;
    }

    List<String> lines() {
        return rows.stream().map(this::line).toList();
    }

    private String line(List<String> row) {
        StringBuilder line = new StringBuilder();
        for (int column = 0; column < row.size(); column++) {
            String text = row.get(column);
            String blanks = " ".repeat(width(column) - TextWidth.of(text));
            line.append(INDENT).append(right.charAt(column) == 'r' ? blanks + text : text + blanks);
        }
        return line.toString().stripTrailing();
    }

    private int width(int column) {
        return rows.stream()
                .mapToInt(row -> TextWidth.of(row.get(column)))
                .max()
                .orElse(0);
    }
}
