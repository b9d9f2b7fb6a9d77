package org.shedboard.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.shedboard.hours.ClockEntry;
import org.shedboard.pack.Plan;
import org.shedboard.pack.check.PlanCheck;
import org.shedboard.pack.search.Packer;
import org.shedboard.shop.Hold;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Person;
import org.shedboard.shop.Place;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;

/** How a day looks: what comes when, what needs somebody, who is next on what. */
class OutlookTest {
    private final Shed shed = Shed.open();

    @Test
    void the_demonstration_opens_with_visits_in_every_state() {
        Day day = Demonstration.day();
        Set<VisitState> states = day.visits().stream().map(Visit::state).collect(Collectors.toSet());
        assertEquals(Set.of(VisitState.values()), states);
        assertEquals(Demonstration.SETUP.morning().orElseThrow().date(), day.date());
        assertTrue(day.entries().stream().anyMatch(ClockEntry::isOpen));
        assertTrue(Demonstration.BEGINNING.changes().size() > 500);
    }

    @Test
    void the_demonstrations_plan_obeys_every_rule_and_keeps_who_is_on_what() {
        Outlook outlook = Outlook.of(Demonstration.day(), Demonstration.opens());
        PlanCheck check = PlanCheck.of(outlook.problem(), outlook.plan());
        assertTrue(check.isLegal(), check::toString);
        for (Person person : outlook.day().shop().people()) {
            outlook.day().runningOf(person.id()).ifPresent(running -> {
                NextTask next = NextTask.of(outlook, person).orElseThrow();
                assertTrue(next.isRunning());
                assertEquals(running.task(), next.task());
            });
        }
    }

    @Test
    void a_shop_without_a_morning_begins_on_the_date_asked_for_with_nothing_in_it() {
        Setup bare = new Setup(Demonstration.day().shop(), List.of(), List.of(), List.of(), Optional.empty());
        Day day = Beginning.of(Demonstration.day().books().catalogue(), bare, Shed.DATE)
                .day();
        assertEquals(Shed.DATE, day.date());
        assertFalse(day.isOpened());
        assertTrue(day.visits().isEmpty());
    }

    @Test
    void a_machine_that_no_hoist_takes_is_washed_all_the_same_and_keeps_its_place_in_the_plan() {
        shed.does(new Act.CorrectMachine("tractor-1", "tractor-1", OptionalInt.empty(), "", 3000));
        String heavy = shed.does(Shed.takeIn("tractor-1", Mud.CAKED, "oil")).orElseThrow();
        String other = shed.does(Shed.takeIn("quad-2", Mud.CAKED, "oil")).orElseThrow();
        shed.does(Shed.start("cy", heavy, "in-wash"));
        Outlook outlook = Outlook.of(shed.day(), shed.now());
        PlanCheck check = PlanCheck.of(outlook.problem(), outlook.plan());
        assertTrue(check.isLegal(), check::toString);
        assertEquals(Optional.of("no hoist rated for 3000 kg"), outlook.whyNotIn(heavy));
        assertEquals(Optional.empty(), outlook.readyAt(heavy));
        assertTrue(Concerns.of(outlook).stream()
                .anyMatch(concern -> concern.kind() == Concern.Kind.NOT_IN_PLAN
                        && concern.visitId().equals(Optional.of(heavy))));
        List<Plan.StayPlace> washed = outlook.staysIn("W");
        assertEquals(
                List.of(heavy, other), washed.stream().map(Plan.StayPlace::job).toList());
        assertTrue(washed.get(0).to() > washed.get(0).from());
        assertTrue(outlook.timeOf(heavy, "wash").isPresent());
    }

    @Test
    void the_queue_is_in_the_order_of_the_plan_and_what_is_not_planned_comes_last() {
        String quad = shed.quad();
        String heavy = shed.does(Shed.takeIn("tractor-1", Mud.CLEAN, "oil")).orElseThrow();
        shed.does(new Act.CheckHoist(Shed.lockedOut("H2")));
        String other = shed.does(Shed.takeIn("quad-2", Mud.CLEAN, "oil")).orElseThrow();
        shed.does(Shed.start("ada", other, "in-underside"));
        List<String> queue = shed.outlook().queue().stream().map(Visit::id).toList();
        assertEquals(List.of(other, quad, heavy), queue);
    }

    @Test
    void a_place_is_free_from_when_the_run_of_stays_in_it_ends() {
        assertEquals(OptionalInt.of(7 * 60), shed.outlook().freeFrom("H1"));
        String quad = shed.quad();
        shed.does(Shed.startIn("H1", "ada", quad, "in-underside"));
        Outlook outlook = shed.outlook();
        int end = outlook.plan().findStay(quad, 0).orElseThrow().to();
        assertTrue(end > 7 * 60);
        assertTrue(outlook.freeFrom("H1").orElseThrow() >= end);
        assertTrue(outlook.staysIn("H1").stream().allMatch(stay -> stay.place().equals("H1")));
    }

