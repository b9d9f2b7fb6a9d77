package org.shedboard.files;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.shedboard.pack.fault.Fault;

/** A table as text: the names of its columns in the first line, a row in each other one, cells between commas, no quotes. */
final class CsvText {
    private final List<String> columns;
    private final List<Row> rows = new ArrayList<>();
    private final List<Fault> faults = new ArrayList<>();

    private CsvText(List<String> lines) {
        columns = lines.isEmpty() ? List.of() : cells(lines.get(0));
        for (int index = 1; index < lines.size(); index++) {
            if (!lines.get(index).isBlank()) {
                rows.add(new Row(index + 1, cells(lines.get(index))));
            }
        }
    }

    static CsvText of(String text) {
        return new CsvText(text.lines().toList());
    }

    private static List<String> cells(String line) {
        return Arrays.stream(line.split(",", -1)).map(String::strip).toList();
    }

    boolean has(String column) {
        return columns.contains(column);
    }

    List<Row> rows() {
        return rows;
    }

    /** What has turned out wrong so far. */
    List<Fault> faults() {
        return faults;
    }

    /** One row, from line 2 of the text on. */
    final class Row {
        private final int line;
        private final List<String> cells;

        private Row(int line, List<String> cells) {
            this.line = line;
            this.cells = cells;
        }

        /** What stands in that column; empty where nothing does. */
        Optional<String> find(String column) {
            int index = columns.indexOf(column);
            return index < 0 || index >= cells.size() || cells.get(index).isEmpty()
                    ? Optional.empty()
                    : Optional.of(cells.get(index));
        }

        Optional<String> expect(String column) {
            Optional<String> cell = find(column);
            if (cell.isEmpty()) {
                fault(column, "is missing");
            }
            return cell;
        }

        /** The whole number in that column, from 0; empty where nothing stands, and where what stands there is a fault. */
        OptionalLong findWhole(String column) {
            Optional<String> cell = find(column);
            if (cell.isPresent() && !cell.get().matches("[0-9]{1,18}")) {
                fault(column, "is %s, not a whole number".formatted(Fields.brief(cell.get())));
                return OptionalLong.empty();
            }
            return cell.isPresent() ? OptionalLong.of(Long.parseLong(cell.get())) : OptionalLong.empty();
        }

        void fault(String column, String what) {
            faults.add(new Fault("line %s, %s".formatted(line, column), what));
        }
    }
}
