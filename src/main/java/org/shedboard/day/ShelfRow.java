package org.shedboard.day;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import org.shedboard.estimate.Item;
import org.shedboard.register.Order;
import org.shedboard.register.Stock;
import org.shedboard.shop.Amount;

/**
 * One item of the shelf beside what the plan does with it.
 *
 * @param stock where it lies and how much; empty where nobody has counted it
 * @param today what the plan uses of it today, what is in hand included; of every item that a part can be while that is open
 * @param tomorrow what it uses on the next working day
 * @param missing what open work needs beyond what is there
 * @param orders what is waited for, the earliest first
 */
public record ShelfRow(
        Item item, Optional<Stock> stock, Amount today, Amount tomorrow, Amount missing, List<Order> orders) {
    public ShelfRow {
        orders = List.copyOf(orders);
    }

    /** What is not even on order of what open work needs. */
    public Amount notOrdered() {
        Amount ordered = orders.stream().map(Order::amount).reduce(Amount.NOTHING, Amount::plus);
        return missing.minus(ordered).atLeast(Amount.NOTHING);
    }

    /** Every item: what is short comes first, then bin by bin, and what nobody has counted last. */
    public static List<ShelfRow> of(Outlook outlook) {
        Day day = outlook.day();
        LocalDate tomorrow = Mornings.dateAfter(day.shop(), day.date(), 1);
        List<Cover> covers = SetAside.of(day, outlook.at()).covers();
        List<ShelfRow> rows = new ArrayList<>();
        for (Item item : day.books().catalogue().items()) {
            List<Cover> own = covers.stream()
                    .filter(cover -> cover.itemId().equals(item.id()))
                    .toList();
            rows.add(new ShelfRow(
                    item,
                    day.books().shelf().findStock(item.id()),
                    sum(
                            own,
                            cover -> isOn(outlook, cover, day.date()),
                            cover -> cover.need().amount()),
                    sum(
                            own,
                            cover -> isOn(outlook, cover, tomorrow),
                            cover -> cover.need().amount()),
                    sum(own, Cover::isShort, Cover::missing),
                    day.books().shelf().openOrdersOf(item.id())));
        }
        rows.sort(Comparator.comparing((ShelfRow row) -> !row.missing().isPositive())
                .thenComparing(row -> row.stock().isEmpty())
                .thenComparing(row -> row.stock().map(Stock::bin).orElse("")));
        return rows;
    }

    private static Amount sum(List<Cover> covers, Predicate<Cover> which, Function<Cover, Amount> amount) {
        return covers.stream().filter(which).map(amount).reduce(Amount.NOTHING, Amount::plus);
    }

    private static boolean isOn(Outlook outlook, Cover cover, LocalDate date) {
        return outlook.dateOf(cover.need()).filter(date::equals).isPresent();
    }
}
