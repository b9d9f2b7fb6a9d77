package org.shedboard.store;

import java.util.Collection;
import java.util.List;
import org.shedboard.hours.Activity.OtherWork;
import org.shedboard.hours.Errand;

/** Other work that is planned, in the table errand. */
final class ErrandRows {
    private static final Table ERRAND = Table.named("errand")
            .text("id", "person_id", "other_kind")
            .instant("from_at")
            .number("minutes")
            .text("note", "state")
            .keyed("id")
            .scoped("id");

    private static final String OPEN = "WHERE state = ? OR state = ? ORDER BY from_at, id";

    private ErrandRows() {}

    static List<Errand> open(Sql sql) {
        return sql.select(ERRAND, OPEN, Errand.State.PLANNED.name(), Errand.State.BEGUN.name()).stream()
                .map(row -> row.map(ErrandRows::toErrand))
                .toList();
    }

    private static Errand toErrand(Cells row) {
        return new Errand(
                row.text("id"),
                row.text("person_id"),
                row.one(OtherWork.Kind.class, "other_kind"),
                row.instant("from_at"),
                row.number("minutes"),
                row.text("note"),
                row.one(Errand.State.class, "state"));
    }

    static Share share(Collection<Errand> errands) {
        return Share.of(
                ERRAND,
                errands.stream().map(Errand::id).toList(),
                errands.stream().map(ErrandRows::cells).toList());
    }

    private static Cells cells(Errand errand) {
        return Cells.in(ERRAND)
                .set("id", errand.id())
                .set("person_id", errand.personId())
                .set("other_kind", errand.kind())
                .set("from_at", errand.from())
                .set("minutes", errand.minutes())
                .set("note", errand.note())
                .set("state", errand.state());
    }
}
