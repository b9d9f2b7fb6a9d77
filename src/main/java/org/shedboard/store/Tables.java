package org.shedboard.store;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/**
 * Every table of the records with all its columns, those that others refer to first, so that a whole shop can be gone through row by
 * row: to copy it, to write it out, to see whether two are the same. The database itself is asked what it has, so that no table can be
 * forgotten and records from before a migration can be gone through too.
 */
final class Tables {
    /** What belongs to one database and not to the shop in it. */
    static final Set<String> OF_THE_DATABASE = Set.of("schema_history", "shop_lock", "change_line");

    /** So many rows go into the database at a time. */
    static final int PAGE = 500;

    private static final Table COLUMNS = Table.named("information_schema.columns")
            .text("table_name", "column_name", "data_type", "is_identity")
            .keyed("table_name", "column_name");
    private static final Table KEYS = Table.named("information_schema.key_column_usage")
            .text("table_name", "column_name")
            .keyed("table_name", "column_name");
    private static final Table CONSTRAINTS = Table.named("information_schema.table_constraints")
            .text("table_name", "constraint_name")
            .keyed("constraint_name");
    private static final Table REFERENCES = Table.named("information_schema.referential_constraints")
            .text("constraint_name", "unique_constraint_name")
            .keyed("constraint_name");

    private final Map<String, Table> byName;
    private final Map<String, String> numbered;

    private Tables(Map<String, Table> byName, Map<String, String> numbered) {
        this.byName = byName;
        this.numbered = numbered;
    }

    /** Those of the schema that this connection works in. */
    static Tables of(Sql sql) {
        Map<String, Table> known = new LinkedHashMap<>();
        Map<String, String> numbered = new LinkedHashMap<>();
        Map<String, List<String>> keys = keys(sql);
        for (Cells column : sql.select(COLUMNS, ofSchema("ORDER BY table_name, ordinal_position"))) {
            String name = lower(column, "table_name");
            if (keys.containsKey(name) && !OF_THE_DATABASE.contains(name)) {
                known.merge(name, with(empty(name, keys), column), (table, one) -> with(table, column));
                if (column.text("is_identity").equals("YES")) {
                    numbered.put(name, lower(column, "column_name"));
                }
            }
        }
        return new Tables(inOrder(known, referredTo(sql)), numbered);
    }

    private static Table empty(String name, Map<String, List<String>> keys) {
        return Table.named(name).keyed(keys.get(name).toArray(String[]::new));
    }

    private static Table with(Table table, Cells column) {
        String name = lower(column, "column_name");
        return switch (column.text("data_type").toUpperCase(Locale.ROOT)) {
            case "CHARACTER VARYING" -> table.text(name);
            case "INTEGER" -> table.number(name);
            case "BIGINT" -> table.wide(name);
            case "DOUBLE PRECISION" -> table.real(name);
            case "BOOLEAN" -> table.flag(name);
            case "DATE" -> table.date(name);
            case "TIME", "TIME WITHOUT TIME ZONE" -> table.time(name);
            case "TIMESTAMP WITH TIME ZONE" -> table.instant(name);
            default ->
                throw new IllegalStateException(
                        "nothing reads %s.%s, a %s".formatted(table.name(), name, column.text("data_type")));
        };
    }

    /** The columns of each primary key; what has none is no table of ours. */
    private static Map<String, List<String>> keys(Sql sql) {
        String primary = "constraint_name IN (SELECT constraint_name FROM information_schema.table_constraints"
                + " WHERE constraint_type = 'PRIMARY KEY' AND table_schema = CURRENT_SCHEMA)";
        Map<String, List<String>> keys = new LinkedHashMap<>();
        for (Cells column : sql.select(KEYS, ofSchema("AND " + primary + " ORDER BY table_name, ordinal_position"))) {
            keys.computeIfAbsent(lower(column, "table_name"), name -> new ArrayList<>())
                    .add(lower(column, "column_name"));
        }
        return keys;
    }

