package org.shedboard.hours;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shedboard.hours.Activity.Break;
import org.shedboard.hours.Activity.OnStay;
import org.shedboard.hours.Activity.OtherWork.Kind;
import org.shedboard.hours.Stretch.Use;
import org.shedboard.hours.Tally.PersonHours;
import org.shedboard.hours.Tally.VisitHours;
import org.shedboard.shop.Step;

class TallyTest {
    private static final OnStay WASH = new OnStay("V1", Step.WASH);

    private static Clocked day() {
        return new Clocked().here("07:00", "16:00");
    }

    @Test
    void touching_entries_share_no_minute_and_lose_none() {
        Tally tally =
                day().stay("07:00:00", "08:10:40").stay("08:10:40", "09:00:00").tally();
        assertEquals(120, tally.onMachines());
        assertEquals(List.of(new VisitHours("V1", Map.of(WASH, 120), Map.of("Ada", 120), 0)), tally.visits());
    }

    @Test
    void what_is_left_of_the_time_in_the_shop_is_unaccounted() {
        PersonHours ada = day().stay("08:00", "09:00").ada();
        assertEquals(9 * 60, ada.attended());
        assertEquals(8 * 60, ada.unaccounted());
    }

    @Test
    void a_planned_meal_cuts_an_entry_that_runs_through_it_and_is_not_attended() {
        PersonHours ada = day().planned("12:00", "12:30").stay("11:45", "12:45").ada();
        assertEquals(30, ada.onMachines());
        assertEquals(30, ada.free());
        assertEquals(9 * 60 - 30, ada.attended());
    }

    @Test
    void a_planned_rest_cuts_it_too_but_is_attended() {
        PersonHours ada = day().planned("10:00", "10:15").stay("09:45", "10:45").ada();
        assertEquals(45, ada.onMachines());
        assertEquals(15, ada.rests());
        assertEquals(9 * 60, ada.attended());
    }

    @Test
    void who_clocks_on_or_off_within_a_planned_break_worked_there() {
        PersonHours on = day().planned("12:00", "12:30").stay("12:20", "13:00").ada();
        assertEquals(40, on.onMachines());
        assertEquals(20, on.rests(), "the meal was cut to a rest");
        PersonHours off = day().planned("12:00", "13:00").stay("11:00", "12:10").ada();
        assertEquals(70, off.onMachines());
        assertEquals(50, off.free());
    }

    @Test
    void a_break_between_a_rest_and_a_meal_is_worked_until_somebody_says_and_is_asked_about() {
        PersonHours ada = day().pause(Break.Kind.MEAL, "12:00", "12:25").ada();
        assertEquals(25, ada.rests());
        assertEquals(25, ada.restsToSay());
        assertEquals(9 * 60, ada.attended());
    }

    @Test
    void once_somebody_said_that_it_was_free_it_is_not_attended() {
        PersonHours ada = day().pause(Break.Kind.MEAL, "12:00", "12:25")
                .corrected("C2", new Break(Break.Kind.OFF_DUTY), "12:00", "12:25")
                .ada();
        assertEquals(0, ada.restsToSay());
        assertEquals(25, ada.free());
        assertEquals(9 * 60 - 25, ada.attended());
    }

    @Test
    void a_clocked_meal_stands_for_the_planned_one_wherever_it_lies() {
        PersonHours ada = day().planned("12:00", "12:30")
                .stay("11:00", "13:00")
                .pause(Break.Kind.MEAL, "13:00", "13:40")
                .ada();
        assertEquals(120, ada.onMachines());
        assertEquals(40, ada.free());
    }

    @Test
    void a_clocked_rest_leaves_the_planned_meal_where_it_is() {
        PersonHours ada = day().planned("12:00", "12:30")
                .pause(Break.Kind.REST, "13:00", "13:40")
                .ada();
        assertEquals(40, ada.rests());
        assertEquals(30, ada.free());
    }

    @Test
    void a_shop_may_say_that_only_clocked_breaks_are_breaks() {
        HoursRules usual = HoursRules.USUAL;
        HoursRules clocked = new HoursRules(
                usual.attendance(), usual.charge(), usual.basis(), new BreakRule(20, 30, false), usual.lentMinutes());
        PersonHours ada = day().by(clocked)
                .planned("12:00", "12:30")
                .stay("11:00", "13:00")
                .ada();
        assertEquals(120, ada.onMachines());
        assertEquals(9 * 60, ada.attended());
    }

    @Test
    void who_has_entries_outside_the_noted_presence_was_present_for_them() {
        PersonHours ada = day().stay("06:40", "07:00").stay("15:50", "16:15").ada();
        assertEquals(20 + 9 * 60 + 15, ada.attended());
        assertEquals(45, ada.onMachines());
    }

    @Test
    void who_left_and_came_back_was_away_in_between() {
        PersonHours ada =
                new Clocked().here("07:00", "11:00").here("13:30", "16:00").ada();
        assertEquals(4 * 60 + 150, ada.attended());
    }

    @Test
    void an_open_entry_lasts_until_now() {
        Tally tally = day().stay("08:00", "").seenAt("08:25").tally();
        assertEquals(25, tally.onMachines());
        assertEquals(List.of(), tally.unsettled());
    }

    @Test
    void an_entry_that_was_open_at_midnight_counts_nothing_until_somebody_says_when_it_ended() {
        Clocked forgot = new Clocked().stay("15:00", "").seenAt("+1 06:40");
        assertEquals(0, forgot.tally().onMachines());
        assertEquals(
                List.of("C1"),
                forgot.tally().unsettled().stream().map(ClockEntry::id).toList());
        assertEquals(
                0,
                forgot.tally(Clocked.DATE.plusDays(1), Clocked.DATE.plusDays(2)).attended());
    }

