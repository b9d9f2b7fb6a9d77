package org.shedboard.day;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.shedboard.estimate.Item;
import org.shedboard.register.Order;
import org.shedboard.register.Shelf;
import org.shedboard.shop.Amount;
import org.shedboard.shop.Promise;
import org.shedboard.shop.Visit;

/**
 * The parts on the shelf and on order, given out to the tasks that need them.
 *
 * <p>What somebody has in hand comes first; then task by task in the order of the posted plan, and those that are not in it by promise
 * and arrival. Each takes what is still there and waits for the rest: for orders as they are due, and where too little is ordered, for
 * as long as ordering it now would usually take. While it is open which of two items a part is, both are set aside, so that no time is
 * said that only one of them would keep.
 *
 * <p>What comes earlier goes to what the plan has earlier. So a plan whose tasks have their parts, however these were given out when it
 * was found, still has them once it is posted and they are given out in its own order.
 */
public final class SetAside {
    /** An order that ought to have come is expected within the hour, as long as its day is not over; an invented figure. */
    private static final Duration OVERDUE = Duration.ofHours(1);

    /** Work that has not begun is not planned further ahead than four weeks; an invented figure. */
    private static final int FURTHEST = 28 * Roster.MINUTES_A_DAY;

    private final Day day;
    private final Instant now;
    private final Map<String, Supply> supplies = new HashMap<>();
    private final List<Cover> covers = new ArrayList<>();

    /** What is left of one item: on the shelf, and of each order. */
    private static final class Supply {
        private Amount onShelf;
        private final List<Order> orders;

        Supply(Amount onShelf, List<Order> orders) {
            this.onShelf = onShelf;
            this.orders = new ArrayList<>(orders);
        }

        Amount takeFromShelf(Amount wanted) {
            Amount taken = wanted.atMost(onShelf.atLeast(Amount.NOTHING));
            onShelf = onShelf.minus(taken);
            return taken;
        }

        /** The order with which the last of it comes; empty where too little is ordered. */
        Optional<Order> takeFromOrders(Amount wanted) {
            Amount left = wanted;
            while (left.isPositive() && !orders.isEmpty()) {
                Order next = orders.remove(0);
                Amount taken = left.atMost(next.amount());
                left = left.minus(taken);
                Amount rest = next.amount().minus(taken);
                if (rest.isPositive()) {
                    orders.add(0, new Order(next.id(), next.itemId(), rest, next.ordered(), next.due(), next.come()));
                }
                if (!left.isPositive()) {
                    return Optional.of(next);
                }
            }
            return Optional.empty();
        }
    }

    private SetAside(Day day, Instant now) {
        this.day = day;
        this.now = now;
        day.visits().stream()
                .filter(visit -> visit.state().isOpen())
                .flatMap(visit -> Needs.of(day, visit).stream())
                .filter(need -> !need.task().isDone())
                .sorted(turn())
                .forEach(this::cover);
    }

    public static SetAside of(Day day, Instant now) {
        return new SetAside(day, now);
    }

    private Comparator<Need> turn() {
        Map<String, Integer> starts = new HashMap<>();
        day.posted()
                .ifPresent(posted -> posted.plan()
                        .tasks()
                        .forEach(time -> starts.put(time.job() + " " + time.task(), time.start())));
        return Comparator.comparing((Need need) -> !need.task().hasBegun())
                .thenComparing(need -> starts.getOrDefault(nameOf(need), Integer.MAX_VALUE))
                .thenComparing(need -> need.visit().promise().map(Promise::at).orElse(Instant.MAX))
                .thenComparing(need -> need.visit().intake().arrives())
                .thenComparing(need -> need.visit().id());
    }

    private static String nameOf(Need need) {
        return need.visit().id() + " " + need.task().id();
    }

    private void cover(Need need) {
        need.itemIds().forEach(itemId -> covers.add(cover(need, itemId)));
    }

    private Cover cover(Need need, String itemId) {
        Shelf shelf = day.books().shelf();
        if (shelf.findStock(itemId).isEmpty()) {
            return new Cover(need, itemId, Cover.State.NOT_COUNTED, Amount.NOTHING, Optional.empty());
        }
        Supply supply = supplies.computeIfAbsent(
                itemId,
                id -> new Supply(shelf.findStock(id).orElseThrow().amount(), inOrderOfComing(shelf.openOrdersOf(id))));
        Amount there = supply.takeFromShelf(need.amount());
        Amount missing = need.amount().minus(there);
        if (!missing.isPositive()) {
            return new Cover(need, itemId, Cover.State.ON_SHELF, there, Optional.empty());
        }
        return supply.takeFromOrders(missing)
                .map(order -> new Cover(need, itemId, Cover.State.ON_ORDER, there, Optional.of(expected(order.due()))))
                .orElseGet(() ->
                        new Cover(need, itemId, Cover.State.NOT_ORDERED, there, Optional.of(ifOrderedNow(itemId))));
    }

    private List<Order> inOrderOfComing(List<Order> orders) {
        return orders.stream()
                .sorted(Comparator.comparing(order -> expected(order.due())))
                .toList();
    }

    private Instant expected(Instant due) {
        if (due.isAfter(now)) {
            return due;
        }
        boolean isOfToday = LocalDate.ofInstant(due, day.zone()).equals(day.date());
        return isOfToday ? now.plus(OVERDUE) : Mornings.of(day.shop(), Mornings.dateAfter(day.shop(), day.date(), 1));
    }

    /** The morning on which what is ordered today usually comes. */
    static Instant usuallyHere(Day day, String itemId) {
        int days = day.books().catalogue().findItem(itemId).map(Item::orderDays).orElse(0);
        return Mornings.of(day.shop(), Mornings.dateAfter(day.shop(), day.date(), days));
    }

    /** Not before what is on order already: what is ordered later does not come earlier. */
    private Instant ifOrderedNow(String itemId) {
        Instant morning = usuallyHere(day, itemId);
        return Stream.concat(
                        Stream.of(now, morning),
                        day.books().shelf().openOrdersOf(itemId).stream().map(order -> expected(order.due())))
                .max(Comparator.naturalOrder())
                .orElseThrow();
    }

    /** Every part that an open task needs, in the order in which they are given out. */
    public List<Cover> covers() {
        return List.copyOf(covers);
    }

    public List<Cover> of(Visit visit) {
        return covers.stream()
                .filter(cover -> cover.need().visit().id().equals(visit.id()))
                .toList();
    }

    /** The minute of the day from which all parts of a task can be here; empty where it waits for none. */
    OptionalInt notBefore(String visitId, String taskId) {
        return covers.stream()
                .filter(cover -> cover.need().visit().id().equals(visitId)
                        && cover.need().task().id().equals(taskId))
                .flatMap(cover -> cover.from().stream())
                .mapToInt(day::minuteOf)
                .max();
    }

    /** The minute from which all parts are here that work waits for, those left out that a plan would not look so far ahead for. */
    int allBy() {
        return covers.stream()
                .filter(Cover::isShort)
                .filter(cover -> cover.need().visit().hasBegun() || minuteOf(cover) < FURTHEST)
                .mapToInt(this::minuteOf)
                .max()
                .orElse(0);
    }

    private int minuteOf(Cover cover) {
        return day.minuteOf(cover.from().orElse(now));
    }
}
