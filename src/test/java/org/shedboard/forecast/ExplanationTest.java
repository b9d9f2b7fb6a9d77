package org.shedboard.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.shedboard.forecast.RandomShop.CATALOGUE;
import static org.shedboard.forecast.RandomShop.PEOPLE;
import static org.shedboard.forecast.RandomShop.TODAY;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.shedboard.estimate.Catalogue;
import org.shedboard.estimate.MachineClass;
import org.shedboard.estimate.Work;
import org.shedboard.forecast.Explanation.Source;
import org.shedboard.learn.Circumstances;
import org.shedboard.learn.Learned;
import org.shedboard.learn.Lesson;
import org.shedboard.learn.Sort;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Line;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Payer;
import org.shedboard.shop.Visit;

class ExplanationTest {
    private static final String CLASS = CATALOGUE.classes().get(0).id();
    private static final Work WORK = CATALOGUE.worksFor(CLASS).get(0);

    static IntStream seeds() {
        return IntStream.range(0, 60);
    }

    /** Of any visit in a shop that believes what it likes. */
    private static VisitForecast drawn(int seed) {
        RandomShop shop = new RandomShop(seed);
        return shop.forecast(shop.experience());
    }

    private static Explanation explained(VisitForecast forecast) {
        return Explanation.of(forecast, Set.of());
    }

    private static Learned nothingLearned() {
        return Experience.none(CATALOGUE, PEOPLE).learned();
    }

    private static Visit visit(Mud mud, Depth depth) {
        return RandomShop.visit(CLASS, mud, depth, List.of(RandomShop.line("L1", WORK, Payer.OWNER)));
    }

