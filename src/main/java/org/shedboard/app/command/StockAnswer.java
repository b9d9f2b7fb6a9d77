package org.shedboard.app.command;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.shedboard.board.PartWords;
import org.shedboard.day.Clocks;
import org.shedboard.day.Day;
import org.shedboard.day.ShelfRow;
import org.shedboard.register.Order;
import org.shedboard.register.Stock;
import org.shedboard.shop.Amount;
import org.shedboard.words.Words;

/** The shelf, said: what is short first, then bin by bin. */
final class StockAnswer {
    private final Day day;
    private final List<ShelfRow> rows;

    private StockAnswer(Seen seen) {
        this.day = seen.day();
        this.rows = ShelfRow.of(seen.outlook());
    }

    static Answer of(Seen seen) {
        StockAnswer answer = new StockAnswer(seen);
        Tree tree =
                new Tree().put("items", answer.rows.stream().map(answer::tree).toList());
        return new Answer(answer.lines(), tree.fields());
    }

    private List<String> lines() {
        if (rows.isEmpty()) {
            return List.of(Words.say("shelf.no_items"));
        }
        Table table = new Table("lllrrrrl")
                .row(
                        Words.say("shelf.id"),
                        Words.say("shelf.item"),
                        Words.say("shelf.bin"),
                        Words.say("shelf.there"),
                        Words.say("shelf.today"),
                        Words.say("shelf.tomorrow"),
                        Words.say("shelf.short"),
                        Words.say("shelf.on_order"));
        rows.forEach(row -> line(table, row));
        return table.lines();
    }

    private void line(Table table, ShelfRow row) {
        table.row(
                row.item().id(),
                row.item().name(),
                row.stock().map(Stock::bin).orElse(""),
                row.stock()
                        .map(stock -> PartWords.amount(row.item(), stock.amount()))
                        .orElse(Words.say("shelf.not_counted")),
                row.today().toString(),
                row.tomorrow().toString(),
                row.missing().toString(),
                row.orders().stream().map(this::order).collect(Collectors.joining(", ")));
    }

    private String order(Order order) {
        return order.id() + ": " + Words.say("shelf.order", order.amount(), Clocks.sayTime(day, order.due()));
    }

    private Map<String, Object> tree(ShelfRow row) {
        return new Tree()
                .put("item", row.item().id())
                .put("name", row.item().name())
                .put("unit", row.item().unit())
                .put("bin", row.stock().map(Stock::bin))
                .put("there", row.stock().map(Stock::amount).map(Amount::toString))
                .put("today", row.today().toString())
                .put("tomorrow", row.tomorrow().toString())
                .put("short", row.missing().toString())
                .put("notOrdered", row.notOrdered().toString())
                .put("orders", row.orders().stream().map(this::tree).toList())
                .fields();
    }

    private Map<String, Object> tree(Order order) {
        return new Tree()
                .put("order", order.id())
                .put("amount", order.amount().toString())
                .put("ordered", Tree.time(day, order.ordered()))
                .put("due", Tree.time(day, order.due()))
                .fields();
    }
}
