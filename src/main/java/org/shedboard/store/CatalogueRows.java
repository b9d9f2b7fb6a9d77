package org.shedboard.store;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shedboard.estimate.Catalogue;
import org.shedboard.estimate.Spreads;
import org.shedboard.estimate.Usual;
import org.shedboard.shop.WorkKind;

/** What the catalogue says of everything, in the tables catalogue, spread and usual_task; the rest stands beside. */
final class CatalogueRows {
    private static final Table CATALOGUE = Table.named("catalogue")
            .number("id", "test_drive_minutes", "sign_off_minutes")
            .real("machine_spread", "person_spread")
            .keyed("id");
    private static final Table SPREAD =
            Table.named("spread").text("kind").real("deviation").keyed("kind");
    private static final Table USUAL =
            Table.named("usual_task").text("task", "name", "caution").keyed("task");

    private CatalogueRows() {}

    static Optional<Catalogue> find(Sql sql) {
        return sql.select(CATALOGUE, "").stream().findFirst().map(row -> row.map(catalogue -> read(sql, catalogue)));
    }

    private static Catalogue read(Sql sql, Cells catalogue) {
        return new Catalogue(
                ClassRows.read(sql),
                WorkRows.read(sql),
                readUsual(sql),
                new Spreads(readSpreads(sql), catalogue.real("machine_spread"), catalogue.real("person_spread")),
                catalogue.number("test_drive_minutes"),
                catalogue.number("sign_off_minutes"),
                PartRows.items(sql));
    }

    private static Map<Usual, Usual.Words> readUsual(Sql sql) {
        Map<Usual, Usual.Words> usual = new EnumMap<>(Usual.class);
        for (Cells row : sql.select(USUAL, "")) {
            usual.put(
                    row.map(task -> task.one(Usual.class, "task")),
                    new Usual.Words(row.text("name"), row.text("caution")));
        }
        return usual;
    }

    private static Map<WorkKind, Double> readSpreads(Sql sql) {
        Map<WorkKind, Double> spreads = new EnumMap<>(WorkKind.class);
        for (Cells row : sql.select(SPREAD, "")) {
            spreads.put(row.map(spread -> spread.one(WorkKind.class, "kind")), row.real("deviation"));
        }
        return spreads;
    }

    static List<Share> shares(Catalogue catalogue) {
        Spreads spreads = catalogue.spreads();
        Cells itself = Cells.in(CATALOGUE)
                .set("id", 1)
                .set("test_drive_minutes", catalogue.testDriveMinutes())
                .set("sign_off_minutes", catalogue.signOffMinutes())
                .set("machine_spread", spreads.machine())
                .set("person_spread", spreads.person());
        List<Share> parts = new ArrayList<>();
        parts.add(Share.whole(CATALOGUE, List.of(itself)));
        parts.add(Share.whole(SPREAD, spreads(spreads)));
        parts.add(Share.whole(USUAL, usual(catalogue)));
        parts.add(PartRows.shareOfItems(catalogue.items()));
        parts.addAll(ClassRows.shares(catalogue.classes()));
        parts.addAll(WorkRows.shares(catalogue.works()));
        return parts;
    }

    private static List<Cells> spreads(Spreads spreads) {
        return Arrays.stream(WorkKind.values())
                .map(kind -> Cells.in(SPREAD).set("kind", kind).set("deviation", spreads.of(kind)))
                .toList();
    }

    private static List<Cells> usual(Catalogue catalogue) {
        return Arrays.stream(Usual.values())
                .map(task -> Cells.in(USUAL)
                        .set("task", task)
                        .set("name", catalogue.usual().get(task).name())
                        .set("caution", catalogue.usual().get(task).caution()))
                .toList();
    }
}
