package org.shedboard.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.shedboard.ahead.DayAhead;
import org.shedboard.ahead.Weeks;
import org.shedboard.hours.Activity;
import org.shedboard.shop.Hold;
import org.shedboard.shop.Mud;
import org.shedboard.shop.PlaceKind;
import org.shedboard.shop.Skill;

/** Ada and Bo have 8.5 hours a day, Cy, who is slow, has 340 minutes of the catalogue's in them. */
class WeeksAheadTest {
    private static final LocalDate THURSDAY = LocalDate.of(2026, 5, 14);
    private static final int SHIFT = 510;
    private static final int CYS = SHIFT * 100 / 150;

    private final Shed shed = Shed.open();

    @Test
    void four_weeks_of_working_days_are_looked_at() {
        Weeks weeks = weeks();
        assertEquals(20, weeks.days().size());
        assertEquals(Shed.DATE, weeks.days().get(0).date());
        assertEquals(LocalDate.of(2026, 6, 8), weeks.days().get(19).date());
        assertTrue(weeks.days().stream().noneMatch(day -> day.date().getDayOfWeek() == DayOfWeek.SUNDAY));
    }

    @Test
    void people_have_their_shifts_less_breaks_in_minutes_of_the_catalogue() {
        DayAhead thursday = on(THURSDAY);
        assertEquals(2 * SHIFT + CYS, thursday.people().open());
        assertEquals(2 * SHIFT, thursday.open(Skill.BRAKES));
        assertEquals(2 * SHIFT + CYS, thursday.open(Skill.SERVICE));
        assertEquals(SHIFT, thursday.open(PlaceKind.WASH));
        assertEquals(2 * SHIFT, thursday.open(PlaceKind.HOIST));
    }

    @Test
    void today_only_the_hours_to_come_count_and_a_hoist_locked_out_is_shut_until_tomorrow() {
        shed.does(new Act.CheckHoist(Shed.lockedOut("H2")));
        shed.at("15:00");
        DayAhead today = on(Shed.DATE);
        assertEquals(2 * 60 + 40, today.people().open());
        assertEquals(60, today.open(PlaceKind.HOIST));
        assertEquals(2 * SHIFT, on(THURSDAY).open(PlaceKind.HOIST));
    }

    @Test
    void an_errand_takes_its_time_out_of_the_day_it_is_on() {
        shed.does(new Act.PlanErrand("bo", Activity.OtherWork.Kind.FETCHING, at(THURSDAY, "11:00"), 90, ""));
        assertEquals(2 * SHIFT + CYS - 60, on(THURSDAY).people().open());
        assertEquals(2 * SHIFT - 60, on(THURSDAY).open(Skill.BRAKES));
    }

    /** Drive in 3, raise 4, look 6, drain 5 and 10 unattended, plug 2, lower 4: it stands 4 longer than one person's hands are on it. */
    @Test
    void a_booking_lies_on_its_day_with_its_hands_and_its_stays() {
        book("quad-1", THURSDAY);
        DayAhead thursday = on(THURSDAY);
        assertEquals(1, thursday.visitIds().size());
        assertEquals(3 + 3, thursday.people().booked(Skill.WASH));
        assertEquals(4 + 4, thursday.people().booked(Skill.HOIST));
        assertEquals(28, thursday.byKind().get(PlaceKind.HOIST));
        assertEquals(3 + 6 + 5, thursday.byKind().get(PlaceKind.FLOOR));
        assertEquals(0, on(THURSDAY.plusDays(1)).people().booked());
    }

    @Test
    void a_machine_too_heavy_for_the_light_hoist_is_booked_on_the_other_alone() {
        book("tractor-1", THURSDAY);
        assertEquals(
                List.of(List.of("H2"), List.of("H2", "F")),
                on(THURSDAY).places().claims().stream()
                        .map(claim -> claim.what().only())
                        .toList());
    }

    @Test
    void what_is_left_of_a_machine_here_lies_on_today_and_what_does_not_fit_goes_over() {
        shed.does(Shed.takeIn("quad-1", Mud.CAKED, "oil", "brakes"));
        int all = on(Shed.DATE).people().booked();
        assertTrue(all > 60, all + " min");
        shed.at("15:50");
        DayAhead tomorrow = on(Shed.DATE.plusDays(1));
        assertEquals(all - 2 * 10 - 10 * 100 / 150, tomorrow.carried());
        assertEquals(tomorrow.carried(), tomorrow.people().booked());
        assertEquals(0, on(THURSDAY).people().booked());
    }

    @Test
    void a_held_machine_keeps_its_place_and_goes_on_when_its_hold_ends() {
        String quad = shed.quad();
        shed.does(Shed.startIn("H1", "ada", quad, "in-underside"));
        shed.does(new Act.HoldVisit(quad, Hold.Reason.PARTS, "", Optional.of(at(THURSDAY, "12:00"))));
        assertEquals(SHIFT, on(Shed.DATE).open(PlaceKind.HOIST));
        assertEquals(SHIFT, on(Shed.DATE.plusDays(1)).open(PlaceKind.HOIST));
        assertEquals(SHIFT + 210, on(THURSDAY).open(PlaceKind.HOIST));
        assertEquals(0, on(Shed.DATE).people().booked());
        assertEquals(List.of(quad), on(THURSDAY).visitIds());
    }

    @Test
    void a_day_is_full_of_a_kind_when_less_than_a_quarter_of_an_hour_is_left() {
        for (int i = 0; i < 17; i++) {
            bookNew(THURSDAY);
        }
        assertEquals(17 * 28, on(THURSDAY).byKind().get(PlaceKind.HOIST));
        assertFalse(on(THURSDAY).isFull(PlaceKind.HOIST));
        assertFalse(on(THURSDAY).isFull(PlaceKind.WASH));
        for (int i = 0; i < 19; i++) {
            bookNew(THURSDAY);
        }
        // 36 stays of 28 minutes on two hoists of 510 leave 12 there; those of 14 on the floor leave 6 more
        assertTrue(on(THURSDAY).isFull(PlaceKind.HOIST));
        assertFalse(on(THURSDAY).isFull(PlaceKind.FLOOR));
        assertFalse(on(THURSDAY).isFull(PlaceKind.WASH));
    }

    private void bookNew(LocalDate date) {
        shed.does(Shed.takeIn(
                new Act.TakeIn.Which(Optional.empty(), "quad", "a quad", OptionalInt.empty(), ""),
                new Act.TakeIn.Whose(Optional.of("O-a"), "", ""),
                Mud.CLEAN,
                OptionalInt.empty(),
                Optional.of(at(date, "08:00")),
                "oil"));
    }

    private void book(String machine, LocalDate date) {
        shed.does(Shed.takeIn(
                Act.TakeIn.Which.known(machine),
                Shed.nobodyNew(),
                Mud.CLEAN,
                OptionalInt.empty(),
                Optional.of(at(date, "08:00")),
                "oil"));
    }

    private static Instant at(LocalDate date, String time) {
        return date.atTime(LocalTime.parse(time)).atZone(Shed.ZONE).toInstant();
    }

    private Weeks weeks() {
        return WeeksAhead.of(shed.day(), shed.now());
    }

    private DayAhead on(LocalDate date) {
        return weeks().find(date).orElseThrow();
    }
}
