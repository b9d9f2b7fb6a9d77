package org.shedboard.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.shedboard.day.Parts.ELEMENT;
import static org.shedboard.day.Parts.OIL;
import static org.shedboard.day.Parts.WASHER_12;
import static org.shedboard.day.Parts.WASHER_14;
import static org.shedboard.day.Parts.plenty;
import static org.shedboard.day.Parts.some;
import static org.shedboard.day.Shed.CLEAN;
import static org.shedboard.day.Shed.finish;
import static org.shedboard.day.Shed.start;
import static org.shedboard.day.Shed.takeIn;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shedboard.estimate.Item;
import org.shedboard.register.Movement;
import org.shedboard.register.Order;
import org.shedboard.register.Stock;
import org.shedboard.shop.Amount;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Part;

/** What happens at the shelf of the {@link Parts shed with parts}. */
class ShelfActsTest {
    private static final String[] TO_THE_PLUG = {"in-underside", "raise", "inspect-underside", "drain"};

    private static Amount left(Shed shed, Item item) {
        return shed.day()
                .books()
                .shelf()
                .findStock(item.id())
                .map(Stock::amount)
                .orElseThrow();
    }

    private static Act.FitPart fit(Shed shed, String visit, String part, Item item) {
        String line = shed.visit(visit).lines().get(0).id();
        return new Act.FitPart(visit, line, part, item.id(), "ada");
    }

    /** A quad for its oil, with somebody on its plug. */
    private static String onThePlug(Shed shed, String machine) {
        String visit = shed.does(takeIn(machine, CLEAN, "oil")).orElseThrow();
        shed.works("ada", visit, TO_THE_PLUG).later(20).does(start("ada", visit, "plug"));
        return visit;
    }

    @Test
    void a_task_is_not_finished_while_it_is_open_which_part_went_in() {
        Shed shed = Parts.shed(plenty());
        String visit = onThePlug(shed, "quad-1");
        shed.assertRefused("part_open", finish("ada", visit, "plug"));
        shed.does(fit(shed, visit, "Washer", WASHER_14));
        shed.does(finish("ada", visit, "plug"));
        assertEquals(Amount.of(8), left(shed, WASHER_14));
        assertEquals(Amount.of(9), left(shed, WASHER_12));
    }

    @Test
    void a_year_that_nobody_knows_leaves_it_open_too() {
        Shed shed = Parts.shed(plenty());
        String visit = onThePlug(shed, "quad-3");
        shed.assertRefused("part_open", finish("ada", visit, "plug"));
    }

    @Test
    void a_task_whose_parts_are_plain_takes_them_off_the_shelf_and_says_so_on_its_line() {
        Shed shed = Parts.shed(plenty());
        String visit = onThePlug(shed, "quad-2");
        shed.does(finish("ada", visit, "plug"));
        assertEquals(Amount.of(8), left(shed, WASHER_14));
        Part washer = shed.visit(visit).lines().get(0).parts().get(0);
        assertEquals(Optional.of(WASHER_14.id()), washer.fitted().map(Part.Fitted::itemId));
    }

    @Test
    void what_is_taken_is_a_row_of_its_own() {
        Shed shed = Parts.shed(plenty());
        String visit = onThePlug(shed, "quad-2");
        Outcome.Done done = (Outcome.Done) Acts.apply(shed.day(), finish("ada", visit, "plug"), shed.now());
        List<Movement> moved = done.changes().stream()
                .filter(Change.MovementSaved.class::isInstance)
                .map(change -> ((Change.MovementSaved) change).movement())
                .toList();
        assertEquals(1, moved.size());
        assertEquals(Movement.Kind.TAKEN, moved.get(0).kind());
        assertEquals("-1", moved.get(0).change().toString());
        assertEquals(Optional.of(visit), moved.get(0).source());
    }

    @Test
    void what_went_in_is_not_said_otherwise_afterwards() {
        Shed shed = Parts.shed(plenty());
        String visit = onThePlug(shed, "quad-2");
        shed.does(finish("ada", visit, "plug"));
        shed.assertRefused("task_done", fit(shed, visit, "Washer", WASHER_14));
    }

    @Test
    void a_task_that_two_lines_share_takes_its_parts_once() {
        Shed shed = Parts.shed(plenty());
        String visit = shed.does(takeIn("quad-2", CLEAN, "oil", "oil")).orElseThrow();
        assertEquals(
                List.of("Washer", "Oil"),
                Needs.of(shed.day(), shed.visit(visit)).stream()
                        .map(need -> need.part().name())
                        .toList());
    }

    @Test
    void what_is_disposable_is_renewed_by_the_task_that_renews_it_when_it_is_found_dirty() {
        Shed shed = Parts.shed(plenty());
        String visit = shed.does(takeIn("quad-2", CLEAN, "brakes")).orElseThrow();
        Shed oil = Parts.shed(plenty());
        String other = oil.does(takeIn("quad-2", CLEAN, "oil")).orElseThrow();
        oil.does(Shed.tick(other, "pads", Mark.WATCH));
        assertEquals(1, count(shed, visit), "its line asks for it anyway");
        shed.does(Shed.tick(visit, "pads", Mark.WATCH));
        assertEquals(1, count(shed, visit), "and not twice");
        assertEquals(0, count(oil, other), "nobody renews it in an oil change");
    }

    private static long count(Shed shed, String visit) {
        return Needs.of(shed.day(), shed.visit(visit)).stream()
                .filter(need -> need.itemIds().contains(ELEMENT.id()))
                .count();
    }

    @Test
    void a_count_puts_the_shelf_right_and_the_bin_stays() {
        Shed shed = Parts.shed(some(OIL, 10));
        shed.does(new Act.CountStock(OIL.id(), new Amount(7_500), Optional.empty(), "bo"));
        assertEquals(
                Optional.of(new Stock(OIL.id(), "bin of oil", new Amount(7_500))),
                shed.day().books().shelf().findStock(OIL.id()));
    }

    @Test
    void an_order_comes_once() {
        Shed shed = Parts.shed(some(OIL, 10));
        shed.does(new Act.OrderStock(OIL.id(), Amount.of(20), Optional.empty(), "bo"));
        Order order = shed.day().books().shelf().openOrdersOf(OIL.id()).get(0);
        assertEquals(Shed.DATE.plusDays(1), order.due().atZone(Shed.ZONE).toLocalDate());
        shed.does(new Act.OrderCame(order.id(), "bo"));
        assertEquals(Amount.of(30), left(shed, OIL));
        shed.assertRefused("order_unknown", new Act.OrderCame(order.id(), "bo"));
    }

    @Test
    void more_can_be_taken_than_was_counted() {
        Shed shed = Parts.shed(some(WASHER_14, 0));
        String visit = onThePlug(shed, "quad-2");
        shed.does(finish("ada", visit, "plug"));
        assertTrue(left(shed, WASHER_14).compareTo(Amount.NOTHING) < 0);
    }
}