    private static int sum(Explanation explained) {
        return explained.parts().stream().mapToInt(Explanation.Part::minutes).sum();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void the_parts_add_up_to_the_likely_minutes(int seed) {
        VisitForecast forecast = drawn(seed);
        assertEquals(forecast.range().likely(), sum(explained(forecast)));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void a_clean_machine_has_no_minutes_of_mud_and_a_once_over_none_of_depth(int seed) {
        VisitForecast forecast = drawn(seed);
        Explanation explained = explained(forecast);
        boolean isClean = forecast.visit().intake().mud() == Mud.CLEAN;
        boolean isShallow = forecast.visit().intake().depth() == Depth.ONCE_OVER;
        assertTrue(!isClean || explained.minutesFrom(Source.MUD) == 0, explained.toString());
        assertTrue(!isShallow || explained.minutesFrom(Source.DEPTH) == 0, explained.toString());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void more_mud_or_a_deeper_look_is_never_said_to_take_less(int seed) {
        MudAndDepth table = explained(drawn(seed)).table().orElseThrow();
        for (Mud mud : Mud.values()) {
            for (Depth depth : Depth.values()) {
                int here = table.likely(mud, depth);
                assertTrue(mud == Mud.CLEAN || table.likely(Mud.of(mud.grade() - 1), depth) <= here);
                assertTrue(depth == Depth.ONCE_OVER || table.likely(mud, Depth.values()[depth.ordinal() - 1]) <= here);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void what_it_takes_as_it_is_stands_in_the_table_of_other_mud_and_depth(int seed) {
        VisitForecast forecast = drawn(seed);
        MudAndDepth table = explained(forecast).table().orElseThrow();
        assertEquals(
                forecast.range().likely(),
                table.likely(
                        forecast.visit().intake().mud(),
                        forecast.visit().intake().depth()));
    }

    @Test
    void before_anything_is_learned_other_mud_is_what_a_visit_with_that_mud_takes() {
        VisitForecast muddy = RandomShop.forecast(nothingLearned(), PEOPLE, visit(Mud.MUDDY, Depth.STANDARD));
        VisitForecast clean = RandomShop.forecast(nothingLearned(), PEOPLE, visit(Mud.CLEAN, Depth.STANDARD));
        assertEquals(
                clean.range().likely(), explained(muddy).table().orElseThrow().likely(Mud.CLEAN, Depth.STANDARD));
    }

    @Test
    void work_of_a_slower_person_has_more_minutes_of_the_person() {
        Visit done = allBy("P2", visit(Mud.MUDDY, Depth.FULL));
        int usual = person(done, 1.0);
        int slow = person(done, 1.4);
        assertTrue(slow > usual + 10, slow + " minutes after " + usual);
    }

    private static int person(Visit visit, double slower) {
        Learned learned =
                Experience.of(CATALOGUE, PEOPLE, taught("P2", slower), TODAY).learned();
        return explained(RandomShop.forecast(learned, PEOPLE, visit)).minutesFrom(Source.PERSON);
    }

    /** Forty visits, every other one by this person, who takes so many times as long as everybody else. */
    private static List<Lesson> taught(String personId, double slower) {
        List<Lesson> lessons = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            String who = i % 2 == 0 ? personId : "P1";
            Circumstances under = new Circumstances(
                    CLASS, Mud.MUDDY, Depth.FULL, OptionalInt.of(6), TODAY.minusDays(41 - i), Map.of(who, 1.0));
            for (Sort sort : Sort.values()) {
                double scatter = 1 + 0.02 * (i % 4 - 1.5);
                lessons.add(new Lesson("V" + i, sort, under, 60, 60 * scatter * (i % 2 == 0 ? slower : 1)));
            }
        }
        return lessons;
    }

    private static Visit allBy(String personId, Visit visit) {
        Instant at = visit.intake().arrives();
        return visit.withStays(visit.stays().stream()
                .map(stay -> stay.withTasks(stay.tasks().stream()
                        .map(task -> task.with(task.progress().done(personId, at)))
                        .toList()))
                .toList());
    }

    static Stream<Catalogue> poorer() {
        Catalogue all = CATALOGUE;
        return Stream.of(
                with(List.of(), all.works()),
                with(
                        all.classes(),
                        all.works().stream()
                                .filter(work -> !work.id().equals(WORK.id()))
                                .toList()));
    }

    private static Catalogue with(List<MachineClass> classes, List<Work> works) {
        return new Catalogue(
                classes,
                works,
                CATALOGUE.usual(),
                CATALOGUE.spreads(),
                CATALOGUE.testDriveMinutes(),
                CATALOGUE.signOffMinutes());
    }

    @ParameterizedTest
    @MethodSource("poorer")
    void a_visit_whose_class_or_work_the_catalogue_lost_is_explained_by_the_minutes_it_came_in_with(Catalogue poorer) {
        Visit visit = visit(Mud.MUDDY, Depth.STANDARD);
        VisitForecast forecast = VisitForecast.of(
                new Grounds(poorer, PEOPLE, nothingLearned()), RandomShop.machine(CLASS), visit, TODAY);
        Explanation explained = explained(forecast);
        int stored = visit.tasks().stream().mapToInt(task -> task.handsOn()).sum();
        assertEquals(stored, explained.minutesFrom(Source.CATALOGUE));
        assertEquals(forecast.range().likely(), sum(explained));
        assertTrue(explained.table().isEmpty());
    }

    @Test
    void lines_that_were_added_have_a_part_of_their_own() {
        List<Work> works = CATALOGUE.worksFor(CLASS);
        Line first = RandomShop.line("L1", works.get(0), Payer.OWNER);
        Line second = RandomShop.line("L2", works.get(works.size() - 1), Payer.OWNER);
        Visit both = RandomShop.visit(CLASS, Mud.MUDDY, Depth.STANDARD, List.of(first, second));
        int before = handsOn(RandomShop.visit(CLASS, Mud.MUDDY, Depth.STANDARD, List.of(first)));
        Explanation explained =
                Explanation.of(RandomShop.forecast(nothingLearned(), PEOPLE, both), Set.of(second.id()));
        assertEquals(handsOn(both) - before, explained.minutesFrom(Source.ADDED));
        assertEquals(0, explained.minutesFrom(Source.CHANGED));
    }

    private static int handsOn(Visit visit) {
        return visit.tasks().stream().mapToInt(task -> task.handsOn()).sum();
    }
}
