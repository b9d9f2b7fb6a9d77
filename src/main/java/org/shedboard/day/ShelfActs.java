package org.shedboard.day;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.shedboard.estimate.Item;
import org.shedboard.register.Movement;
import org.shedboard.register.Order;
import org.shedboard.register.Stock;
import org.shedboard.shop.Amount;
import org.shedboard.shop.Line;
import org.shedboard.shop.Part;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;

/** What happens at the shelf: parts are counted, ordered, come and are taken, and it is said which of two was fitted. */
final class ShelfActs {
    private final Draft draft;
    private final Instant now;

    ShelfActs(Draft draft, Instant now) {
        this.draft = draft;
        this.now = now;
    }

    Outcome fitPart(Act.FitPart act) {
        return draft.onVisit(act.visitId(), visit -> fitPart(act, visit));
    }

    private Outcome fitPart(Act.FitPart act, Visit visit) {
        Optional<Need> need = Needs.of(draft.day(), visit).stream()
                .filter(each -> each.part().name().equals(act.part()))
                .filter(each -> visit.findLine(act.lineId())
                        .filter(line -> isOf(line, each))
                        .isPresent())
                .findFirst();
        if (need.isEmpty()) {
            return new Outcome.Refused(Refusal.of("part_unknown", act.part(), Names.of(draft.day(), visit)));
        }
        Optional<Refusal> no = fitRefusal(act, need.get());
        if (no.isPresent()) {
            return new Outcome.Refused(no.get());
        }
        Visit said = fitted(visit, need.get(), act.itemId(), act.personId());
        draft.put(said);
        return draft.doneWith(said);
    }

    private Optional<Refusal> fitRefusal(Act.FitPart act, Need need) {
        if (draft.day().shop().findPerson(act.personId()).isEmpty()) {
            return Optional.of(Refusal.of("person_unknown", act.personId()));
        }
        if (need.task().isDone()) {
            return Optional.of(Refusal.of("task_done", need.task().name()));
        }
        return need.resolution().itemIds().contains(act.itemId())
                ? Optional.empty()
                : Optional.of(Refusal.of(
                        "item_not_of_part", draft.day().books().catalogue().nameOfItem(act.itemId()), act.part()));
    }

    /** Two lines that share the task share the part, so it is said of both. */
    private Visit fitted(Visit visit, Need need, String itemId, String by) {
        Part.Fitted said = new Part.Fitted(itemId, by, now);
        return visit.withLines(visit.lines().stream()
                .map(line -> isOf(line, need) ? with(line, need.part().name(), said) : line)
                .toList());
    }

    private static boolean isOf(Line line, Need need) {
        return need.task().lines().contains(line.id())
                || need.line().map(Line::id).filter(line.id()::equals).isPresent();
    }

    private static Line with(Line line, String part, Part.Fitted said) {
        return line.withParts(line.parts().stream()
                .map(each -> each.name().equals(part) ? each.with(said) : each)
                .toList());
    }

    /** Why a task cannot be over yet: it is not said which of several items went in. */
    Optional<Refusal> openRefusal(Visit visit, Task task) {
        return Needs.openOf(draft.day(), visit, task)
                .map(need -> Refusal.of("part_open", task.name(), need.part().name()));
    }

    /**
     * What a task that is over used is off the shelf, and its lines say which items went in. A task whose finish was taken back is
     * over a second time, so the moment is in the movement's id.
     */
    Visit take(Visit visit, Task task, String by) {
        Visit after = visit;
        List<Need> needs = Needs.of(draft.day(), visit, task);
        for (Need need : needs) {
            String itemId = need.itemId().orElseThrow();
            String id = "S-%s-%s-%s-%s".formatted(visit.id(), task.id(), needs.indexOf(need), now.toEpochMilli());
            takeOff(stockOf(itemId), id, need, by);
            after = need.line().isPresent() && need.part().fitted().isEmpty() ? fitted(after, need, itemId, by) : after;
        }
        return after;
    }

    private void takeOff(Optional<Stock> counted, String id, Need need, String by) {
        Amount less = Amount.NOTHING.minus(need.amount());
        Optional<String> visitId = Optional.of(need.visit().id());
        counted.ifPresent(
                stock -> move(stock, new Movement(id, stock.itemId(), Movement.Kind.TAKEN, less, now, by, visitId)));
    }

