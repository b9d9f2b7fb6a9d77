package org.shedboard.day;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.shedboard.estimate.PastFinding;
import org.shedboard.estimate.PastVisit;
import org.shedboard.estimate.Point;
import org.shedboard.register.Carried;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Finding;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Mud;
import org.shedboard.shop.OwnersWord;
import org.shedboard.shop.Step;
import org.shedboard.shop.Visit;

/** Past visits of one quad of the demonstration shop, and what it has with it when it comes again. */
class PastTest {
    private static final String QUAD = "M42";
    private static final LocalDate FIRST = LocalDate.of(2026, 2, 2);

    private final List<PastVisit> past = new ArrayList<>();

    @Test
    void what_was_watched_or_not_reached_is_carried_to_the_next_visit_and_what_was_good_is_not() {
        visited("oil-quad", found("lights", Mark.WATCH), found("battery", Mark.GOOD), found("tyres", Mark.NOT_REACHED));
        assertEquals(List.of("lights WATCH", "tyres NOT_REACHED"), carried());
    }

    @Test
    void a_later_visit_replaces_what_it_looked_at_and_leaves_the_rest() {
        visited("oil-quad", found("lights", Mark.WATCH), found("battery", Mark.WATCH));
        visited("oil-quad", found("battery", Mark.GOOD), found("lights", Mark.NOT_REACHED));
        assertEquals(List.of("lights WATCH"), carried());
    }

    @Test
    void a_fix_is_carried_with_the_owners_word_until_its_work_is_done() {
        visited("oil-quad", declined("lights", "electrics"));
        assertEquals(List.of("lights FIX"), carried());
        OwnersWord word = register().get(0).finding().word().orElseThrow();
        assertEquals(OwnersWord.Answer.NO, word.answer());
        assertEquals("electrics", word.workId());
        // the lights are looked at on the drive, after the step in which the work on them is done
        visited("electrics", found("lights", Mark.FIX));
        assertEquals(List.of(), carried());
    }

    @Test
    void a_fix_that_stops_riding_is_carried_although_its_work_was_done() {
        visited("brakes-front", found("pads-front", Mark.FIX));
        assertEquals(List.of("pads-front FIX"), carried());
    }

    @Test
    void a_past_visit_is_saved_with_its_meter_and_findings_and_what_its_machine_took_home_once() {
        visited("oil-quad", found("lights", Mark.WATCH));
        visited("oil-quad", found("lights", Mark.FIX));
        List<Change> changes = beginning().changes();
        List<Visit> visits = changes.stream()
                .filter(Change.VisitSaved.class::isInstance)
                .map(each -> ((Change.VisitSaved) each).visit())
                .toList();
        assertEquals(OptionalInt.of(740), visits.get(0).intake().meterHours());
        assertEquals(
                List.of(Mark.WATCH),
                visits.get(0).findings().stream().map(Finding::mark).toList());
        Change.CarriedSaved saved = changes.stream()
                .filter(Change.CarriedSaved.class::isInstance)
                .map(Change.CarriedSaved.class::cast)
                .filter(each -> each.machineId().equals(QUAD))
                .reduce((one, other) -> {
                    throw new AssertionError("saved twice");
                })
                .orElseThrow();
        assertEquals(register(), saved.carried());
        assertEquals(visits.get(1).id(), saved.carried().get(0).visitId());
    }

    @Test
    void values_read_off_in_past_visits_make_the_wear_of_the_point() {
        visited("oil-quad", read(5.0));
        visited("oil-quad", read(4.0));
        visited("oil-quad", read(3.0));
        Point pads = Demonstration.CATALOGUE
                .expectClass("quad")
                .findPoint("pads-rear")
                .orElseThrow();
        Day day = beginning().day();
        Wear wear = Wear.of(pads, day.books().register().measuredAt(QUAD, "pads-rear"));
        assertEquals(-10.0, wear.line().orElseThrow().perHundredHours(), 1e-9);
        assertEquals(
                OptionalInt.of(760), wear.values().get(wear.values().size() - 1).meterHours());
    }

    @Test
    void only_a_point_that_the_depth_does_not_ask_for_is_one_to_look_at_whatever_the_depth() {
        visited("oil-quad", found("lights", Mark.GOOD), read(5.0));
        Visit visit = beginning().changes().stream()
                .filter(Change.VisitSaved.class::isInstance)
                .map(each -> ((Change.VisitSaved) each).visit())
                .findFirst()
                .orElseThrow();
        assertEquals(List.of("pads-rear"), visit.intake().alsoLookAt());
    }

    /** Ten hours on the meter and a week after the one before. */
    private void visited(String work, PastFinding... findings) {
        past.add(new PastVisit(
                FIRST.plusWeeks(past.size()),
                QUAD,
                Mud.CLEAN,
                Depth.ONCE_OVER,
                List.of(work),
                Map.of(Step.UNDERSIDE, 20, Step.TOPSIDE, 20, Step.DRIVE, 20),
                Map.of(Step.UNDERSIDE, "P2", Step.TOPSIDE, "P2", Step.DRIVE, "P1"),
                new PastVisit.Meters(OptionalInt.of(740 + 10 * past.size()), OptionalInt.empty(), false),
                List.of(findings)));
    }

    private static PastFinding found(String point, Mark mark) {
        return new PastFinding(point, mark, OptionalDouble.empty(), "as told", "P2", Optional.empty());
    }

    private static PastFinding read(double value) {
        return new PastFinding("pads-rear", Mark.WATCH, OptionalDouble.of(value), "", "P2", Optional.empty());
    }

    private static PastFinding declined(String point, String work) {
        return new PastFinding(
                point,
                Mark.FIX,
                OptionalDouble.empty(),
                "",
                "P2",
                Optional.of(new PastFinding.Asked(OwnersWord.Answer.NO, work, "P1", "the owner")));
    }

    private Beginning beginning() {
        return Beginning.of(Demonstration.CATALOGUE, Demonstration.SETUP.withPast(past), LocalDate.of(2026, 5, 12));
    }

    private List<Carried> register() {
        return beginning().day().books().register().carriedBy(QUAD);
    }

    private List<String> carried() {
        return register().stream()
                .map(each -> each.finding().pointId() + " " + each.finding().mark())
                .toList();
    }
}
