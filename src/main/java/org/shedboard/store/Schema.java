package org.shedboard.store;

import java.util.ArrayList;
import java.util.List;

/** The migrations this program has beside those a database has had. */
final class Schema {
    private static final Table HISTORY = Table.named("schema_history")
            .number("version")
            .text("name", "checksum")
            .keyed("version");

    private final List<Migration> known;

    Schema(List<Migration> known) {
        this.known = List.copyOf(known);
    }

    List<Migration> all() {
        return known;
    }

    /** The number of the newest step that this program has. */
    int newest() {
        return known.stream().mapToInt(Migration::version).max().orElse(0);
    }

    /** As it was when that step was the newest. */
    Schema upTo(int version) {
        return new Schema(
                known.stream().filter(each -> each.version() <= version).toList());
    }

    /** What is still to be applied, after seeing that what was applied is ours. */
    List<Migration> missing(Sql sql) {
        List<Migration> missing = new ArrayList<>(known);
        for (Cells applied : applied(sql)) {
            missing.remove(expectKnown(applied));
        }
        return missing;
    }

    /** The number of the newest step that a database has had; 0 when it has had none. */
    static int version(Sql sql) {
        return applied(sql).stream()
                .mapToInt(row -> row.number("version"))
                .max()
                .orElse(0);
    }

    /** Whether nothing was ever applied to a database that misses these. */
    boolean isNew(List<Migration> missing) {
        return missing.size() == known.size();
    }

    /** Asks for the rows at once: looking first whether the table is there costs a tenth of a second at every start. */
    private static List<Cells> applied(Sql sql) {
        try {
            return sql.select(HISTORY, "ORDER BY version");
        } catch (StoreFailure failure) {
            if (failure.isMissingTable()) {
                return List.of();
            }
            throw failure;
        }
    }

    private Migration expectKnown(Cells applied) {
        int version = applied.number("version");
        Migration migration = known.stream()
                .filter(each -> each.version() == version)
                .findFirst()
                .orElseThrow(() -> new StoreFailure(
                        StoreFailure.Kind.NEWER,
                        "these records were written by a newer program (schema %s, this one knows %s); use that one"
                                .formatted(version, newest())));
        if (!migration.checksum().equals(applied.text("checksum"))) {
            throw new StoreFailure(
                    StoreFailure.Kind.ALTERED,
                    "schema step %s (%s) is not the one these records were made with; use the program that made them"
                            .formatted(version, migration.name()));
        }
        return migration;
    }

    /** Applies one migration; its statements commit one by one, so it can be applied again after a break. */
    void apply(Sql sql, Migration migration) {
        migration.statements().forEach(sql::run);
        sql.inOne(one -> {
            note(one, migration);
            return null;
        });
    }

    /** Says in the records that they have this one. */
    void note(Sql sql, Migration migration) {
        Cells row = Cells.in(HISTORY)
                .set("version", migration.version())
                .set("name", migration.name())
                .set("checksum", migration.checksum());
        sql.batch(HISTORY.insert(), HISTORY.insertOrder(), List.of(row));
    }
}