    @Test
    void an_entry_over_midnight_counts_on_each_day_what_falls_into_it() {
        Clocked late = new Clocked().stay("22:30", "+1 01:15").seenAt("+1 09:00");
        assertEquals(90, late.tally().onMachines());
        assertEquals(
                75,
                late.tally(Clocked.DATE.plusDays(1), Clocked.DATE.plusDays(2)).onMachines());
        assertEquals(165, late.tally(Clocked.DATE, Clocked.DATE.plusDays(2)).onMachines());
    }

    @Test
    void of_two_entries_that_share_minutes_the_later_one_has_them_and_that_is_told() {
        Tally tally = day().stay("V1", Step.TOPSIDE, "08:00", "10:00")
                .stay("V2", Step.TOPSIDE, "09:00", "09:20")
                .tally();
        assertEquals(
                Map.of("V1", 100, "V2", 20),
                Map.of(
                        tally.visits().get(0).visitId(), tally.visits().get(0).worked(),
                        tally.visits().get(1).visitId(), tally.visits().get(1).worked()));
        assertEquals(
                List.of("C2"), tally.overlapped().stream().map(ClockEntry::id).toList());
    }

    @Test
    void an_entry_ended_by_a_clock_that_was_put_back_ends_where_it_began() {
        ClockEntry put =
                new ClockEntry("C9", "Ada", WASH, Clocked.at("10:00"), Optional.empty()).endedAt(Clocked.at("09:10"));
        assertEquals(Optional.of(Clocked.at("10:00")), put.to());
        assertEquals(0, day().row(put).tally().onMachines());
    }

    @Test
    void a_correction_takes_the_place_of_what_it_names_and_may_be_corrected_itself() {
        Clocked day = day().stay("08:00", "12:00").corrected("C2", WASH, "08:00", "09:00");
        assertEquals(60, day.tally().onMachines());
        assertEquals(30, day.corrected("C3", WASH, "08:00", "08:30").tally().onMachines());
        assertEquals(0, day.struck("C4").tally().onMachines());
    }

    @Test
    void a_corrected_presence_counts_instead_of_the_noted_one() {
        assertEquals(
                8 * 60,
                day().corrected("C1", new Activity.AtWork(), "08:00", "16:00")
                        .ada()
                        .attended());
    }

    @Test
    void who_wrote_that_they_worked_through_a_planned_break_did() {
        PersonHours ada = day().planned("12:00", "12:30")
                .stay("11:00", "13:00")
                .corrected("C2", WASH, "11:00", "13:00")
                .ada();
        assertEquals(120, ada.onMachines());
        assertEquals(0, ada.free());
    }

    @Test
    void a_hand_lent_for_less_than_the_limit_stays_with_the_first_machine() {
        OnStay own = new OnStay("V1", Step.UNDERSIDE);
        OnStay other = new OnStay("V2", Step.TOPSIDE);
        Tally tally = day().on("Ada", new Activity.Lent(other, own), "08:00", "08:09")
                .on("Ada", new Activity.Lent(other, own), "09:00", "09:10")
                .tally();
        assertEquals(
                List.of(
                        new VisitHours("V1", Map.of(own, 9), Map.of("Ada", 9), 9),
                        new VisitHours("V2", Map.of(other, 10), Map.of("Ada", 10), 0)),
                tally.visits());
    }

    @Test
    void other_work_is_told_apart_by_its_kind_and_is_on_no_machine() {
        PersonHours ada = day().other(Kind.FETCHING, "07:00", "07:20")
                .other(Kind.PAPERWORK, "07:20", "07:30")
                .other(Kind.FETCHING, "09:00", "09:05")
                .ada();
        assertEquals(Map.of(Kind.FETCHING, 25, Kind.PAPERWORK, 10), ada.other());
        assertEquals(0, ada.onMachines());
    }

    @Test
    void the_stretches_of_a_day_lie_end_to_end_through_all_the_time_in_the_shop() {
        PersonDay ada = day().planned("12:00", "12:30")
                .stay("08:00", "12:10")
                .other(Kind.TRAINING, "13:00", "14:00")
                .tally()
                .days()
                .get(0);
        assertEquals(
                List.of(Use.UNACCOUNTED, Use.ON_MACHINE, Use.REST, Use.UNACCOUNTED, Use.OTHER_WORK, Use.UNACCOUNTED),
                ada.stretches().stream().map(Stretch::use).toList());
        for (int i = 1; i < ada.stretches().size(); i++) {
            assertEquals(ada.stretches().get(i - 1).to(), ada.stretches().get(i).from());
        }
        assertEquals(Clocked.at("07:00"), ada.stretches().get(0).from());
        assertEquals(Clocked.at("16:00"), ada.stretches().get(5).to());
    }

    @Test
    void who_is_not_of_the_shop_any_more_still_has_their_hours() {
        Tally tally = day().on("Old", WASH, "08:00", "09:00").tally();
        assertEquals("Old", tally.people().get(1).personId());
        assertEquals(60, tally.people().get(1).onMachines());
    }

    @Test
    void nobody_here_makes_an_empty_tally() {
        Tally tally = new Clocked().tally();
        assertTrue(tally.days().isEmpty());
        assertEquals(0, tally.attended());
    }

    @Test
    void a_meal_that_nobody_ended_by_midnight_does_not_stand_for_the_planned_one() {
        PersonHours ada = day().planned("12:00", "12:30")
                .pause(Break.Kind.MEAL, "12:05", "")
                .seenAt("+1 07:00")
                .ada();
        assertEquals(30, ada.free());
        assertEquals(9 * 60 - 30, ada.attended());
    }
}
