package org.shedboard.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shedboard.estimate.Estimator;
import org.shedboard.register.NextDue;
import org.shedboard.register.Reading;
import org.shedboard.register.Rung;
import org.shedboard.shop.Condition;
import org.shedboard.shop.Intake;
import org.shedboard.shop.Line;
import org.shedboard.shop.Payer;
import org.shedboard.shop.Visit;

/** Whom to ring, in the demonstration at the moment it opens. */
class RingListTest {
    private static final Day DAY = Demonstration.day();
    private static final Instant NOW = Demonstration.opens();
    private static final RingList LIST = RingList.of(DAY, NOW, 1);

    @Test
    void the_demonstration_has_a_sensible_list() {
        assertTrue(
                LIST.calls().size() >= 10 && LIST.calls().size() <= 40,
                LIST.calls().size() + " machines");
    }

    @Test
    void the_most_overdue_stands_first_and_nothing_is_due_after_the_week() {
        List<LocalDate> dates =
                LIST.calls().stream().map(call -> call.due().dates().likely()).toList();
        assertEquals(dates.stream().sorted().toList(), dates);
        assertTrue(dates.get(dates.size() - 1).isBefore(LIST.today().plusDays(7)));
    }

    @Test
    void two_weeks_hold_all_of_one_week_and_more() {
        RingList longer = RingList.of(DAY, NOW, 2);
        assertTrue(longer.calls().containsAll(LIST.calls()));
        assertTrue(longer.calls().size() > LIST.calls().size());
    }

    @Test
    void a_machine_that_is_here_or_booked_is_not_rung_about() {
        List<String> with = DAY.visits().stream()
                .filter(visit -> visit.state().isOpen() || visit.state().isHere())
                .map(Visit::machineId)
                .toList();
        assertFalse(with.isEmpty());
        assertTrue(
                LIST.calls().stream()
                        .noneMatch(call -> with.contains(call.machine().id())),
                with.toString());
    }

    @Test
    void what_would_come_is_what_the_catalogue_says_of_it_at_the_mud_of_the_last_visit() {
        RingList.Call call = LIST.calls().get(0);
        var mud = DAY.books()
                .upkeep()
                .lastVisit(call.machine().id())
                .orElseThrow()
                .mud();
        Line line = new Line("L", call.work().id(), "", Payer.OWNER, call.work().lineParts());
        Intake intake = new Intake(NOW, mud, call.work().depth(), Condition.SOUND, "");
        int minutes = new Estimator(DAY.books().catalogue())
                .estimate(call.machine().classId(), intake, List.of(line))
                .handsOn();
        assertEquals(minutes, call.load().minutes());
        assertEquals(
                LIST.calls().stream().mapToInt(each -> each.load().minutes()).sum(),
                LIST.load().minutes());
    }

    @Test
    void an_owner_who_comes_is_not_rung_again_and_stays_noted() {
        RingList.Call first = LIST.calls().get(0);
        Day rung = after(new Act.NoteRung(first.machine().id(), Rung.Said.BOOKED, Optional.empty(), "", "P1"));
        assertFalse(isOn(RingList.of(rung, NOW.plusSeconds(60), 1), first));
    }

    @Test
    void an_owner_to_be_rung_again_is_back_on_that_date_with_what_was_said() {
        RingList.Call first = LIST.calls().get(0);
        LocalDate again = LIST.today().plusDays(3);
        Day rung = after(new Act.NoteRung(first.machine().id(), Rung.Said.AGAIN, Optional.of(again), "shearing", "P1"));
        assertFalse(isOn(RingList.of(rung, NOW.plusSeconds(60), 1), first));
        RingList later = RingList.of(rung, NOW.plusSeconds(3 * 86_400), 1);
        assertTrue(isOn(later, first));
        assertEquals(
                Optional.of("shearing"),
                later.calls().stream()
                        .filter(call -> call.machine().equals(first.machine()))
                        .findFirst()
                        .flatMap(RingList.Call::rung)
                        .map(Rung::note));
    }

    @Test
    void a_machine_with_a_replaced_meter_still_has_a_use_per_day() {
        var meter = DAY.books().upkeep().meterOf("M99", Reading.Unit.HOURS).orElseThrow();
        assertTrue(meter.last().value() < 100 && meter.standing().get(0).value() > 1000);
        assertTrue(meter.use().orElseThrow().likely() > 0.1);
    }

    @Test
    void a_reading_from_the_owner_moves_the_date() {
        RingList.Call first = LIST.calls().stream()
                .filter(call -> call.due().by() == NextDue.By.HOURS)
                .findFirst()
                .orElseThrow();
        double before = first.due().dial().orElseThrow().now();
        Day read = after(new Act.ReadMeter(
                first.machine().id(), Reading.Unit.HOURS, Math.floor(before) + 5, Reading.Told.RIGHT_AS_TYPED, "P1"));
        NextDue due = read.books().upkeep().nextDue(first.machine(), NOW).orElseThrow();
        assertEquals(Math.floor(before) + 5, due.dial().orElseThrow().now(), 1e-6);
    }

    private static boolean isOn(RingList list, RingList.Call call) {
        return list.calls().stream().anyMatch(each -> each.machine().equals(call.machine()));
    }

    private static Day after(Act act) {
        return ((Outcome.Done) Acts.apply(DAY, act, NOW)).day();
    }
}