    private Optional<Stock> stockOf(String itemId) {
        return draft.day().books().shelf().findStock(itemId);
    }

    private Stock expectStock(String itemId) {
        return stockOf(itemId).orElse(new Stock(itemId, "", Amount.NOTHING));
    }

    private void move(Stock stock, Movement movement) {
        draft.put(stock.with(stock.amount().plus(movement.change())));
        draft.put(movement);
    }

    /** What moved off the shelf, or back onto it, is moved the other way: the rows of both stay. */
    void moveBack(Movement moved, String by) {
        Amount back = Amount.NOTHING.minus(moved.change());
        Movement.Kind kind = back.isPositive() ? Movement.Kind.PUT_BACK : Movement.Kind.TAKEN;
        move(
                expectStock(moved.itemId()),
                new Movement(draft.newId("S"), moved.itemId(), kind, back, now, by, moved.source()));
    }

    Outcome count(Act.CountStock act) {
        Optional<Refusal> no = refusal(act.itemId(), act.by()).or(() -> amountRefusal(act.itemId(), act.amount()));
        if (no.isPresent()) {
            return new Outcome.Refused(no.get());
        }
        Stock before = expectStock(act.itemId());
        Amount change = act.amount().minus(before.amount());
        move(
                act.bin().map(before::inBin).orElse(before),
                new Movement(
                        draft.newId("S"),
                        act.itemId(),
                        Movement.Kind.COUNTED,
                        change,
                        now,
                        act.by(),
                        Optional.empty()));
        return draft.done();
    }

    Outcome order(Act.OrderStock act) {
        Optional<Refusal> no = refusal(act.itemId(), act.by())
                .or(() -> amountRefusal(act.itemId(), act.amount()))
                .or(() -> orderRefusal(act));
        if (no.isPresent()) {
            return new Outcome.Refused(no.get());
        }
        Instant due = act.due().orElseGet(() -> SetAside.usuallyHere(draft.day(), act.itemId()));
        draft.put(new Order(draft.newId("R"), act.itemId(), act.amount(), now, due, Optional.empty()));
        return draft.done();
    }

    private Optional<Refusal> orderRefusal(Act.OrderStock act) {
        Day day = draft.day();
        String name = day.books().catalogue().nameOfItem(act.itemId());
        if (!act.amount().isPositive()) {
            return Optional.of(Refusal.of("nothing_ordered", name));
        }
        if (act.due().filter(due -> due.isBefore(now)).isPresent()) {
            return Optional.of(
                    Refusal.of("due_is_over", Clocks.sayTime(day, act.due().get())));
        }
        return day.books().shelf().findStock(act.itemId()).isPresent()
                ? Optional.empty()
                : Optional.of(Refusal.of("not_counted", name));
    }

    Outcome come(Act.OrderCame act) {
        Optional<Order> order = draft.day().books().shelf().findOrder(act.orderId());
        if (order.isEmpty() || !order.get().isOpen()) {
            return new Outcome.Refused(Refusal.of("order_unknown", act.orderId()));
        }
        if (draft.day().shop().findPerson(act.by()).isEmpty()) {
            return new Outcome.Refused(Refusal.of("person_unknown", act.by()));
        }
        Order came = order.get().cameAt(now);
        draft.put(came);
        move(
                expectStock(came.itemId()),
                new Movement(
                        "S-" + came.id(),
                        came.itemId(),
                        Movement.Kind.CAME,
                        came.amount(),
                        now,
                        act.by(),
                        Optional.of(came.id())));
        return draft.done();
    }

    private Optional<Refusal> refusal(String itemId, String by) {
        if (draft.day().shop().findPerson(by).isEmpty()) {
            return Optional.of(Refusal.of("person_unknown", by));
        }
        List<Item> items = draft.day().books().catalogue().items();
        return items.stream().anyMatch(item -> item.id().equals(itemId))
                ? Optional.empty()
                : Optional.of(Refusal.of("item_unknown", itemId));
    }

    /** Pieces come whole. */
    private Optional<Refusal> amountRefusal(String itemId, Amount amount) {
        Item item = draft.day().books().catalogue().findItem(itemId).orElseThrow();
        return item.unit().takes(amount) ? Optional.empty() : Optional.of(Refusal.of("not_whole", item.name(), amount));
    }
}