    /** For each table the tables that its rows refer to. */
    private static Map<String, Set<String>> referredTo(Sql sql) {
        Map<String, String> owners = new LinkedHashMap<>();
        sql.select(CONSTRAINTS, ofSchema(""))
                .forEach(row -> owners.put(row.text("constraint_name"), lower(row, "table_name")));
        Map<String, Set<String>> referred = new LinkedHashMap<>();
        for (Cells row : sql.select(REFERENCES, "WHERE constraint_schema = CURRENT_SCHEMA ORDER BY constraint_name")) {
            referred.computeIfAbsent(owners.get(row.text("constraint_name")), name -> new LinkedHashSet<>())
                    .add(owners.get(row.text("unique_constraint_name")));
        }
        return referred;
    }

    private static String ofSchema(String more) {
        return "WHERE table_schema = CURRENT_SCHEMA " + more;
    }

    private static String lower(Cells row, String column) {
        return row.text(column).toLowerCase(Locale.ROOT);
    }

    private static Map<String, Table> inOrder(Map<String, Table> tables, Map<String, Set<String>> referredTo) {
        Map<String, Table> ordered = new LinkedHashMap<>();
        while (ordered.size() < tables.size()) {
            List<String> ready = tables.keySet().stream()
                    .filter(name -> !ordered.containsKey(name))
                    .filter(name -> ordered.keySet().containsAll(referredTo.getOrDefault(name, Set.of())))
                    .toList();
            if (ready.isEmpty()) {
                throw new IllegalStateException("tables refer to each other in a circle");
            }
            ready.forEach(name -> ordered.put(name, tables.get(name)));
        }
        return ordered;
    }

    /** Each after all that it refers to. */
    List<Table> all() {
        return List.copyOf(byName.values());
    }

    boolean has(String name) {
        return byName.containsKey(name);
    }

    Table expect(String name) {
        if (!has(name)) {
            throw new IllegalArgumentException("there is no table " + name);
        }
        return byName.get(name);
    }

    /** Hands over the rows of a table one by one in the order of their keys; they are not all held at once. */
    void each(Sql sql, Table table, Consumer<Cells> work) {
        sql.each(table, "ORDER BY " + String.join(", ", table.key()), work);
    }

    /** Adds rows as they are, their numbers included where the database gives numbers. */
    void insert(Sql sql, Table table, List<Cells> rows) {
        String plain = table.insert();
        String text = numbered.containsKey(table.name())
                ? plain.replace(" VALUES ", " OVERRIDING SYSTEM VALUE VALUES ")
                : plain;
        sql.batch(text, table.insertOrder(), rows);
    }

    /** Copies every row into a database of the same schema that has none. */
    void copy(Sql from, Sql to) {
        for (Table table : all()) {
            List<Cells> page = new ArrayList<>();
            each(from, table, row -> {
                page.add(row);
                if (page.size() == PAGE) {
                    insert(to, table, page);
                    page.clear();
                }
            });
            insert(to, table, page);
        }
    }

    /** Lets the database's own numbers go on after the highest there is. In H2 this commits what is under way. */
    void goOnNumbering(Sql sql) {
        numbered.forEach((table, column) -> {
            long next = 1
                    + sql.findNumber("SELECT MAX(%s) FROM %s".formatted(column, table))
                            .orElse(0L);
            sql.run("ALTER TABLE %s ALTER COLUMN %s RESTART WITH %s".formatted(table, column, Long.toString(next)));
        });
    }

    /** What each table holds, boiled down: the same rows give the same digest, in whatever order a database keeps them. */
    Map<String, String> digests(Sql sql) {
        return all().stream()
                .collect(Collectors.toMap(
                        Table::name, table -> digest(sql, table), (one, other) -> one, LinkedHashMap::new));
    }

    private String digest(Sql sql, Table table) {
        RowsDigest digest = new RowsDigest();
        sql.each(table, "", digest::add);
        return digest.toString();
    }
}
