package org.shedboard.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TablesTest {
    private static final Pattern MADE = Pattern.compile("CREATE TABLE IF NOT EXISTS (\\w+)");
    private static final Pattern COLUMN = Pattern.compile("(?m)^    ([a-z_]+) [A-Z]|ADD COLUMN IF NOT EXISTS (\\w+)");

    @TempDir
    private Path directory;

    private Sql open(String name) throws SQLException {
        Home home = Home.at(directory.resolve(name));
        home.create();
        return new Migrator(home, new Schema(Migration.all())).open(Intent.MAKE);
    }

    private Sql filled(String name) throws SQLException {
        try (Store store = Store.create(directory.resolve(name))) {
            WholeShop.save(store);
        }
        return new Sql(Home.at(directory.resolve(name)).connect(false), Connection.TRANSACTION_READ_COMMITTED);
    }

    private static String schema() {
        return String.join("\n", Migration.all().stream().map(Migration::text).toList());
    }

    /** A visit is not read again unless the journal tells of rows in these. */
    @Test
    void no_table_of_what_is_known_of_a_visit_is_forgotten() throws SQLException {
        Sql sql = open("empty");
        Set<String> ofVisits = Tables.of(sql).all().stream()
                .filter(table -> table.key().get(0).equals("visit_id"))
                .map(Table::name)
                .collect(Collectors.toCollection(TreeSet::new));
        ofVisits.add("visit");
        assertEquals(ofVisits, new TreeSet<>(VisitRows.TABLES));
        sql.run("SHUTDOWN");
    }

    /** What the text of the migrations makes beside what the database says it has. */
    @Test
    void no_table_that_was_ever_made_is_forgotten() throws SQLException {
        Set<String> made = new TreeSet<>(
                MADE.matcher(schema()).results().map(found -> found.group(1)).toList());
        made.removeAll(Tables.OF_THE_DATABASE);
        Sql sql = open("empty");
        assertEquals(
                made,
                new TreeSet<>(Tables.of(sql).all().stream().map(Table::name).toList()));
        assertTrue(made.size() > 40, made.toString());
        sql.run("SHUTDOWN");
    }

    @Test
    void no_column_that_was_ever_made_is_forgotten() throws SQLException {
        List<String> made = COLUMN.matcher(schema())
                .results()
                .map(TablesTest::name)
                .sorted()
                .toList();
        List<String> known = new ArrayList<>(List.of("version", "name", "checksum", "id"));
        Sql sql = open("empty");
        if (schema().contains("TABLE IF NOT EXISTS change_line")) {
            known.addAll(List.of("journal_id", "part", "line"));
        }
        Tables.of(sql).all().forEach(table -> table.columns().forEach(column -> known.add(column.name())));
        assertEquals(made, known.stream().sorted().toList());
        sql.run("SHUTDOWN");
    }

    private static String name(MatchResult found) {
        return found.group(1) == null ? found.group(2) : found.group(1);
    }

    @Test
    void a_table_comes_after_those_it_refers_to() throws SQLException {
        Sql sql = open("empty");
        List<String> names = Tables.of(sql).all().stream().map(Table::name).toList();
        assertTrue(names.indexOf("owner") < names.indexOf("machine"));
        assertTrue(names.indexOf("machine") < names.indexOf("visit"));
        assertTrue(names.indexOf("stay") < names.indexOf("task"));
        assertTrue(names.indexOf("work_part") < names.indexOf("part_variant"));
        sql.run("SHUTDOWN");
    }

    @Test
    void the_shop_of_these_tests_has_something_in_every_table() throws SQLException {
        Sql sql = filled("full");
        List<String> empty = Tables.of(sql).digests(sql).entrySet().stream()
                .filter(entry -> entry.getValue().startsWith("0:"))
                .map(Map.Entry::getKey)
                .toList();
        assertEquals(List.of(), empty);
        sql.run("SHUTDOWN");
    }

    @Test
    void a_copy_holds_the_same_to_the_last_row_and_goes_on_numbering() throws SQLException {
        Sql from = filled("from");
        Sql to = open("to");
        Tables tables = Tables.of(from);
        tables.copy(from, to);
        tables.goOnNumbering(to);
        assertEquals(tables.digests(from), Tables.of(to).digests(to));
        long newest = Journal.newest(from);
        from.run("SHUTDOWN");
        to.run("SHUTDOWN");
        try (Store store = Store.open(directory.resolve("to"))) {
            store.save(Samples.STAMP, "one more", tx -> tx.saveSetting("x", "y"));
            assertEquals(newest + 1, store.read(Reader::lastJournal));
        }
    }

    @Test
    void a_digest_is_another_where_one_content_is_another_or_empty() throws SQLException {
        Sql sql = filled("full");
        Tables tables = Tables.of(sql);
        String before = tables.digests(sql).get("machine");
        sql.update("UPDATE machine SET label = '-' WHERE id = ?", "m1");
        String dash = tables.digests(sql).get("machine");
        sql.update("UPDATE machine SET merged_into = '-' WHERE id = ?", "m1");
        String merged = tables.digests(sql).get("machine");
        assertNotEquals(before, dash);
        assertNotEquals(dash, merged);
        assertEquals(merged, tables.digests(sql).get("machine"));
        sql.run("SHUTDOWN");
    }
}
