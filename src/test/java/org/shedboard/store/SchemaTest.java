package org.shedboard.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class SchemaTest {
    private static final Set<String> KEYWORDS =
            Set.of("value", "day", "year", "month", "order", "user", "key", "where");

    private static Stream<String> lines() {
        return Migration.all().stream()
                .flatMap(migration -> migration.statements().stream())
                .flatMap(String::lines);
    }

    @Test
    void every_constraint_has_a_name() {
        Pattern rule = Pattern.compile("PRIMARY KEY|FOREIGN KEY|REFERENCES|UNIQUE|CHECK");
        List<String> rules = lines().filter(rule.asPredicate()).toList();
        assertTrue(rules.size() > 50, "only " + rules.size());
        assertEquals(
                List.of(),
                rules.stream()
                        .filter(line -> !line.strip().startsWith("CONSTRAINT "))
                        .toList());
    }

    @Test
    void no_column_has_a_name_that_is_a_word_of_some_sql() {
        List<String> columns = lines().filter(
                        line -> line.startsWith("    ") && !line.strip().startsWith("CONSTRAINT"))
                .map(line -> line.strip().split(" ")[0])
                .toList();
        assertTrue(columns.size() > 150, "only " + columns.size());
        assertEquals(List.of(), columns.stream().filter(KEYWORDS::contains).toList());
    }

    @Test
    void times_are_kept_with_their_zone() {
        assertEquals(
                List.of(),
                lines().filter(line -> line.contains("TIMESTAMP") && !line.contains("TIMESTAMP WITH TIME ZONE"))
                        .toList());
    }

    @Test
    void every_statement_may_be_run_again() {
        List<String> statements = Migration.all().stream()
                .flatMap(migration -> migration.statements().stream())
                .toList();
        assertTrue(statements.size() > 30, "only " + statements.size());
        assertEquals(
                List.of(),
                statements.stream()
                        .filter(statement -> !isRepeatable(statement))
                        .toList());
    }

    /** Makes or adds what is not there yet, or fills what is still empty. */
    private static boolean isRepeatable(String statement) {
        return statement.contains("IF NOT EXISTS")
                || statement.contains("WHERE NOT EXISTS")
                || statement.matches("UPDATE \\w+ SET (\\w+) = \\w+ WHERE \\1 IS NULL");
    }
}
