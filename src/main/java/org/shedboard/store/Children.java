package org.shedboard.store;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Rows that belong to other rows, found by the key of what they belong to, in the order in which they were read. */
final class Children {
    private final Map<String, List<Cells>> byParent = new LinkedHashMap<>();

    static Children of(List<Cells> rows, String parentColumn) {
        Children children = new Children();
        for (Cells row : rows) {
            children.byParent
                    .computeIfAbsent(row.text(parentColumn), parent -> new ArrayList<>())
                    .add(row);
        }
        return children;
    }

    List<Cells> of(String parent) {
        return byParent.getOrDefault(parent, List.of());
    }

    <T> List<T> map(String parent, Function<Cells, T> mapper) {
        return of(parent).stream().map(row -> row.map(mapper)).toList();
    }
}
