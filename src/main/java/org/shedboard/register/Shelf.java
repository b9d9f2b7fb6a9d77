package org.shedboard.register;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The parts on the shelf and on order.
 *
 * @param stock the items that somebody has counted, each once
 * @param orders what is waited for, and what came since the day was read
 */
public record Shelf(List<Stock> stock, List<Order> orders) {
    public static final Shelf EMPTY = new Shelf(List.of(), List.of());

    public Shelf {
        stock = List.copyOf(stock);
        orders = List.copyOf(orders);
    }

    /** Empty where nobody has counted it. */
    public Optional<Stock> findStock(String itemId) {
        return stock.stream().filter(each -> each.itemId().equals(itemId)).findFirst();
    }

    public Optional<Order> findOrder(String id) {
        return orders.stream().filter(order -> order.id().equals(id)).findFirst();
    }

    /** What is waited for of an item, the earliest first. */
    public List<Order> openOrdersOf(String itemId) {
        return orders.stream()
                .filter(order -> order.isOpen() && order.itemId().equals(itemId))
                .sorted(Comparator.comparing(Order::due))
                .toList();
    }

    public Shelf with(Stock next) {
        return new Shelf(replaced(stock, next, Stock::itemId), orders);
    }

    public Shelf with(Order next) {
        return new Shelf(stock, replaced(orders, next, Order::id));
    }

    private static <T> List<T> replaced(List<T> all, T value, Function<T, String> id) {
        List<T> next = new ArrayList<>(all);
        next.removeIf(each -> id.apply(each).equals(id.apply(value)));
        next.add(value);
        return next;
    }
}
