package org.shedboard.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shedboard.estimate.Item;
import org.shedboard.estimate.Point;
import org.shedboard.estimate.Work;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Step;

/** The inspection points of a catalogue file, and whether the works they name are there: works are read after them. */
final class PointFields {
    private static final double FURTHEST_LIMIT = 1_000_000;

    private final ItemFields items;
    private final List<Mending> mendings = new ArrayList<>();

    /** A point that names the work by which it is put right, with the object it was read from. */
    private record Mending(Fields fields, String classId, String workId) {
        void check(List<Work> works) {
            fields.known("fixedBy", workId, works.stream().map(Work::id).toList(), "work");
            works.stream()
                    .filter(work -> work.id().equals(workId) && !work.classes().isEmpty() && !work.isFor(classId))
                    .findFirst()
                    .ifPresent(
                            work -> fields.fault("fixedBy", "\"%s\" is no work for a %s".formatted(workId, classId)));
        }
    }

    PointFields(ItemFields items) {
        this.items = items;
    }

    /** @param seen where the ids of the class were used first */
    Point read(Fields fields, String classId, Map<String, String> seen) {
        String id = fields.filled("id");
        fields.unique("id", id, seen);
        Step step = fields.oneOf("step", Step.class);
        if (CatalogueFile.isWash(fields)) {
            fields.fault("step", "nothing is inspected on the wash pad");
        }
        Optional<String> fixedBy = fields.findText("fixedBy");
        fixedBy.ifPresent(work -> mendings.add(new Mending(fields, classId, work)));
        return new Point(
                id,
                fields.filled("name"),
                fields.filled("where"),
                step,
                fields.oneOf("due", Depth.class),
                fields.whole("inspectMinutes", 1, CatalogueFile.LONGEST_MINUTES),
                CatalogueFile.byMud(fields, "uncoverMinutes"),
                fields.findText("caution").orElse(""),
                fields.flag("stopsRiding", false),
                fields.findObject("measure", PointFields::measure),
                fixedBy,
                renewedWith(fields));
    }

    private Optional<String> renewedWith(Fields fields) {
        Optional<Item> item = items.find(fields, "renewedWith");
        if (item.filter(each -> !each.isDisposable()).isPresent()) {
            fields.fault(
                    "renewedWith", "%s is not disposable".formatted(item.get().id()));
        }
        return item.map(Item::id);
    }

    private static Point.Measure measure(Fields fields) {
        String unit = fields.filled("unit");
        double low = fields.decimal("low", -FURTHEST_LIMIT, FURTHEST_LIMIT);
        double high = fields.decimal("high", -FURTHEST_LIMIT, FURTHEST_LIMIT);
        if (high < low) {
            fields.fault("high", "is below \"low\"");
        }
        return new Point.Measure(unit, low, high);
    }

    /** Finds points that name a work that is not there, or not for their class. */
    void checkMending(List<Work> works) {
        mendings.forEach(mending -> mending.check(works));
    }
}
