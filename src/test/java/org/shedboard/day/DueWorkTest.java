package org.shedboard.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.shedboard.ahead.DayAhead;
import org.shedboard.ahead.Load;
import org.shedboard.ahead.Weeks;
import org.shedboard.estimate.Work;
import org.shedboard.register.NextDue;
import org.shedboard.register.WorkLoad;
import org.shedboard.shop.Condition;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Payer;
import org.shedboard.shop.PlaceKind;
import org.shedboard.shop.Skill;

/** What is due on a Tuesday in a shop that works from Monday to Friday, and how it lies on the days ahead. */
class DueWorkTest {
    private static final LocalDate TUESDAY = Shed.DATE;
    private static final LocalDate WEDNESDAY = TUESDAY.plusDays(1);
    private static final LocalDate THURSDAY = TUESDAY.plusDays(2);
    private static final LocalDate FRIDAY = TUESDAY.plusDays(3);
    private static final LocalDate SATURDAY = TUESDAY.plusDays(4);
    private static final LocalDate MONDAY = TUESDAY.plusDays(6);
    private static final LocalDate YESTERDAY = TUESDAY.minusDays(1);

    private final Shed shed = Shed.open();

    @Test
    void a_machine_comes_on_its_likely_date_with_its_hands_and_its_stays() {
        Map<LocalDate, Load> due = over(weeks(), TUESDAY, call(THURSDAY, 70));
        assertEquals(Map.of(THURSDAY, new Load(Map.of(Skill.SERVICE, 70), Map.of(PlaceKind.HOIST, 80))), due);
    }

    @Test
    void a_machine_due_on_a_day_off_comes_on_the_next_working_day_beside_what_comes_then() {
        assertEquals(Map.of(MONDAY, 70 + 30), minutes(over(weeks(), TUESDAY, call(SATURDAY, 70), call(MONDAY, 30))));
    }

    @Test
    void what_is_due_today_is_not_overdue() {
        assertEquals(Map.of(TUESDAY, 70 + 30), minutes(over(weeks(), TUESDAY, call(TUESDAY, 70), call(TUESDAY, 30))));
    }

    @Test
    void overdue_machines_are_spread_over_the_rest_of_the_week_each_to_the_day_with_the_least() {
        Map<LocalDate, Load> due = over(
                weeks(),
                TUESDAY,
                call(YESTERDAY.minusDays(40), 200),
                call(YESTERDAY.minusDays(30), 50),
                call(YESTERDAY.minusDays(20), 60),
                call(YESTERDAY.minusDays(10), 70),
                call(YESTERDAY, 30));
        assertEquals(Map.of(TUESDAY, 200, WEDNESDAY, 50 + 30, THURSDAY, 60, FRIDAY, 70), minutes(due));
    }

    @Test
    void after_knock_off_nothing_more_comes_today() {
        shed.at("16:30");
        assertEquals(
                Map.of(WEDNESDAY, 70 + 30), minutes(over(weeks(), TUESDAY, call(YESTERDAY, 70), call(TUESDAY, 30))));
    }

    @Test
    void on_a_day_off_what_is_overdue_comes_in_the_next_week_that_has_a_working_day() {
        List<DayAhead> days = weeks().days();
        Weeks fromMonday = new Weeks(days.subList(4, days.size()));
        assertEquals(MONDAY, fromMonday.days().get(0).date());
        RingList.Call[] six = new RingList.Call[6];
        Arrays.fill(six, call(YESTERDAY, 10));
        Map<LocalDate, Integer> minutes = minutes(over(fromMonday, SATURDAY, six));
        assertEquals(5, minutes.size());
        assertEquals(20, minutes.get(MONDAY));
        assertEquals(10, minutes.get(MONDAY.plusDays(4)));
    }

    @Test
    void what_has_its_day_beyond_the_weeks_is_left_out() {
        LocalDate last = weeks().days().get(19).date();
        assertEquals(Map.of(last, 30), minutes(over(weeks(), TUESDAY, call(last, 30), call(last.plusDays(1), 70))));
    }

    @Test
    void a_shop_without_a_working_day_ahead_has_nothing_laid() {
        assertEquals(Map.of(), over(new Weeks(List.of()), TUESDAY, call(YESTERDAY, 70), call(THURSDAY, 30)));
    }

    @Test
    void the_demonstration_has_all_that_is_due_on_its_days() {
        Day day = Demonstration.day();
        Instant now = Demonstration.opens();
        Weeks weeks = WeeksAhead.withDue(day, now);
        RingList list = RingList.of(day, now, 4);
        LocalDate last = weeks.days().get(weeks.days().size() - 1).date();
        WorkLoad within = list.calls().stream()
                .filter(call -> !call.due().dates().likely().isAfter(last))
                .map(RingList.Call::load)
                .reduce(WorkLoad.NONE, WorkLoad::plus);
        assertTrue(within.minutes() > 1000, within.minutes() + " min");
        assertEquals(within, due(weeks));
    }

    @Test
    void a_machine_that_gets_booked_is_not_due_any_more() {
        Day day = Demonstration.day();
        Instant now = Demonstration.opens();
        RingList.Call first = RingList.of(day, now, 4).calls().get(0);
        Day booked = ((Outcome.Done) Acts.apply(day, booking(first, now.plusSeconds(2 * 86_400)), now)).day();
        int before = due(WeeksAhead.withDue(day, now)).minutes();
        assertEquals(
                before - first.load().minutes(),
                due(WeeksAhead.withDue(booked, now)).minutes());
    }

    private static Act booking(RingList.Call call, Instant expected) {
        return new Act.TakeIn(
                new Act.TakeIn.Whose(Optional.empty(), "", ""),
                Act.TakeIn.Which.known(call.machine().id()),
                Mud.CLEAN,
                Optional.empty(),
                Condition.SOUND,
                List.of(new Act.Wanted(call.work().id(), Payer.OWNER)),
                OptionalInt.empty(),
                OptionalInt.empty(),
                Optional.of(expected),
                "",
                Optional.empty());
    }

    private static WorkLoad due(Weeks weeks) {
        Load all = weeks.days().stream().map(DayAhead::due).reduce(Load.NONE, Load::plus);
        return new WorkLoad(all.bySkill(), all.byPlace());
    }

    private static Map<LocalDate, Load> over(Weeks weeks, LocalDate today, RingList.Call... calls) {
        return DueWork.over(weeks, new RingList(today, today.plusWeeks(4), List.of(calls)));
    }

    private static Map<LocalDate, Integer> minutes(Map<LocalDate, Load> due) {
        Map<LocalDate, Integer> minutes = new HashMap<>();
        due.forEach((date, load) -> minutes.put(date, load.handsOn()));
        return minutes;
    }

    /** A quad to be serviced; it stands on a hoist ten minutes longer than hands are on it. */
    private RingList.Call call(LocalDate likely, int handsOn) {
        Machine quad = shed.day().books().expectMachine("quad-1");
        Work oil = shed.day().books().catalogue().expectWork("oil");
        NextDue due = new NextDue(
                quad.id(),
                oil.id(),
                NextDue.By.MONTHS,
                Optional.empty(),
                new NextDue.Dates(likely, likely, likely),
                new NextDue.Window(likely, likely));
        WorkLoad load = new WorkLoad(Map.of(Skill.SERVICE, handsOn), Map.of(PlaceKind.HOIST, handsOn + 10));
        return new RingList.Call(
                quad, shed.day().books().expectOwner(quad.ownerId()), oil, due, load, Optional.empty());
    }

    private Weeks weeks() {
        return WeeksAhead.of(shed.day(), shed.now());
    }
}
