package org.shedboard.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.shedboard.estimate.Estimate;
import org.shedboard.estimate.Estimator;
import org.shedboard.estimate.Point;
import org.shedboard.register.Carried;
import org.shedboard.shop.Finding;
import org.shedboard.shop.Handover;
import org.shedboard.shop.Line;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Mud;
import org.shedboard.shop.OwnersWord;
import org.shedboard.shop.Payer;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;
import org.shedboard.shop.WorkKind;

/** What was left at a machine comes back with it, a fix comes to its work, and a machine not to be ridden is handed over. */
class InspectionTest {
    private static final LocalDate NEXT_WEEK = LocalDate.of(2026, 5, 19);

    private final Shed shed = Shed.open();

    @Test
    void what_was_watched_not_reached_or_not_fixed_goes_home_and_what_was_good_does_not() {
        String quad = quadWith(
                Shed.measured("", "battery", Mark.WATCH, 12.1),
                Shed.notReached("", "steering"),
                Shed.tick("", "frame", Mark.FIX));
        goesHome(quad, Optional.of(Shed.handed()));
        assertEquals(List.of("battery WATCH", "steering NOT_REACHED", "frame FIX"), home("quad-1"));
    }

    @Test
    void a_point_found_good_at_the_next_visit_is_left_behind() {
        goesHome(quadWith(Shed.tick("", "battery", Mark.WATCH)), Optional.empty());
        assertEquals(List.of("battery WATCH"), home("quad-1"));
        goesHome(comesBack("oil"), Optional.empty());
        assertEquals(List.of(), home("quad-1"));
    }

    @Test
    void a_point_not_reached_again_leaves_what_was_found_there_before() {
        goesHome(quadWith(Shed.tick("", "battery", Mark.WATCH)), Optional.empty());
        String again = comesBack("oil");
        shed.does(Shed.notReached(again, "battery"));
        goesHome(again, Optional.empty());
        assertEquals(List.of("battery WATCH"), home("quad-1"));
    }

    @Test
    void a_point_left_last_time_is_looked_at_whatever_the_depth_and_its_minutes_count() {
        // the frame is due at a standard look, an oil change brings a once-over
        goesHome(quadWith(Shed.notReached("", "frame")), Optional.empty());
        String again = comesBackIn(Mud.CAKED, "oil");
        Task look = shed.task(again, "inspect-underside");
        List<String> points = PointsDue.of(shed.day(), shed.visit(again), look).stream()
                .map(Point::id)
                .toList();
        assertEquals(List.of("pads", "frame"), points);
        assertEquals(12, look.handsOn());
        Estimate estimate = estimateOf(again);
        // caked: 20 to wash, and 6 for each of pads, frame, battery and steering
        assertEquals(20 + 4 * 6, estimate.cleaning());
        assertEquals(
                4 * 6,
                estimate.items().stream()
                        .filter(item -> item.kind() == WorkKind.INSPECT && item.points() > 0)
                        .mapToInt(item -> item.points() * 6)
                        .sum());
    }

    private Estimate estimateOf(String visitId) {
        Visit visit = shed.visit(visitId);
        return new Estimator(shed.day().books().catalogue())
                .estimate(shed.day().machineOf(visit).classId(), visit.intake(), visit.lines());
    }

    @Test
    void a_booking_looks_again_too_once_it_has_come() {
        goesHome(quadWith(Shed.notReached("", "frame")), Optional.empty());
        String booked = shed.does(Shed.booking("quad-1", "15:00", "oil")).orElseThrow();
        shed.does(new Act.Arrive(booked, Optional.empty(), OptionalInt.empty()));
        assertEquals(List.of("frame"), shed.visit(booked).intake().alsoLookAt());
    }

    @Test
    void a_riding_fix_of_last_time_stops_it_from_its_arrival_until_who_may_sign_off_finds_it_good() {
        goesHome(quadWith(Shed.tick("", "frame", Mark.FIX)), Optional.of(Shed.handed()));
        String again = comesBack("oil");
        assertEquals(List.of("frame"), stoppedBy(again));
        shed.assertRefused("fix_stands", new Act.Tick("cy", again, "frame", Mark.GOOD, OptionalDouble.empty(), ""));
        shed.does(Shed.notReached(again, "frame"));
        assertEquals(List.of("frame"), stoppedBy(again));
        shed.does(Shed.tick(again, "frame", Mark.GOOD));
        assertEquals(List.of(), stoppedBy(again));
    }

