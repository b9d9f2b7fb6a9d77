package org.shedboard.files;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import de.siegmar.fastcsv.writer.QuoteStrategies;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.regex.Pattern;

/** A table for a spreadsheet or another program to open, written by RFC 4180: the names of the columns first, then a line a row. */
public record CsvTable(List<String> columns, List<List<Cell>> rows) {
    public CsvTable {
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
        if (columns.isEmpty()) {
            throw new IllegalArgumentException("a table has at least one column");
        }
        for (int row = 0; row < rows.size(); row++) {
            if (rows.get(row).size() != columns.size()) {
                throw new IllegalArgumentException("row %s has %s cells and the table %s columns"
                        .formatted(row + 1, rows.get(row).size(), columns.size()));
            }
        }
    }

    /** What stands in one row under one column. */
    public sealed interface Cell {
        static Cell of(String text) {
            return new Text(text);
        }

        static Cell of(long number) {
            return of(BigDecimal.valueOf(number));
        }

        static Cell of(BigDecimal number) {
            return new Number(number);
        }

        /** What is written, before anything is quoted. */
        String written();
    }

    private record Text(String text) implements Cell {
        /**
         * What a spreadsheet would run as a formula, or would after dropping the blanks or the one apostrophe in front of it. The
         * first characters are those that OWASP's page on CSV injection names (from memory), and the wide forms of the signs.
         * Apostrophes that the text has already count along, so that taking one away always gives the text back.
         */
        private static final Pattern FORMULA =
                Pattern.compile("'*(?:[\\t\\r\\n]|[\\s\\p{Z}]*[=+\\-@\uFF1D\uFF0B\uFF0D\uFF20]).*", Pattern.DOTALL);

        @Override
        public String written() {
            return FORMULA.matcher(text).matches() ? "'" + text : text;
        }
    }

    private record Number(BigDecimal number) implements Cell {
        @Override
        public String written() {
            return number.toPlainString();
        }
    }

    /** The whole table; every line ends in CR LF, the last one too. */
    public String text() {
        StringWriter text = new StringWriter();
        try (CsvWriter writer = writer(text)) {
            writer.writeRecord(columns.stream().map(Cell::of).map(Cell::written).toList());
            rows.forEach(
                    row -> writer.writeRecord(row.stream().map(Cell::written).toList()));
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text.toString();
    }

    private CsvWriter writer(StringWriter text) {
        CsvWriter.CsvWriterBuilder builder = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF);
        if (columns.size() == 1) {
            // an only cell with nothing in it would be an empty line, which readers pass over
            builder.quoteStrategy(QuoteStrategies.EMPTY);
        }
        return builder.build(text);
    }
}
