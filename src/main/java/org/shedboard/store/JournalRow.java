package org.shedboard.store;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One change as the journal tells it.
 *
 * @param id grows with every change, with gaps
 * @param before what was there of the things that changed, a line each; empty where they are new
 * @param after what is there now, a line each; empty where they are gone
 */
public record JournalRow(long id, Instant at, String who, String terminal, String what, String before, String after) {
    private static final Pattern COUNT = Pattern.compile("\\w+ \\d+ rows");

    /**
     * A row that a change touched.
     *
     * @param key what tells it apart in its table
     * @param columns the names of the columns that are news
     */
    public record Touched(String table, List<String> key, Set<String> columns) {
        /** A line as {@link Cells#toLine} writes it. Keys of what is asked for here are ids, which have no blanks. */
        private static Touched of(String line) {
            String[] parts = line.split("; ");
            List<String> head = List.of(parts[0].split(" "));
            Set<String> columns = Arrays.stream(parts)
                    .skip(1)
                    .map(part -> part.split(" ", 2)[0])
                    .collect(Collectors.toSet());
            return new Touched(head.get(0), head.subList(1, head.size()), columns);
        }
    }

    private Stream<String> lines() {
        return Stream.concat(before.lines(), after.lines());
    }

    /** Whether it tells of some rows only how many there are. */
    public boolean isCounted() {
        return lines().anyMatch(COUNT.asMatchPredicate());
    }

    /** The tables of which it tells that rows are others than before. */
    public Set<String> tables() {
        return lines().map(line -> line.split("[ ;]", 2)[0]).collect(Collectors.toSet());
    }

    /** The parts of the keys of all rows that it tells of, whatever their tables; ids, which have no blanks, among them. */
    public Set<String> keys() {
        return lines().flatMap(
                        line -> Arrays.stream(line.split("; ", 2)[0].split(" ")).skip(1))
                .collect(Collectors.toSet());
    }

    /** The first parts of the keys of the rows of a table that it tells of; ids, which have no blanks. */
    public Set<String> keysIn(String table) {
        return lines().filter(line -> line.startsWith(table + " "))
                .map(line -> line.split("[ ;]", 3)[1])
                .collect(Collectors.toSet());
    }

    /** Ids of the visits of which it tells that something is another than before. */
    public Set<String> visits() {
        return VisitRows.TABLES.stream()
                .flatMap(table -> keysIn(table).stream())
                .collect(Collectors.toSet());
    }

    /** Whether all that it tells of are visits, and these other tables. */
    public boolean isOfVisitsAnd(Set<String> others) {
        return tables().stream().allMatch(table -> VisitRows.TABLES.contains(table) || others.contains(table));
    }

    /** The rows of a table that are there after it, as far as they are told one by one. */
    public List<Touched> touched(String table) {
        return after.lines()
                .filter(line -> line.startsWith(table + " "))
                .map(Touched::of)
                .toList();
    }
}
