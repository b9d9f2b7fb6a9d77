package org.shedboard.files;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.shedboard.estimate.Catalogue;
import org.shedboard.estimate.Item;
import org.shedboard.register.Stock;
import org.shedboard.shop.Amount;

/** What lies on a shelf, as a file says it; the items are those of a catalogue. */
final class StockFields {
    private final Catalogue catalogue;
    private final Map<String, String> seen = new HashMap<>();

    StockFields(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    Stock read(Fields fields) {
        Optional<Item> item = item(fields);
        String id = item.map(Item::id).orElse("?");
        item.ifPresent(known -> fields.unique("item", id, seen));
        return new Stock(id, fields.findText("bin").orElse(""), amount(fields, item));
    }

    Optional<Item> item(Fields fields) {
        String id = fields.filled("item");
        fields.known("item", id, catalogue.items().stream().map(Item::id).toList(), "item");
        return catalogue.findItem(id);
    }

    Amount amount(Fields fields, Optional<Item> item) {
        String text = fields.text("amount");
        Optional<Amount> amount = Amount.find(text)
                .filter(read -> item.filter(known -> !known.unit().takes(read)).isEmpty());
        if (amount.isEmpty() && !Fields.isUnread(text)) {
            fields.fault("amount", "\"%s\" is no amount of it".formatted(Fields.brief(text)));
        }
        return amount.orElse(Amount.NOTHING);
    }
}
