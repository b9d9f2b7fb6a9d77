package org.shedboard.store;

import java.util.Collection;
import java.util.List;
import org.shedboard.register.Movement;
import org.shedboard.register.Order;
import org.shedboard.register.Shelf;
import org.shedboard.register.Stock;
import org.shedboard.shop.Amount;

/** What is on the shelf and on order, and how it got there, in the tables stock, part_order and stock_movement. */
final class ShelfRows {
    private static final Table STOCK = Table.named("stock")
            .text("item_id", "bin")
            .wide("amount")
            .keyed("item_id")
            .scoped("item_id");
    private static final Table ORDER = Table.named("part_order")
            .text("id", "item_id")
            .wide("amount")
            .instant("ordered_at", "due_at", "come_at")
            .keyed("id")
            .scoped("id");
    private static final Table MOVEMENT = Table.named("stock_movement")
            .text("id", "item_id", "kind")
            .wide("change_amount")
            .instant("moved_at")
            .text("moved_by", "source_id")
            .keyed("id")
            .scoped("id");

    private ShelfRows() {}

    /** What is there, and what is waited for. */
    static Shelf read(Sql sql) {
        return new Shelf(
                sql.select(STOCK, "ORDER BY item_id").stream()
                        .map(row -> row.map(ShelfRows::toStock))
                        .toList(),
                sql.select(ORDER, "WHERE come_at IS NULL ORDER BY due_at, id").stream()
                        .map(row -> row.map(ShelfRows::toOrder))
                        .toList());
    }

    static List<Movement> movementsOf(Sql sql, String itemId) {
        return sql.select(MOVEMENT, "WHERE item_id = ? ORDER BY moved_at, id", itemId).stream()
                .map(row -> row.map(ShelfRows::toMovement))
                .toList();
    }

    private static Stock toStock(Cells row) {
        return new Stock(row.text("item_id"), row.text("bin"), new Amount(row.wide("amount")));
    }

    private static Order toOrder(Cells row) {
        return new Order(
                row.text("id"),
                row.text("item_id"),
                new Amount(row.wide("amount")),
                row.instant("ordered_at"),
                row.instant("due_at"),
                row.findInstant("come_at"));
    }

    private static Movement toMovement(Cells row) {
        return new Movement(
                row.text("id"),
                row.text("item_id"),
                row.one(Movement.Kind.class, "kind"),
                new Amount(row.wide("change_amount")),
                row.instant("moved_at"),
                row.text("moved_by"),
                row.findText("source_id"));
    }

    static Share shareOfStock(Collection<Stock> stock) {
        List<Cells> rows = stock.stream()
                .map(each -> Cells.in(STOCK)
                        .set("item_id", each.itemId())
                        .set("bin", each.bin())
                        .set("amount", each.amount().thousandths()))
                .toList();
        return Share.of(STOCK, stock.stream().map(Stock::itemId).toList(), rows);
    }

    static Share shareOfOrders(Collection<Order> orders) {
        return Share.of(
                ORDER,
                orders.stream().map(Order::id).toList(),
                orders.stream().map(ShelfRows::cells).toList());
    }

    private static Cells cells(Order order) {
        return Cells.in(ORDER)
                .set("id", order.id())
                .set("item_id", order.itemId())
                .set("amount", order.amount().thousandths())
                .set("ordered_at", order.ordered())
                .set("due_at", order.due())
                .set("come_at", order.come());
    }

    static Share shareOfMovements(Collection<Movement> movements) {
        return Share.of(
                MOVEMENT,
                movements.stream().map(Movement::id).toList(),
                movements.stream().map(ShelfRows::cells).toList());
    }

    private static Cells cells(Movement movement) {
        return Cells.in(MOVEMENT)
                .set("id", movement.id())
                .set("item_id", movement.itemId())
                .set("kind", movement.kind())
                .set("change_amount", movement.change().thousandths())
                .set("moved_at", movement.at())
                .set("moved_by", movement.by())
                .set("source_id", movement.source());
    }
}
