package org.shedboard.store;

import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.function.Function;

/** One row of a table, by column name, on its way in or out. */
final class Cells {
    /** Stands where nothing was said yet, not even that there is nothing. */
    private static final Object UNSAID = new Object();

    private final Table table;
    /** In the order of the table's columns. */
    private final Object[] contents;

    private Cells(Table table, Object[] contents) {
        this.table = table;
        this.contents = contents;
    }

    static Cells in(Table table) {
        Object[] contents = new Object[table.columns().size()];
        Arrays.fill(contents, UNSAID);
        return new Cells(table, contents);
    }

    /** The row that the database stands at, of just the table's columns in their order. */
    static Cells read(Table table, ResultSet row) throws SQLException {
        Object[] contents = new Object[table.columns().size()];
        for (int i = 0; i < contents.length; i++) {
            contents[i] = table.columns().get(i).read(row, i + 1);
        }
        return new Cells(table, contents);
    }

    /** With this content, taken apart to what a column can hold. */
    Cells set(String column, Object content) {
        contents[table.positionOf(column)] = plain(content);
        return this;
    }

    /** A copy with this content. */
    Cells with(String column, Object content) {
        return new Cells(table, contents.clone()).set(column, content);
    }

    private static Object plain(Object content) {
        if (content instanceof Optional<?> optional) {
            return optional.map(Cells::plain).orElse(null);
        }
        if (content instanceof OptionalInt number) {
            return number.isPresent() ? number.getAsInt() : null;
        }
        if (content instanceof OptionalLong number) {
            return number.isPresent() ? number.getAsLong() : null;
        }
        if (content instanceof OptionalDouble number) {
            return number.isPresent() ? number.getAsDouble() : null;
        }
        if (content instanceof Instant instant) {
            return instant.truncatedTo(ChronoUnit.MICROS);
        }
        if (content instanceof Enum<?> constant) {
            return constant.name();
        }
        if (content instanceof Collection<?> items) {
            return Listed.join(items);
        }
        return content instanceof ZoneId zone ? zone.getId() : content;
    }

    /** Hands these columns, in this order, to a statement. */
    void bind(PreparedStatement statement, List<String> order) throws SQLException {
        for (int i = 0; i < order.size(); i++) {
            String column = order.get(i);
            table.expectColumn(column).bind(statement, i + 1, expectSet(column));
        }
    }

    Table table() {
        return table;
    }

    Object expectSet(String column) {
        Object content = contents[table.positionOf(column)];
        if (content == UNSAID) {
            throw new IllegalStateException("nothing was said for %s.%s".formatted(table.name(), column));
        }
        return content;
    }

    /** What tells this row apart from the others of its table. */
    List<Object> key() {
        return table.key().stream().map(this::expectSet).toList();
    }

    /** A line for the journal: the key, then the columns that differ from the other row, or all that hold something. */
    String toLine(Optional<Cells> other) {
        StringBuilder line = new StringBuilder(table.name());
        key().forEach(part -> line.append(' ').append(part));
        for (Column each : table.columns()) {
            String column = each.name();
            Object content = expectSet(column);
            boolean isNews = other.isEmpty()
                    ? content != null
                    : !Objects.equals(content, other.get().expectSet(column));
            if (isNews && !table.key().contains(column)) {
                line.append("; ").append(column).append(' ').append(content == null ? "-" : content);
            }
        }
        return Listed.escape(line.toString());
    }

    boolean holdsSameAs(Cells other) {
        return Arrays.equals(contents, other.contents);
    }

    /** The row as a value; a row that makes none is damage, named by table and key. */
    <T> T map(Function<Cells, T> mapper) {
        try {
            return mapper.apply(this);
        } catch (StoreFailure failure) {
            throw failure;
        } catch (RuntimeException problem) {
            String message = "table %s, row %s cannot be read: %s".formatted(table.name(), key(), problem.getMessage());
            throw new StoreFailure(StoreFailure.Kind.DAMAGED, message, problem);
        }
    }

    String text(String column) {
        return expect(column, String.class);
    }

    Optional<String> findText(String column) {
        return find(column, String.class);
    }

    int number(String column) {
        return expect(column, Integer.class);
    }

    OptionalInt findNumber(String column) {
        return find(column, Integer.class).map(OptionalInt::of).orElseGet(OptionalInt::empty);
    }

    long wide(String column) {
        return expect(column, Long.class);
    }

    double real(String column) {
        return expect(column, Double.class);
    }

    OptionalLong findWide(String column) {
        return find(column, Long.class).map(OptionalLong::of).orElseGet(OptionalLong::empty);
    }

    OptionalDouble findReal(String column) {
        return find(column, Double.class).map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }

    boolean flag(String column) {
        return expect(column, Boolean.class);
    }

    Instant instant(String column) {
        return expect(column, Instant.class);
    }

    Optional<LocalDate> findDate(String column) {
        return find(column, LocalDate.class);
    }

    Optional<Instant> findInstant(String column) {
        return find(column, Instant.class);
    }

    LocalDate date(String column) {
        return expect(column, LocalDate.class);
    }

    LocalTime time(String column) {
        return expect(column, LocalTime.class);
    }

    <E extends Enum<E>> E one(Class<E> type, String column) {
        return Enum.valueOf(type, text(column));
    }

    List<String> list(String column) {
        return Listed.split(text(column));
    }

    List<Integer> numbers(String column) {
        return list(column).stream().map(Integer::valueOf).toList();
    }

    private <T> Optional<T> find(String column, Class<T> type) {
        return Optional.ofNullable(type.cast(expectSet(column)));
    }

    private <T> T expect(String column, Class<T> type) {
        return Objects.requireNonNull(type.cast(expectSet(column)), () -> column + " is empty");
    }
}
