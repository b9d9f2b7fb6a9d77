package org.shedboard.day;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shedboard.pack.Span;
import org.shedboard.shop.Hold;
import org.shedboard.shop.Person;

class RosterTest {
    @Test
    void a_day_that_is_not_open_goes_by_the_usual_hours_of_workdays() {
        List<Span> shifts = shiftsOf(Shed.closed(), "ada");
        // Tuesday to Friday, then Monday: ten pieces around dinner
        assertEquals(10, shifts.size());
        assertEquals(new Span(7 * 60, 12 * 60), shifts.get(0));
        assertEquals(new Span(12 * 60 + 30, 16 * 60), shifts.get(1));
        assertEquals(new Span(6 * 24 * 60 + 7 * 60, 6 * 24 * 60 + 12 * 60), shifts.get(8));
    }

    @Test
    void today_nobody_is_there_longer_than_they_said() {
        Shed shed = Shed.closed();
        shed.does(new Act.OpenDay(
                "ada", List.of(Shed.here("ada", "09:00", "11:00"), Shed.here("bo", "07:00", "16:30")), List.of()));
        assertEquals(new Span(9 * 60, 11 * 60), shiftsOf(shed, "ada").get(0));
        assertEquals(24 * 60 + 7 * 60, shiftsOf(shed, "ada").get(1).from());
        assertEquals(24 * 60 + 7 * 60, shiftsOf(shed, "cy").get(0).from());
        assertEquals(
                new Span(16 * 60, 16 * 60 + 30),
                new Roster(shed.day()).overtimeOf(person(shed, "bo")).get(0));
    }

    @Test
    void who_left_is_away_from_then_on() {
        Shed shed = Shed.open();
        shed.at("10:00").does(new Act.Stop("ada", true));
        assertEquals(new Span(7 * 60, 10 * 60), shiftsOf(shed, "ada").get(0));
    }

    @Test
    void the_plan_looks_a_week_beyond_the_longest_hold_of_a_machine_that_is_half_done() {
        Shed shed = Shed.open();
        String quad = shed.quad();
        assertEquals(7, new Roster(shed.day()).days());
        shed.works("ada", quad, "in-underside");
        shed.does(new Act.HoldVisit(
                quad, Hold.Reason.PARTS, "", Optional.of(shed.now().plusSeconds(20L * 24 * 3600))));
        assertEquals(27, new Roster(shed.day()).days());
        shed.does(new Act.Release(quad));
        assertEquals(7, new Roster(shed.day()).days());
    }

    @Test
    void minutes_of_a_shift_leave_out_dinner_and_the_evening() {
        Shed shed = Shed.open();
        Roster roster = new Roster(shed.day());
        Person ada = person(shed, "ada");
        assertEquals(30 + 15, roster.shiftMinutes(ada, Shed.time("11:30"), Shed.time("12:45")));
        assertEquals(0, roster.shiftMinutes(ada, Shed.time("12:00"), Shed.time("12:30")));
        assertEquals(60, roster.shiftMinutes(ada, Shed.time("15:00"), Shed.time("19:00")));
        assertEquals(0, roster.shiftMinutes(ada, Shed.time("15:00"), Shed.time("14:00")));
    }

    private static List<Span> shiftsOf(Shed shed, String personId) {
        return new Roster(shed.day()).shiftsOf(person(shed, personId));
    }

    private static Person person(Shed shed, String id) {
        return shed.day().shop().expectPerson(id);
    }
}