    @Test
    void the_rest_of_the_points_is_not_good_where_a_riding_fix_of_last_time_stands() {
        goesHome(quadWith(Shed.tick("", "frame", Mark.FIX)), Optional.of(Shed.handed()));
        String again = comesBack("oil");
        shed.works("cy", again, "in-underside", "raise").does(Shed.start("cy", again, "inspect-underside"));
        shed.assertRefused("fix_stands", Shed.finish("cy", again, "inspect-underside"));
    }

    @Test
    void a_fix_found_now_is_not_taken_away_by_not_reaching_it() {
        String quad = quadWith(Shed.tick("", "frame", Mark.FIX));
        shed.assertRefused("fix_stands", Shed.notReached(quad, "frame"));
        assertEquals(List.of("frame"), stoppedBy(quad));
    }

    @Test
    void the_door_tells_what_was_left_the_most_urgent_first() {
        goesHome(
                quadWith(
                        Shed.measured("", "battery", Mark.WATCH, 12.1),
                        Shed.notReached("", "steering"),
                        Shed.tick("", "frame", Mark.FIX)),
                Optional.of(Shed.handed()));
        shed.on(NEXT_WEEK, "07:00");
        List<DoorNote> notes = DoorNotes.of(shed.day(), Shed.takeIn("quad-1", Shed.CLEAN, "oil"), shed.now()).stream()
                .filter(note -> note.kind().name().startsWith("LAST"))
                .toList();
        assertEquals(
                List.of(
                        DoorNote.of(DoorNote.Kind.LAST_NOT_TO_RIDE, "frame (Ada, 12 May)"),
                        DoorNote.of(DoorNote.Kind.LAST_WATCH, "battery 12.1 V (Ada, 12 May)"),
                        DoorNote.of(DoorNote.Kind.LAST_NOT_REACHED, "steering (Ada, 12 May)")),
                notes);
    }

    @Test
    void a_handover_is_kept_with_who_told_whom_what() {
        String quad = quadWith(Shed.tick("", "frame", Mark.FIX));
        goesHome(quad, Optional.of(Shed.handed()));
        assertEquals(
                Optional.of(new Handover("ada", "Tarn", "not to be ridden: the pads are gone", shed.now())),
                shed.visit(quad).handover());
    }

    @Test
    void a_yes_adds_the_work_for_the_owner_and_keeps_who_was_asked() {
        String quad = quadWith(Shed.tick("", "pads", Mark.FIX));
        shed.does(Shed.ownerSaid(quad, "pads", OwnersWord.Answer.YES));
        assertEquals(
                List.of("oil", "brakes"),
                shed.visit(quad).lines().stream().map(Line::workId).toList());
        assertTrue(shed.visit(quad).findTask("pads-change").isPresent());
        OwnersWord word =
                shed.visit(quad).findingAt("pads").flatMap(Finding::word).orElseThrow();
        assertEquals(new OwnersWord(OwnersWord.Answer.YES, "brakes", "ada", "Tarn", shed.now()), word);
    }

    @Test
    void a_no_adds_nothing_and_goes_home_with_the_fix() {
        String quad = quadWith(Shed.tick("", "pads", Mark.FIX));
        shed.does(Shed.ownerSaid(quad, "pads", OwnersWord.Answer.NO));
        assertEquals(1, shed.visit(quad).lines().size());
        goesHome(quad, Optional.of(Shed.handed()));
        Carried carried =
                shed.day().books().register().carriedAt("quad-1", "pads").orElseThrow();
        assertEquals(Optional.of(OwnersWord.Answer.NO), carried.finding().word().map(OwnersWord::answer));
    }

    @Test
    void the_owner_is_to_be_asked_until_they_said_yes_or_no() {
        String quad = quadWith(Shed.tick("", "pads", Mark.FIX));
        assertTrue(isToAsk());
        shed.does(Shed.ownerSaid(quad, "pads", OwnersWord.Answer.LATER));
        assertTrue(isToAsk());
        shed.does(Shed.ownerSaid(quad, "pads", OwnersWord.Answer.NO));
        assertFalse(isToAsk());
    }

    private boolean isToAsk() {
        return Concerns.of(shed.outlook()).stream().anyMatch(concern -> concern.kind() == Concern.Kind.FIX_TO_ASK);
    }

    @Test
    void a_fix_for_which_the_work_is_wanted_already_is_not_asked_about() {
        String quad = quadWith(Shed.tick("", "pads", Mark.FIX));
        shed.does(new Act.AddWork(quad, List.of(new Act.Wanted("brakes", Payer.OWNER))));
        assertEquals(List.of(), FixOffer.toAsk(shed.day(), shed.visit(quad)));
    }

