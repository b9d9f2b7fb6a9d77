package org.shedboard.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.shedboard.day.Parts.OIL;
import static org.shedboard.day.Parts.WASHER_12;
import static org.shedboard.day.Parts.WASHER_14;
import static org.shedboard.day.Parts.order;
import static org.shedboard.day.Parts.plenty;
import static org.shedboard.day.Parts.some;
import static org.shedboard.day.Shed.CLEAN;
import static org.shedboard.day.Shed.takeIn;
import static org.shedboard.day.Shed.time;

import java.time.Instant;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shedboard.pack.check.PlanCheck;
import org.shedboard.register.Order;
import org.shedboard.register.Stock;

/** Whether work waits for its parts, in the {@link Parts shed with parts}. Its Tuesday is followed by a Wednesday. */
class SetAsideTest {
    private static Instant onDay(int days, String time) {
        return Shed.DATE
                .plusDays(days)
                .atTime(LocalTime.parse(time))
                .atZone(Shed.ZONE)
                .toInstant();
    }

    private static Shed shed(List<Stock> stock, Order... orders) {
        return Parts.shed(Shed.open(), stock, List.of(orders));
    }

    private static String oilOn(Shed shed, String machine) {
        return shed.does(takeIn(machine, CLEAN, "oil")).orElseThrow();
    }

    private static List<String> states(Shed shed) {
        return SetAside.of(shed.day(), shed.now()).covers().stream()
                .map(cover -> cover.itemId() + " " + cover.state())
                .toList();
    }

    /** When the plan, which the checker accepts, has a task start. */
    private static Instant startOf(Shed shed, String visit, String task) {
        Outlook outlook = shed.outlook();
        assertEquals(List.of(), PlanCheck.of(outlook.problem(), outlook.plan()).breaches());
        return shed.day().instantOf(outlook.timeOf(visit, task).orElseThrow().start());
    }

    @Test
    void what_is_on_the_shelf_is_not_waited_for() {
        Shed shed = shed(List.of(plenty()));
        String visit = oilOn(shed, "quad-2");
        assertEquals(List.of("w14 ON_SHELF", "oil ON_SHELF"), states(shed));
        assertTrue(startOf(shed, visit, "plug").isBefore(time("08:00")));
    }

    @Test
    void a_task_waits_in_the_plan_until_its_order_is_due_and_only_that_task() {
        Shed shed = shed(List.of(some(WASHER_14, 0), some(OIL, 9)), order(WASHER_14, 5, time("13:00")));
        String visit = oilOn(shed, "quad-2");
        assertEquals(List.of("w14 ON_ORDER", "oil ON_SHELF"), states(shed));
        assertTrue(!startOf(shed, visit, "plug").isBefore(time("13:00")));
        assertTrue(startOf(shed, visit, "drain").isBefore(time("13:00")));
    }

    @Test
    void without_an_order_it_waits_as_long_as_an_order_usually_takes() {
        Shed shed = shed(List.of(some(WASHER_14, 0), some(OIL, 9)));
        String visit = oilOn(shed, "quad-2");
        assertEquals(List.of("w14 NOT_ORDERED", "oil ON_SHELF"), states(shed));
        assertTrue(!startOf(shed, visit, "plug").isBefore(onDay(3, "07:00")));
    }

    @Test
    void what_is_short_by_less_than_all_waits_for_the_rest() {
        Shed shed = shed(List.of(some(WASHER_14, 5), some(OIL, 1)), order(OIL, 20, onDay(1, "07:00")));
        oilOn(shed, "quad-2");
        Cover oil = SetAside.of(shed.day(), shed.now()).covers().get(1);
        assertEquals("1", oil.missing().toString());
        assertEquals(Optional.of(onDay(1, "07:00")), oil.from());
    }

    @Test
    void whoever_is_earlier_in_the_posted_plan_gets_the_last_one() {
        Shed shed = shed(List.of(some(WASHER_14, 1), some(OIL, 40)), order(WASHER_14, 1, onDay(1, "07:00")));
        String first = oilOn(shed, "quad-2");
        shed.does(takeIn("tractor-1", CLEAN, "oil"));
        List<Cover> covers = SetAside.of(shed.day(), shed.now()).of(shed.visit(first));
        assertEquals(Cover.State.ON_SHELF, covers.get(0).state());
    }

    @Test
    void what_nobody_has_counted_is_not_waited_for() {
        Shed shed = shed(List.of());
        String visit = oilOn(shed, "quad-2");
        assertEquals(List.of("w14 NOT_COUNTED", "oil NOT_COUNTED"), states(shed));
        assertTrue(startOf(shed, visit, "plug").isBefore(time("08:00")));
    }

