package org.shedboard.store;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Goes through the journal from its first row, keeps what it tells of each row of each table, and holds that against the tables.
 * What the journal does not tell for sure is not judged: the rows of a table of which a change only counted them, and rows that one
 * change told of more than once.
 */
final class Auditing {
    private static final int PAGE = 1000;
    /** {@link Difference} counts rows of a large change in such lines. */
    private static final Pattern COUNTED = Pattern.compile("([a-z_]+) \\d+ rows");

    private static final Pattern COLUMN = Pattern.compile("; ([a-z_]+) ");
    /** How a line tells that a column holds nothing. */
    private static final String NOTHING = "-";

    private final Sql sql;
    /** By table and key, what is known of each column; the empty map of a row that is only known to be there. */
    private final Map<String, Map<String, String>> told = new LinkedHashMap<>();

    /** Rows that are in the tables. */
    private final Set<String> found = new HashSet<>();

    private final Set<String> unsure = new HashSet<>();
    private final Set<String> counted = new HashSet<>();
    private final Map<String, Table> tables = new HashMap<>();
    private final List<Audit.Fault> faults = new ArrayList<>();
    private long changes;

    private Auditing(Sql sql) {
        this.sql = sql;
        Tables.of(sql).all().forEach(table -> tables.put(table.name(), table));
    }

    static Audit of(Sql sql) {
        Auditing auditing = new Auditing(sql);
        auditing.replay();
        auditing.compare();
        auditing.findTwice();
        return new Audit(auditing.changes, auditing.told.size(), auditing.faults);
    }

    private void replay() {
        long from = 1;
        List<JournalRow> page = Journal.page(sql, from, PAGE);
        while (!page.isEmpty()) {
            page.forEach(this::replay);
            from = page.get(page.size() - 1).id() + 1;
            page = Journal.page(sql, from, PAGE);
        }
    }

    private void replay(JournalRow row) {
        changes++;
        Map<String, List<String>> before = byRow(row.before());
        Map<String, List<String>> after = byRow(row.after());
        before.forEach((key, lines) -> {
            if (!after.containsKey(key)) {
                told.remove(key);
                unsure.remove(key);
            }
            judge(key, lines, after.getOrDefault(key, List.of()));
        });
        after.forEach((key, lines) -> {
            judge(key, before.getOrDefault(key, List.of()), lines);
            lines.forEach(line -> learn(key, line));
        });
    }

    /** Told of twice, or made and taken away by one change: what came last nobody can say. */
    private void judge(String key, List<String> before, List<String> after) {
        if (before.size() > 1 || after.size() > 1 || (!before.isEmpty() && before.equals(after))) {
            unsure.add(key);
        }
    }

    /** The lines by the table and key that they begin with; those that count rows only end what is known of the table. */
    private Map<String, List<String>> byRow(String side) {
        Map<String, List<String>> rows = new LinkedHashMap<>();
        side.lines().forEach(line -> {
            Matcher count = COUNTED.matcher(line);
            if (count.matches()) {
                count(count.group(1));
            } else {
                rows.computeIfAbsent(head(line), key -> new ArrayList<>()).add(line);
            }
        });
        return rows;
    }

    private void count(String table) {
        counted.add(table);
        told.keySet().removeIf(key -> tableOf(key).equals(table));
    }

    private static String head(String line) {
        Matcher column = COLUMN.matcher(line);
        return column.find() ? line.substring(0, column.start()) : line;
    }

    private static String tableOf(String key) {
        return key.split(" ", 2)[0];
    }

    private void learn(String key, String line) {
        told.computeIfAbsent(key, any -> new HashMap<>()).putAll(columns(line));
    }

    private Map<String, String> columns(String line) {
        Set<String> names = new HashSet<>();
        findTable(tableOf(head(line))).ifPresent(table -> table.columns().forEach(column -> names.add(column.name())));
        Map<String, String> columns = new HashMap<>();
        Matcher column = COLUMN.matcher(line);
        String name = "";
        int begins = 0;
        int from = 0;
        while (column.find(from)) {
            if (names.contains(column.group(1))) {
                put(columns, name, line.substring(begins, column.start()));
                name = column.group(1);
                begins = column.end();
            }
            from = column.end() - 1;
        }
        put(columns, name, line.substring(begins));
        return columns;
    }

    private static void put(Map<String, String> columns, String name, String content) {
        if (!name.isEmpty()) {
            columns.put(name, content);
        }
    }

    /** A table that the journal once told of may be gone from the schema since. */
    private Optional<Table> findTable(String name) {
        return Optional.ofNullable(tables.get(name));
    }

    private void compare() {
        Set<String> mentioned = new HashSet<>(counted);
        told.keySet().forEach(key -> mentioned.add(tableOf(key)));
        Set<String> owners = new HashSet<>();
        findTable("owner")
                .ifPresent(
                        table -> sql.select(table, "").forEach(row -> owners.add(String.valueOf(row.expectSet("id")))));
        mentioned.stream().sorted().forEach(name -> findTable(name).ifPresent(table -> compare(table, owners)));
        told.keySet().stream()
                .filter(key -> !unsure.contains(key) && findTable(tableOf(key)).isPresent())
                .filter(key -> !found.contains(key))
                .forEach(key -> faults.add(new Audit.Fault(Audit.Kind.MISSING, key)));
    }

    private void compare(Table table, Set<String> owners) {
        for (Cells row : sql.select(table, "")) {
            String line = row.toLine(Optional.empty());
            String key = head(line);
            found.add(key);
            if (unsure.contains(key)) {
                continue;
            }
            Map<String, String> known = told.get(key);
            if (known != null) {
                compare(key, known, columns(line), owners);
            } else if (!counted.contains(table.name())) {
                faults.add(new Audit.Fault(Audit.Kind.UNTOLD, key));
            }
        }
    }

    /** An owner who was forgotten stands in the journal by their id alone, wherever they were named. */
    private void compare(String key, Map<String, String> known, Map<String, String> holds, Set<String> owners) {
        known.forEach((column, content) -> {
            String held = holds.getOrDefault(column, NOTHING);
            boolean isErased = owners.contains(content);
            if (!held.equals(content) && !isErased) {
                faults.add(new Audit.Fault(Audit.Kind.DIFFERENT, key + " " + column));
            }
        });
    }

    private void findTwice() {
        long twice = sql.findNumber("SELECT COUNT(*) - COUNT(DISTINCT change_id) FROM journal")
                .orElse(0L);
        if (twice > 0) {
            faults.add(new Audit.Fault(Audit.Kind.TWICE, "journal"));
        }
    }
}
