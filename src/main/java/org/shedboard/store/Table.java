package org.shedboard.store;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * A table: its columns, the key that tells its rows apart, and the column by which rows belong to one thing and are saved
 * together (a visit's tasks), where there is one.
 *
 * @param isTold whether the journal tells its rows one by one
 */
record Table(String name, List<Column> columns, List<String> key, Optional<String> scope, boolean isTold) {
    static Table named(String name) {
        return new Table(name, List.of(), List.of(), Optional.empty(), true);
    }

    Table text(String... names) {
        return with(Column.Type.TEXT, names);
    }

    Table number(String... names) {
        return with(Column.Type.NUMBER, names);
    }

    Table wide(String... names) {
        return with(Column.Type.LONG, names);
    }

    Table real(String... names) {
        return with(Column.Type.REAL, names);
    }

    Table flag(String... names) {
        return with(Column.Type.FLAG, names);
    }

    Table instant(String... names) {
        return with(Column.Type.INSTANT, names);
    }

    Table date(String... names) {
        return with(Column.Type.DATE, names);
    }

    Table time(String... names) {
        return with(Column.Type.TIME, names);
    }

    private Table with(Column.Type type, String... names) {
        List<Column> all = new ArrayList<>(columns);
        Arrays.stream(names).map(each -> new Column(each, type)).forEach(all::add);
        return new Table(name, List.copyOf(all), key, scope, isTold);
    }

    Table keyed(String... names) {
        return new Table(name, columns, List.of(names), scope, isTold);
    }

    Table scoped(String column) {
        return new Table(name, columns, key, Optional.of(column), isTold);
    }

    Table untold() {
        return new Table(name, columns, key, scope, false);
    }

    /** With these of its columns, of which the key has to be. */
    Table only(Collection<String> names) {
        if (!names.containsAll(key)) {
            throw new IllegalArgumentException("the key of table %s is not whole".formatted(name));
        }
        List<Column> some =
                columns.stream().filter(column -> names.contains(column.name())).toList();
        return new Table(name, some, key, scope, isTold);
    }

    Column expectColumn(String wanted) {
        return columns.get(positionOf(wanted));
    }

    /** Which of the columns it is, from 0. */
    int positionOf(String wanted) {
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).name().equals(wanted)) {
                return i;
            }
        }
        throw new IllegalArgumentException("table %s has no column %s".formatted(name, wanted));
    }

    private List<String> names() {
        return columns.stream().map(Column::name).toList();
    }

    /** The columns that are not of the key. */
    private List<String> rest() {
        return names().stream().filter(each -> !key.contains(each)).toList();
    }

    String select() {
        return "SELECT %s FROM %s ".formatted(String.join(", ", names()), name);
    }

    String insert() {
        String marks = columns.stream().map(column -> "?").collect(joining(", "));
        return "INSERT INTO %s (%s) VALUES (%s)".formatted(name, String.join(", ", names()), marks);
    }

    /** Takes its parameters in the order of {@link #updateOrder}. */
    String update() {
        String changes = rest().stream().map(each -> each + " = ?").collect(joining(", "));
        return "UPDATE %s SET %s WHERE %s".formatted(name, changes, keyIs());
    }

    List<String> updateOrder() {
        List<String> order = new ArrayList<>(rest());
        order.addAll(key);
        return order;
    }

    List<String> insertOrder() {
        return names();
    }

    String delete() {
        return "DELETE FROM %s WHERE %s".formatted(name, keyIs());
    }

    private String keyIs() {
        return key.stream().map(each -> each + " = ?").collect(joining(" AND "));
    }
}