    @Test
    void while_it_is_open_which_it_is_both_are_set_aside_and_the_word_of_one_frees_the_other() {
        Shed shed = shed(List.of(some(WASHER_12, 1), some(WASHER_14, 0), some(OIL, 9)));
        String visit = oilOn(shed, "quad-1");
        assertEquals(List.of("w12 ON_SHELF", "w14 NOT_ORDERED", "oil ON_SHELF"), states(shed));
        String line = shed.visit(visit).lines().get(0).id();
        shed.does(new Act.FitPart(visit, line, "Washer", WASHER_12.id(), "ada"));
        assertEquals(List.of("w12 ON_SHELF", "oil ON_SHELF"), states(shed));
    }

    @Test
    void an_order_that_is_late_is_expected_within_the_hour_and_after_its_day_on_the_next_morning() {
        Shed shed = shed(List.of(some(WASHER_14, 0), some(OIL, 9)), order(WASHER_14, 5, time("08:00")));
        oilOn(shed, "quad-2");
        shed.at("10:00");
        assertEquals(Optional.of(time("11:00")), fromOf(shed));
        shed.on(Shed.DATE.plusDays(1), "06:00");
        assertEquals(Optional.of(onDay(2, "07:00")), fromOf(shed));
    }

    private static Optional<Instant> fromOf(Shed shed) {
        return SetAside.of(shed.day(), shed.now()).covers().get(0).from();
    }

    @Test
    void begun_work_whose_part_comes_in_a_fortnight_is_still_planned() {
        Shed shed = shed(List.of(some(WASHER_14, 5), some(OIL, 0)), order(OIL, 20, onDay(14, "09:00")));
        String visit = oilOn(shed, "quad-2");
        shed.works("ada", visit, "in-underside");
        assertTrue(!startOf(shed, visit, "fill").isBefore(onDay(14, "09:00")));
    }

    @Test
    void what_is_short_and_not_on_order_needs_the_foreman() {
        Shed shed = shed(List.of(some(WASHER_14, 0), some(OIL, 1)), order(OIL, 9, time("12:00")));
        oilOn(shed, "quad-2");
        List<String> items = Concerns.of(shed.outlook()).stream()
                .filter(concern -> concern.kind() == Concern.Kind.PART_SHORT)
                .map(concern -> concern.values().get(1))
                .toList();
        assertEquals(List.of("Washer 14"), items);
    }

    @Test
    void at_the_door_it_is_said_what_is_short_and_what_to_look_for_and_the_quote_obeys_it() {
        Shed shed =
                shed(List.of(some(WASHER_12, 1), some(WASHER_14, 0), some(OIL, 0)), order(OIL, 9, onDay(1, "09:00")));
        Act.TakeIn wanted = takeIn("quad-1", CLEAN, "oil");
        List<DoorNote> notes = DoorNotes.of(shed.day(), wanted, shed.now());
        assertEquals(
                List.of(
                        "PART_NOT_ORDERED [Washer 14, Fri 07:00]",
                        "PART_ON_ORDER [Oil, Wed 09:00]",
                        "PART_TO_CHECK [Washer, Washer 12, Washer 14]"),
                notes.stream().map(note -> note.kind() + " " + note.values()).toList());
        Quote.Answer answer = Quoting.of(shed.day(), wanted, 80, shed.now()).atOnce();
        Quote quote = ((Quote.Answer.Given) answer).quote();
        assertTrue(quote.asPosted().orElseThrow().planned().isAfter(onDay(3, "07:00")));
    }

    @Test
    void at_the_door_nothing_is_said_of_parts_that_are_there() {
        Shed shed = shed(List.of(plenty()));
        assertEquals(List.of(), DoorNotes.of(shed.day(), takeIn("quad-2", CLEAN, "oil"), shed.now()));
    }

    @Test
    void the_shelf_says_what_the_plan_uses_today_and_tomorrow_and_what_is_short() {
        Shed shed =
                shed(List.of(some(WASHER_12, 9), some(WASHER_14, 9), some(OIL, 3)), order(OIL, 9, onDay(1, "07:00")));
        oilOn(shed, "quad-2");
        oilOn(shed, "tractor-1");
        ShelfRow oil = ShelfRow.of(shed.outlook()).stream()
                .filter(row -> row.item().equals(OIL))
                .findFirst()
                .orElseThrow();
        assertEquals(
                List.of("2", "2", "1", "0"),
                List.of(
                        oil.today().toString(),
                        oil.tomorrow().toString(),
                        oil.missing().toString(),
                        oil.notOrdered().toString()));
    }

    @Test
    void the_pick_list_has_what_the_plan_uses_on_a_day_bin_by_bin() {
        Shed shed = shed(List.of(plenty()));
        oilOn(shed, "quad-2");
        assertEquals(
                List.of("bin of oil Oil", "bin of w14 Washer 14"),
                Pick.of(shed.outlook(), Shed.DATE).stream()
                        .map(pick -> pick.bin() + " " + pick.item().name())
                        .toList());
        assertEquals(List.of(), Pick.of(shed.outlook(), Shed.DATE.plusDays(1)));
    }
}
