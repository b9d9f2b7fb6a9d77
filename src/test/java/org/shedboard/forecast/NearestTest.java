package org.shedboard.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.shedboard.forecast.RandomShop.CATALOGUE;
import static org.shedboard.forecast.RandomShop.PEOPLE;
import static org.shedboard.forecast.RandomShop.TODAY;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.shedboard.learn.Circumstances;
import org.shedboard.learn.Lesson;
import org.shedboard.learn.Sort;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Payer;
import org.shedboard.shop.Visit;

/** A muddy machine, looked at to the standard, among finished visits that differ from it in one thing each. */
class NearestTest {
    private static final String CLASS = CATALOGUE.classes().get(0).id();
    private static final String OTHER_CLASS = CATALOGUE.classes().get(1).id();
    private static final Visit VISIT = RandomShop.visit(
            CLASS,
            Mud.MUDDY,
            Depth.STANDARD,
            List.of(RandomShop.line("L1", CATALOGUE.worksFor(CLASS).get(0), Payer.OWNER)));
    private static final double MINUTES =
            VISIT.tasks().stream().mapToInt(task -> task.handsOn()).sum();

    private static Lesson finished(String id, String classId, Mud mud, Depth depth, double minutes, LocalDate date) {
        Circumstances under = new Circumstances(classId, mud, depth, OptionalInt.empty(), date, Map.of());
        return new Lesson(id, Sort.TOPSIDE, under, minutes, minutes * 1.1);
    }

    private static Lesson finished(String id, String classId, Mud mud, Depth depth, double minutes) {
        return finished(id, classId, mud, depth, minutes, TODAY.minusDays(20));
    }

    private static List<String> nearest(Set<String> ofSameMachine, Lesson... lessons) {
        Experience experience = Experience.of(CATALOGUE, PEOPLE, List.of(lessons), TODAY);
        VisitForecast forecast =
                RandomShop.forecast(Experience.none(CATALOGUE, PEOPLE).learned(), PEOPLE, VISIT);
        return Nearest.of(forecast, experience, ofSameMachine::contains).stream()
                .map(FinishedVisit::visitId)
                .toList();
    }

    @Test
    void the_nearest_differ_least_in_minutes_mud_depth_and_class() {
        assertEquals(
                List.of("a little longer", "dirtier", "dirtier and longer"),
                nearest(
                        Set.of(),
                        finished("another class", OTHER_CLASS, Mud.MUDDY, Depth.STANDARD, MINUTES),
                        finished("dirtier", CLASS, Mud.CAKED, Depth.STANDARD, MINUTES),
                        finished("twice as long and deeper", CLASS, Mud.MUDDY, Depth.FULL, MINUTES * 2.1),
                        finished("a little longer", CLASS, Mud.MUDDY, Depth.STANDARD, MINUTES * 1.2),
                        finished("dirtier and longer", CLASS, Mud.CAKED, Depth.STANDARD, MINUTES * 1.5)));
    }

    @Test
    void a_visit_of_the_same_machine_is_nearer() {
        assertEquals(
                List.of("same machine, longer", "as long"),
                nearest(
                        Set.of("same machine, longer"),
                        finished("as long", CLASS, Mud.MUDDY, Depth.STANDARD, MINUTES),
                        finished("same machine, longer", CLASS, Mud.MUDDY, Depth.STANDARD, MINUTES * 1.3)));
    }

    @Test
    void of_two_alike_the_newer_comes_first() {
        assertEquals(
                List.of("newer", "older"),
                nearest(
                        Set.of(),
                        finished("older", CLASS, Mud.MUDDY, Depth.STANDARD, MINUTES, TODAY.minusDays(9)),
                        finished("newer", CLASS, Mud.MUDDY, Depth.STANDARD, MINUTES, TODAY.minusDays(8))));
    }

    @Test
    void a_visit_whose_clock_was_forgotten_is_no_example_and_neither_is_the_visit_itself() {
        Lesson forgotten = finished("forgotten", CLASS, Mud.MUDDY, Depth.STANDARD, MINUTES);
        Lesson allDay = new Lesson("forgotten", Sort.WASH, forgotten.circumstances(), 20, 17 * 60);
        assertEquals(
                List.of("good"),
                nearest(
                        Set.of(),
                        finished("good", CLASS, Mud.CAKED, Depth.FULL, MINUTES),
                        forgotten,
                        allDay,
                        finished(VISIT.id(), CLASS, Mud.MUDDY, Depth.STANDARD, MINUTES)));
    }

    @Test
    void the_minutes_of_all_pieces_of_a_visit_are_counted_together() {
        Lesson topside = finished("both", CLASS, Mud.MUDDY, Depth.STANDARD, 50);
        Lesson wash = new Lesson("both", Sort.WASH, topside.circumstances(), 30, 40);
        Experience experience = Experience.of(CATALOGUE, PEOPLE, List.of(topside, wash), TODAY);
        VisitForecast forecast =
                RandomShop.forecast(Experience.none(CATALOGUE, PEOPLE).learned(), PEOPLE, VISIT);
        FinishedVisit visit = Nearest.of(forecast, experience, id -> false).get(0);
        assertEquals(80, visit.catalogueMinutes(), 1e-9);
        assertEquals(95, visit.actualMinutes(), 1e-9);
    }
}
