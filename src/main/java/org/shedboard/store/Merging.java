package org.shedboard.store;

import java.util.List;
import org.shedboard.register.Merged;

/** A record of a machine going into another: everything that names it goes along. */
final class Merging {
    /** All tables that name machines in a column machine_id, with their keys; one that comes to do so belongs here. */
    private static final List<Table> NAMING = List.of(
            Table.named("visit").text("id", "machine_id").keyed("id"),
            Table.named("notice_taken").text("id", "machine_id").keyed("id"),
            Table.named("loan").text("id", "machine_id").keyed("id"),
            Table.named("meter_reading").text("id", "machine_id").keyed("id"),
            Table.named("rung").text("id", "machine_id").keyed("id"));

    private static final String COLUMN = "machine_id";

    private final Merged merged;

    private Merging(Merged merged) {
        this.merged = merged;
    }

    static Merging of(Merged merged) {
        return new Merging(merged);
    }

    void move(Sql sql, Difference difference) {
        NAMING.forEach(
                table -> difference.rename(sql, table, COLUMN, merged.machine().id(), merged.into()));
    }
}
