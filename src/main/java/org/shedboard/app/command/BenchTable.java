package org.shedboard.app.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.shedboard.grid.TextWidth;
import org.shedboard.words.Words;

/** What came of many problems as a table whose rows can be said as they come: its columns are as wide from the start. */
public final class BenchTable {
    private static final String NONE = "-";
    private static final int LONGEST_NAME = 30;
    private static final int COST_WIDTH = 8;
    private static final int GAP_WIDTH = 7;

    private final int nameWidth;
    private final List<Column> columns;

    /** A column of numbers; {@code gaps} is empty where nothing is said of all rows together. */
    private record Column(String title, int width, Function<BenchRow, String> text, Function<Sum, String> sum) {
        static Column of(String title, int width, Function<BenchRow, String> text) {
            return new Column(title, width, text, rows -> "");
        }
    }

    /** One line about all rows: which of the three figures. */
    private record Sum(Gaps toBound, Gaps toKnown, Function<Gaps, OptionalDouble> figure) {}

    /**
     * @param names of all rows to come
     * @param severalSeeds whether a row has more than one plan
     * @param known whether the best known cost of any problem is known
     */
    public BenchTable(List<String> names, boolean severalSeeds, boolean known) {
        int longest = names.stream().mapToInt(TextWidth::of).max().orElse(0);
        nameWidth = Math.max(Words.say("command.bench.max").length(), Math.min(LONGEST_NAME, longest));
        columns = columns(severalSeeds, known);
    }

    private static List<Column> columns(boolean severalSeeds, boolean known) {
        List<Column> columns = new ArrayList<>();
        columns.add(Column.of(Words.say("command.bench.jobs"), 4, row -> String.valueOf(row.jobs())));
        columns.add(Column.of(Words.say("command.bench.tasks"), 5, row -> String.valueOf(row.tasks())));
        if (severalSeeds) {
            columns.add(cost(Words.say("command.bench.best"), row -> row.best().cost()));
            columns.add(
                    cost(Words.say("command.bench.median"), row -> row.median().cost()));
            columns.add(
                    cost(Words.say("command.bench.worst"), row -> row.worst().cost()));
        } else {
            columns.add(cost(Words.say("command.bench.cost"), row -> row.best().cost()));
        }
        columns.add(cost(Words.say("command.bench.bound"), BenchRow::bound));
        columns.add(gap(BenchRow::gapToBound, Sum::toBound));
        if (known) {
            columns.add(Column.of(
                    Words.say("command.bench.known"),
                    COST_WIDTH,
                    row -> row.known().map(String::valueOf).orElse(NONE)));
            columns.add(gap(BenchRow::gapToKnown, Sum::toKnown));
        }
        columns.add(Column.of(Words.say("command.bench.left_out"), 4, row -> String.valueOf(row.leftOut())));
        columns.add(Column.of(Words.say("command.bench.tries_a_second"), 8, BenchTable::pace));
        return List.copyOf(columns);
    }

    /** A problem whose first plan is proven best needs no try. */
    private static String pace(BenchRow row) {
        return row.tries() == 0 ? NONE : String.valueOf(row.triesASecond());
    }

    private static Column cost(String title, Function<BenchRow, Long> cost) {
        return Column.of(title, COST_WIDTH, row -> String.valueOf(cost.apply(row)));
    }

    private static Column gap(Function<BenchRow, OptionalDouble> gap, Function<Sum, Gaps> gaps) {
        return new Column(
                Words.say("command.bench.gap"),
                GAP_WIDTH,
                row -> percent(gap.apply(row)),
                sum -> percent(sum.figure.apply(gaps.apply(sum))));
    }

    private static String percent(OptionalDouble gap) {
        return gap.isPresent() ? String.format(Locale.ROOT, "%.2f", gap.getAsDouble()) : NONE;
    }

    public String head() {
        return line(Words.say("command.bench.problem"), Column::title);
    }

    public String line(BenchRow row) {
        return line(row.name(), column -> column.text.apply(row));
    }

    /** Median, mean and largest gap of all rows. */
    public List<String> sums(List<BenchRow> rows) {
        Gaps toBound = Gaps.of(rows.stream().map(BenchRow::gapToBound).toList());
        Gaps toKnown = Gaps.of(rows.stream().map(BenchRow::gapToKnown).toList());
        return List.of(
                sum(Words.say("command.bench.median"), new Sum(toBound, toKnown, Gaps::median)),
                sum(Words.say("command.bench.mean"), new Sum(toBound, toKnown, Gaps::mean)),
                sum(Words.say("command.bench.max"), new Sum(toBound, toKnown, Gaps::max)));
    }

    private String sum(String name, Sum sum) {
        return line(name, column -> column.sum.apply(sum));
    }

    private String line(String name, Function<Column, String> text) {
        String shown = TextWidth.clip(name, nameWidth);
        StringBuilder line = new StringBuilder(shown).append(" ".repeat(nameWidth - TextWidth.of(shown)));
        for (Column column : columns) {
            line.append(' ')
                    .append(" "
                            .repeat(Math.max(
                                    0, column.width - text.apply(column).length())));
            line.append(text.apply(column));
        }
        return line.toString().stripTrailing();
    }
}
