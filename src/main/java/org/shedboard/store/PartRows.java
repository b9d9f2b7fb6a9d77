package org.shedboard.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.shedboard.estimate.Item;
import org.shedboard.estimate.Variant;
import org.shedboard.estimate.Work;
import org.shedboard.estimate.WorkPart;
import org.shedboard.shop.NumberRange;
import org.shedboard.shop.Unit;

/** What lies on the shelf and which parts of the work on offer it can be, in the tables item, work_part and part_variant. */
final class PartRows {
    private static final Table ITEM = Table.named("item")
            .text("id")
            .number("ordinal")
            .text("name", "unit")
            .number("order_days")
            .flag("disposable")
            .keyed("id");
    private static final Table PART = Table.named("work_part")
            .text("work_id")
            .number("ordinal")
            .text("name", "quantity", "task_id")
            .keyed("work_id", "ordinal");
    private static final Table VARIANT = Table.named("part_variant")
            .text("work_id")
            .number("part_ordinal", "ordinal")
            .text("item_id", "classes")
            .number("year_from", "year_to")
            .text("prefix")
            .wide("number_from", "number_to")
            .keyed("work_id", "part_ordinal", "ordinal");

    private final Children parts;
    private final Children variants;

    private PartRows(Children parts, Children variants) {
        this.parts = parts;
        this.variants = variants;
    }

    static PartRows read(Sql sql) {
        return new PartRows(
                Children.of(sql.select(PART, "ORDER BY work_id, ordinal"), "work_id"),
                Children.of(sql.select(VARIANT, "ORDER BY work_id, part_ordinal, ordinal"), "work_id"));
    }

    List<WorkPart> partsOf(String workId) {
        return parts.map(workId, row -> toPart(workId, row));
    }

    private WorkPart toPart(String workId, Cells row) {
        int ordinal = row.number("ordinal");
        List<Variant> own = variants.of(workId).stream()
                .filter(variant -> variant.number("part_ordinal") == ordinal)
                .map(variant -> variant.map(PartRows::toVariant))
                .toList();
        return new WorkPart(
                row.text("name"), row.text("quantity"), row.findText("task_id").orElse(""), own);
    }

    private static Variant toVariant(Cells row) {
        return new Variant(row.text("item_id"), Set.copyOf(row.list("classes")), toRange(row));
    }

    private static Variant.Range toRange(Cells row) {
        Optional<String> prefix = row.findText("prefix");
        return prefix.isPresent()
                ? new Variant.Serials(
                        new NumberRange(prefix.get(), row.findWide("number_from"), row.findWide("number_to")))
                : new Variant.Years(row.findNumber("year_from"), row.findNumber("year_to"));
    }

    static List<Item> items(Sql sql) {
        return sql.select(ITEM, "ORDER BY ordinal").stream()
                .map(row -> row.map(PartRows::toItem))
                .toList();
    }

    private static Item toItem(Cells row) {
        return new Item(
                row.text("id"),
                row.text("name"),
                row.one(Unit.class, "unit"),
                row.number("order_days"),
                row.flag("disposable"));
    }

    static Share shareOfItems(List<Item> items) {
        List<Cells> rows = new ArrayList<>();
        items.forEach(item -> rows.add(Cells.in(ITEM)
                .set("id", item.id())
                .set("ordinal", rows.size())
                .set("name", item.name())
                .set("unit", item.unit())
                .set("order_days", item.orderDays())
                .set("disposable", item.isDisposable())));
        return Share.whole(ITEM, rows);
    }

    /** The parts of works that are saved. */
    static List<Share> shares(List<Work> works) {
        List<Cells> rows = new ArrayList<>();
        List<Cells> known = new ArrayList<>();
        for (Work work : works) {
            for (WorkPart part : work.parts()) {
                part.variants().forEach(variant -> known.add(cells(work.id(), rows.size(), variant, known.size())));
                rows.add(cells(work.id(), part, rows.size()));
            }
        }
        return List.of(Share.whole(PART, rows), Share.whole(VARIANT, known));
    }

    private static Cells cells(String workId, WorkPart part, int ordinal) {
        return Cells.in(PART)
                .set("work_id", workId)
                .set("ordinal", ordinal)
                .set("name", part.name())
                .set("quantity", part.quantity())
                .set("task_id", part.taskId().isEmpty() ? Optional.empty() : Optional.of(part.taskId()));
    }

    private static Cells cells(String workId, int part, Variant variant, int ordinal) {
        Cells cells = Cells.in(VARIANT)
                .set("work_id", workId)
                .set("part_ordinal", part)
                .set("ordinal", ordinal)
                .set("item_id", variant.itemId())
                .set("classes", variant.classes().stream().sorted().toList());
        return withRange(cells, variant.range());
    }

    private static Cells withRange(Cells cells, Variant.Range range) {
        if (range instanceof Variant.Serials serials) {
            NumberRange numbers = serials.numbers();
            return cells.set("prefix", numbers.prefix())
                    .set("number_from", numbers.from())
                    .set("number_to", numbers.to())
                    .set("year_from", Optional.empty())
                    .set("year_to", Optional.empty());
        }
        Variant.Years years = (Variant.Years) range;
        return cells.set("prefix", Optional.empty())
                .set("number_from", OptionalLong.empty())
                .set("number_to", OptionalLong.empty())
                .set("year_from", years.from())
                .set("year_to", years.to());
    }
}