    @Test
    void the_next_task_is_the_one_that_is_running_then_those_planned_in_order() {
        String quad = shed.quad();
        shed.does(Shed.start("cy", quad, "in-underside"));
        Person cy = shed.day().shop().expectPerson("cy");
        List<NextTask> all = NextTask.all(shed.outlook(), cy);
        assertTrue(all.get(0).isRunning());
        assertEquals(shed.visit(quad).standsIn(), all.get(0).placeId());
        for (int i = 2; i < all.size(); i++) {
            assertFalse(all.get(i).from().isBefore(all.get(i - 1).from()));
        }
    }

    @Test
    void an_inspections_open_points_are_those_without_a_finding() {
        String quad = shed.does(Shed.takeIn("quad-1", Mud.CLEAN, "brakes")).orElseThrow();
        shed.does(Shed.tick(quad, "pads", Mark.GOOD));
        Day day = shed.day();
        assertEquals(
                List.of("frame"),
                PointsDue.openOf(day, shed.visit(quad), shed.task(quad, "inspect-underside")).stream()
                        .map(point -> point.id())
                        .toList());
        assertEquals(List.of(), PointsDue.of(day, shed.visit(quad), shed.task(quad, "raise")));
    }

    @Test
    void a_clean_machine_is_promised_no_later_than_a_caked_one() {
        Act.TakeIn caked = Shed.takeIn("quad-1", Mud.CAKED, "brakes");
        Quote.Offer dirty = quote(caked).asPosted().orElseThrow();
        Quote.Offer clean = quote(Quoting.cameInClean(caked)).asPosted().orElseThrow();
        assertTrue(clean.promise().isBefore(dirty.promise()), clean.promise() + " " + dirty.promise());
    }

    @Test
    void an_offer_is_the_earliest_quarter_with_the_asked_chance_and_comes_true_when_the_machine_is_added() {
        Act.TakeIn brakes = Shed.takeIn("quad-1", Mud.MUDDY, "brakes");
        Quote.Offer offer = quote(brakes).asPosted().orElseThrow();
        assertTrue(offer.chance() >= 80);
        assertTrue(offer.chanceBy(offer.promise().minusSeconds(15 * 60)) < 80);
        assertEquals(0, shed.day().minuteOf(offer.promise()) % 15);
        assertEquals(offer.chance(), offer.chanceBy(offer.promise()));
        String quad = shed.does(brakes).orElseThrow();
        assertEquals(Optional.of(offer.planned()), shed.outlook().readyAt(quad));
        assertEquals(OptionalInt.of(offer.chance()), shed.outlook().chanceBy(quad, offer.promise()));
    }

    @Test
    void a_surer_time_is_a_later_one() {
        Act.TakeIn brakes = Shed.takeIn("quad-1", Mud.MUDDY, "brakes");
        Quote even = quote(brakes, 50);
        Quote sure = quote(brakes, 95);
        assertTrue(even.asPosted()
                .orElseThrow()
                .promise()
                .isBefore(sure.asPosted().orElseThrow().promise()));
    }

    @Test
    void what_cannot_be_taken_in_gets_its_reason_instead_of_a_quote_and_nothing_is_changed() {
        shed.quad();
        Day before = shed.day();
        Quote.Answer answer = Quoting.of(before, Shed.takeIn("quad-1", Mud.CLEAN, "oil"), 80, shed.now())
                .whole(Packer::pack);
        assertEquals("machine_here", ((Quote.Answer.NotGiven) answer).refusal().name());
    }

    private Quote quote(Act.TakeIn wanted) {
        return quote(wanted, 80);
    }

    private Quote quote(Act.TakeIn wanted, int chance) {
        Quoting quoting = Quoting.of(shed.day(), wanted, chance, shed.now());
        return ((Quote.Answer.Given) quoting.whole(Packer::pack)).quote();
    }

    @Test
    void a_quiet_day_needs_nobody() {
        assertEquals(List.of(), Concerns.of(shed.outlook()));
    }

    @Test
    void each_thing_that_needs_the_foreman_is_a_concern_of_its_own_kind() {
        String rides = shed.quad();
        shed.does(Shed.tick(rides, "frame", Mark.FIX));
        assertConcern(Concern.Kind.NOT_TO_BE_RIDDEN, rides, "1 (Tarn)", "frame");
        assertTrue(kinds().contains(Concern.Kind.NO_PROMISE));
        shed.does(Shed.promise(rides, "07:10", "", false));
        assertTrue(kinds().contains(Concern.Kind.PROMISE_IN_DANGER));
        shed.at("07:11");
        assertTrue(kinds().contains(Concern.Kind.PROMISE_MISSED));
        shed.does(new Act.HoldVisit(rides, Hold.Reason.OWNERS_WORD, "a new frame?", Optional.of(Shed.time("14:00"))));
        assertConcern(Concern.Kind.OWNER_TO_ASK, rides, "1 (Tarn)", "a new frame?", "14:00");
    }

