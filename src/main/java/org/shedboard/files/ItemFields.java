package org.shedboard.files;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.shedboard.estimate.Item;
import org.shedboard.shop.Unit;

/** The items of a catalogue file: what lies on the shelf, and how it is counted. */
final class ItemFields {
    /** Half a year of working days; an order that takes longer is a slip of the finger. */
    private static final int LONGEST_DAYS = 130;

    private static final String PIECES = "each";

    private final Map<String, String> seen = new HashMap<>();
    private final Map<String, Item> items = new LinkedHashMap<>();

    /** Reads them all before anything refers to them. */
    ItemFields(Fields root) {
        root.objectsOrNone("items", this::item).forEach(item -> items.putIfAbsent(item.id(), item));
    }

    private Item item(Fields fields) {
        String id = fields.filled("id");
        fields.unique("id", id, seen);
        return new Item(
                id,
                fields.filled("name"),
                unit(fields),
                fields.whole("orderDays", 0, LONGEST_DAYS),
                fields.flag("disposable", false));
    }

    private static Unit unit(Fields fields) {
        String text = fields.text("unit");
        Optional<Unit> unit = Stream.of(Unit.values())
                .filter(each -> nameOf(each).equals(text))
                .findFirst();
        if (unit.isEmpty() && !Fields.isUnread(text)) {
            String all = String.join(
                    ", ", Stream.of(Unit.values()).map(ItemFields::nameOf).toList());
            fields.fault("unit", "\"%s\" is not one of %s".formatted(text, all));
        }
        return unit.orElse(Unit.EACH);
    }

    static String nameOf(Unit unit) {
        return unit == Unit.EACH ? PIECES : unit.symbol();
    }

    List<Item> all() {
        return List.copyOf(items.values());
    }

    /** The item that a field names; a name that no item has is a fault. */
    Optional<Item> find(Fields fields, String name) {
        Optional<String> id = fields.findText(name);
        id.ifPresent(each -> fields.known(name, each, items.keySet(), "item"));
        return id.map(items::get);
    }
}