    @Test
    void a_reading_after_the_yes_keeps_it() {
        String quad = quadWith(Shed.tick("", "pads", Mark.FIX));
        shed.does(Shed.ownerSaid(quad, "pads", OwnersWord.Answer.YES));
        shed.does(Shed.measured(quad, "pads", Mark.FIX, 0.9));
        assertTrue(shed.visit(quad).findingAt("pads").flatMap(Finding::word).isPresent());
        shed.does(Shed.tick(quad, "pads", Mark.GOOD));
        assertTrue(shed.visit(quad).findingAt("pads").flatMap(Finding::word).isPresent());
    }

    @Test
    void an_offer_says_the_work_its_minutes_when_it_is_ready_and_what_becomes_of_the_promises() {
        String quad = quadWith(Shed.tick("", "pads", Mark.FIX));
        shed.does(Shed.promise(quad, "09:00", "", false));
        String other = shed.does(Shed.takeIn("quad-2", Mud.CLEAN, "oil")).orElseThrow();
        shed.does(Shed.promise(other, "15:00", "", false));
        FixOffer offer = offer(quad, "pads");
        assertEquals("brakes", offer.work().id());
        // one task of 30 catalogue minutes, of which a median job takes about 30
        assertTrue(
                offer.range().likely() >= 29 && offer.range().likely() <= 31,
                offer.range().toString());
        assertTrue(offer.range().safe() > offer.range().likely());
        assertTrue(offer.ready().orElseThrow().isAfter(offer.readyBefore().orElseThrow()));
        assertEquals(
                List.of(quad, other),
                offer.promises().stream().map(FixOffer.Kept::visitId).toList());
        assertEquals(1, shed.visit(quad).lines().size(), "an offer changes nothing");
    }

    @Test
    void a_promise_that_the_work_breaks_is_endangered() {
        String quad = quadWith(Shed.tick("", "pads", Mark.FIX));
        shed.does(Shed.promise(quad, "08:20", "", false));
        FixOffer.Kept own = offer(quad, "pads").promises().get(0);
        assertTrue(own.before().orElseThrow() >= 50, own.toString());
        assertTrue(own.isEndangered(), own.toString());
        assertTrue(own.isChanged());
    }

    private FixOffer offer(String visit, String point) {
        FixOffer.Answer answer = FixOffer.of(shed.outlook(), visit, point);
        return ((FixOffer.Answer.Given) answer).offer();
    }

    @Test
    void whoever_signs_off_has_the_fixes_before_them_again() {
        String quad = quadWith(Shed.tick("", "pads", Mark.FIX));
        Visit visit = shed.visit(quad);
        Task signOff = visit.tasks().stream()
                .filter(task -> task.kind() == WorkKind.SIGN_OFF)
                .findFirst()
                .orElseThrow();
        assertEquals(
                List.of("pads"),
                PointsDue.of(shed.day(), visit, signOff).stream().map(Point::id).toList());
        assertEquals(List.of(), PointsDue.openOf(shed.day(), visit, signOff));
    }

    /** A clean quad here for its oil, at which this was found. */
    private String quadWith(Act... ticks) {
        String quad = shed.quad();
        for (Act act : ticks) {
            Act.Tick tick = (Act.Tick) act;
            shed.does(new Act.Tick(tick.personId(), quad, tick.pointId(), tick.mark(), tick.measured(), tick.note()));
        }
        return quad;
    }

    private void goesHome(String quad, Optional<Act.Collect.Handed> handed) {
        shed.worksThrough("ada", quad).works("bo", quad, "sign-off");
        shed.does(new Act.Collect(quad, handed));
    }

    private String comesBack(String work) {
        return comesBackIn(Mud.CLEAN, work);
    }

    private String comesBackIn(Mud mud, String work) {
        shed.on(NEXT_WEEK, "07:00")
                .does(new Act.OpenDay("ada", List.of(here("ada"), here("bo"), here("cy")), shed.bothChecked()));
        return shed.does(Shed.takeIn("quad-1", mud, work)).orElseThrow();
    }

    private Act.OpenDay.Here here(String person) {
        return new Act.OpenDay.Here(person, shed.now(), shed.now().plusSeconds(9 * 3600));
    }

    private List<String> home(String machine) {
        return shed.day().books().register().carriedBy(machine).stream()
                .map(each -> each.finding().pointId() + " " + each.finding().mark())
                .toList();
    }

    private List<String> stoppedBy(String visit) {
        return Riding.stoppedBy(shed.day(), shed.visit(visit)).stream()
                .map(Point::id)
                .toList();
    }
}