    @Test
    void a_hoist_nobody_looked_at_is_a_concern_and_one_that_was_locked_out_is_not() {
        Shed early = Shed.closed();
        List<Act.OpenDay.Here> here = List.of(Shed.here("ada", "07:00", "16:00"));
        early.does(new Act.OpenDay("ada", here, List.of(Shed.checked("H2"))));
        Concern expected = new Concern(Concern.Kind.HOIST_UNCHECKED, Optional.empty(), List.of("light hoist"));
        assertEquals(List.of(expected), Concerns.of(early.outlook()));
        early.does(new Act.CheckHoist(Shed.lockedOut("H1")));
        Concern locked =
                new Concern(Concern.Kind.HOIST_LOCKED_OUT, Optional.empty(), List.of("light hoist", "the arm creaks"));
        assertEquals(List.of(locked), Concerns.of(early.outlook()));
    }

    @Test
    void a_machine_that_is_released_is_planned_for_today_again() {
        String quad = shed.quad();
        Instant before = shed.outlook().readyAt(quad).orElseThrow();
        shed.does(new Act.HoldVisit(quad, Hold.Reason.PARTS, "a filter", Optional.empty()));
        assertTrue(shed.outlook().readyAt(quad).orElseThrow().isAfter(Shed.time("16:00")));
        shed.does(new Act.Release(quad));
        assertEquals(before, shed.outlook().readyAt(quad).orElseThrow());
    }

    @Test
    void a_booking_that_does_not_come_is_a_concern() {
        String booked = shed.does(Shed.booking("quad-1", "09:00", "oil")).orElseThrow();
        assertEquals(Set.of(), kinds());
        shed.at("09:01");
        assertConcern(Concern.Kind.BOOKING_LATE, booked, "Tarn", "09:00");
    }

    @Test
    void a_done_machine_is_waiting_for_its_owner_to_be_rung() {
        String quad = shed.quad();
        shed.worksThrough("ada", quad).works("ada", quad, "sign-off");
        assertConcern(Concern.Kind.OWNER_TO_RING, quad, "1 (Tarn)", "0000 1");
    }

    @Test
    void a_task_runs_over_by_worked_minutes_not_by_dinner() {
        String quad = shed.does(Shed.takeIn("quad-1", Mud.CLEAN, "brakes")).orElseThrow();
        shed.works("ada", quad, "in-underside", "raise").at("11:50").does(Shed.start("ada", quad, "pads-change"));
        shed.at("12:45");
        assertFalse(kinds().contains(Concern.Kind.RUNS_OVER));
        shed.at("12:53");
        assertConcern(Concern.Kind.RUNS_OVER, quad, "1 (Tarn)", "pads-change", "Ada", "3");
    }

    @Test
    void a_machine_that_no_checked_hoist_takes_today_waits_for_tomorrow() {
        Shed one = Shed.adasOwn();
        String heavy = one.does(Shed.takeIn("tractor-1", Mud.CLEAN, "oil")).orElseThrow();
        assertTrue(one.outlook().readyAt(heavy).isPresent());
        one.does(new Act.CheckHoist(Shed.lockedOut("H2")));
        assertTrue(one.outlook().readyAt(heavy).orElseThrow().isAfter(Shed.time("23:00")));
    }

    @Test
    void the_most_urgent_comes_first() {
        Outlook outlook = Outlook.of(Demonstration.day(), Demonstration.opens());
        List<Concern> concerns = Concerns.of(outlook);
        assertFalse(concerns.isEmpty());
        for (int i = 1; i < concerns.size(); i++) {
            assertTrue(concerns.get(i - 1).kind().compareTo(concerns.get(i).kind()) <= 0);
        }
    }

    private Set<Concern.Kind> kinds() {
        return Concerns.of(shed.outlook()).stream().map(Concern::kind).collect(Collectors.toCollection(TreeSet::new));
    }

    private void assertConcern(Concern.Kind kind, String visit, String... values) {
        assertTrue(
                Concerns.of(shed.outlook()).contains(new Concern(kind, Optional.of(visit), List.of(values))),
                () -> Concerns.of(shed.outlook()).toString());
    }

    @Test
    void only_checked_hoists_are_open_in_the_problem_today_and_all_are_tomorrow() {
        shed.does(new Act.CheckHoist(Shed.lockedOut("H1")));
        for (Place place : shed.day().shop().places()) {
            boolean closed = shed.outlook().problem().places().stream()
                    .anyMatch(each ->
                            each.id().equals(place.id()) && !each.closed().isEmpty());
            assertEquals(place.id().equals("H1"), closed, place.id());
        }
    }
}
