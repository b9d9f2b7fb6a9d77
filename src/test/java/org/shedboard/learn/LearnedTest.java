package org.shedboard.learn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shedboard.fit.LogNormal;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Mud;

/** What is learned, in shops whose truth is known because it was drawn. */
class LearnedTest {
    private static final LocalDate DAY = LocalDate.of(2026, 5, 12);

    @Test
    void without_lessons_the_minutes_are_the_catalogues() {
        Learned nothing = Learned.of(DrawnShop.EXPECTED, List.of());
        LogNormal minutes = nothing.minutes(Sort.WASH, 40, muddy());
        assertEquals(40, minutes.median(), 1e-9);
        assertEquals(DrawnShop.MACHINE, nothing.machine(), 1e-9);
        assertEquals(DrawnShop.PERSON, nothing.person(), 1e-9);
        assertTrue(minutes.sigma() > DrawnShop.SPREAD, "what hangs on mud, class and depth is not known yet");
    }

    @Test
    void one_lesson_moves_the_minutes_a_little_towards_it() {
        Learned one = Learned.of(DrawnShop.EXPECTED, List.of(lesson("V1", 40, 80)));
        double median = one.minutes(Sort.WASH, 40, muddy()).median();
        assertTrue(median > 42 && median < 62, "40 by the catalogue, 80 seen once: " + median);
    }

    @Test
    void learning_one_by_one_comes_to_the_same_as_learning_all_at_once() {
        List<Lesson> lessons = lessons(new DrawnShop(7), 220);
        Learned atOnce = Learned.of(DrawnShop.EXPECTED, lessons);
        Learned step = Learned.of(DrawnShop.EXPECTED, lessons.subList(0, 200));
        for (Lesson lesson : lessons.subList(200, 220)) {
            step = step.after(lesson);
        }
        for (Lesson lesson : lessons) {
            assertEquals(
                    atOnce.factor(lesson.sort(), lesson.circumstances()),
                    step.factor(lesson.sort(), lesson.circumstances()),
                    1e-9);
        }
    }

    @Test
    void a_clock_forgotten_overnight_is_set_aside_and_wrecks_nothing() {
        List<Lesson> lessons = lessons(new DrawnShop(3), 100);
        Learned before = Learned.of(DrawnShop.EXPECTED, lessons);
        Lesson wild = lesson("V-wild", 40, 850);
        lessons.add(50, wild);
        Learned after = Learned.of(DrawnShop.EXPECTED, lessons);
        List<SetAside> aside = after.aside();
        assertEquals(
                List.of("V-wild"),
                aside.stream().map(each -> each.lesson().visitId()).toList());
        assertEquals(Lesson.Fault.FAR_OFF, aside.get(0).why());
        assertEquals(before.factor(Sort.WASH, muddy()), after.factor(Sort.WASH, muddy()), 1e-9);
    }

    @Test
    void a_catalogue_that_is_wrong_throughout_is_not_taken_for_wild_work() {
        List<Lesson> lessons = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            lessons.add(lesson("V" + i, 20, 75 + i));
        }
        Learned learned = Learned.of(DrawnShop.EXPECTED, lessons);
        assertEquals(List.of(), learned.aside());
        assertTrue(learned.factor(Sort.WASH, muddy()) > 3, "all took four times the catalogue");
    }

    @ParameterizedTest
    @CsvSource({"0, 40, NO_MINUTES", "-5, 40, NO_MINUTES", "30, 0, NOT_IN_CATALOGUE", "961, 40, TOO_LONG"})
    void minutes_that_cannot_be_are_set_aside_with_their_reason(double actual, double catalogue, Lesson.Fault why) {
        Learned learned = Learned.of(DrawnShop.EXPECTED, List.of(lesson("V1", catalogue, actual)));
        assertEquals(why, learned.aside().get(0).why());
        assertEquals(0, learned.lessonsOf(Sort.WASH));
    }

    @Test
    void a_class_or_a_person_never_seen_is_taken_for_one_like_the_rest() {
        Learned learned = Learned.of(DrawnShop.EXPECTED, lessons(new DrawnShop(5), 100));
        Circumstances unknown =
                new Circumstances("hovercraft", Mud.MUDDY, Depth.FULL, OptionalInt.empty(), DAY, Map.of("P99", 1.0));
        LogNormal minutes = learned.minutes(Sort.WASH, 40, unknown);
        assertTrue(minutes.median() > 20 && minutes.median() < 80, "finite and sane: " + minutes);
    }

    /** The unit model of the learning curve at 80 %: unit times 100, 80, 70.2104, 64; its base-two slope is log2 of the rate. */
    @Test
    void practice_counts_in_doublings() {
        List<LocalDate> dates = List.of(DAY, DAY.plusDays(1), DAY.plusDays(2), DAY.plusDays(3));
        Practice practice = Practice.of(dates);
        double[] unit = {100, 80, 70.2104, 64};
        for (int i = 0; i < unit.length; i++) {
            assertEquals(unit[i], 100 * Math.pow(0.8, practice.doublings(dates.get(i))), 5e-5);
        }
    }

    /** A worked exercise: the first unit takes 10, the eighth 1.25; the rate is a half. */
    @Test
    void the_eighth_time_is_three_doublings() {
        List<LocalDate> dates = IntStream.range(0, 8).mapToObj(DAY::plusDays).toList();
        assertEquals(1.25, 10 * Math.pow(0.5, Practice.of(dates).doublings(dates.get(7))), 1e-12);
    }

    @Test
    void an_apprentice_who_gets_faster_is_expected_to_be_faster_tomorrow() {
        Expectation expected = new Expectation(DrawnShop.EXPECTED.spreads(), 0.18, 0.1, Set.of("P4"));
        List<Lesson> lessons = new ArrayList<>();
        for (int i = 0; i < 32; i++) {
            double units = Math.pow(0.85, Math.log(i + 1.0) / Math.log(2));
            lessons.add(new Lesson("V" + i, Sort.WASH, by("P4", DAY.plusDays(i)), 40, 80 * units));
        }
        Learned learned = Learned.of(expected, lessons);
        double first = learned.factor(Sort.WASH, by("P4", DAY));
        double tomorrow = learned.factor(Sort.WASH, by("P4", DAY.plusDays(32)));
        assertTrue(tomorrow < 0.75 * first, "from %.2f to %.2f".formatted(first, tomorrow));
    }

    /** What a shop's machines share is found again, within a quarter. */
    @Test
    void the_shared_part_of_the_scatter_is_recovered() {
        Expectation wrong = new Expectation(DrawnShop.EXPECTED.spreads(), 0.05, 0.1, Set.of());
        Learned learned = Learned.of(wrong, lessons(new DrawnShop(11), 3000));
        assertEquals(DrawnShop.MACHINE, learned.machine(), 0.25 * DrawnShop.MACHINE);
    }

    private static List<Lesson> lessons(DrawnShop shop, int count) {
        return new ArrayList<>(
                shop.visitsWith(count).stream().map(DrawnShop.Piece::lesson).toList());
    }

    private static Lesson lesson(String visit, double catalogue, double actual) {
        return new Lesson(visit, Sort.WASH, muddy(), catalogue, actual);
    }

    private static Circumstances muddy() {
        return by("P1", DAY);
    }

    private static Circumstances by(String person, LocalDate date) {
        return new Circumstances("class-1", Mud.MUDDY, Depth.STANDARD, OptionalInt.of(8), date, Map.of(person, 1.0));
    }
}
