package org.shedboard.learn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.shedboard.fit.LogNormal;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Mud;

/** Finished work that cannot be, that names what is known no more, or that is far off: what becomes of each, and of what is learned. */
class BadLessonsTest {
    private static final LocalDate DAY = LocalDate.of(2026, 5, 12);
    private static final int SHOPS = 100 * Integer.getInteger("proof.scale", 1);

    @ParameterizedTest
    @CsvSource({
        "0, 40, NO_MINUTES",
        "-0.0, 40, NO_MINUTES",
        "-1e300, 40, NO_MINUTES",
        "NaN, 40, NO_MINUTES",
        "-Infinity, 40, NO_MINUTES",
        "Infinity, 40, TOO_LONG",
        "960.5, 40, TOO_LONG",
        "1e300, 40, TOO_LONG",
        "30, 0, NOT_IN_CATALOGUE",
        "30, -40, NOT_IN_CATALOGUE",
        "30, NaN, NOT_IN_CATALOGUE",
        "30, Infinity, NOT_IN_CATALOGUE",
        "NaN, NaN, NO_MINUTES",
        "4.9e-324, 40, FAR_OFF",
        "1e-9, 40, FAR_OFF",
        "960, 1e-300, FAR_OFF",
        "30, 1e300, FAR_OFF"
    })
    void minutes_that_cannot_be_are_set_aside_and_change_nothing(double actual, double catalogue, Lesson.Fault why) {
        List<Lesson> good = lessons(1, 120);
        Learned without = Learned.of(DrawnShop.EXPECTED, good);
        Lesson bad = lesson("V-bad", catalogue, actual);
        List<Lesson> all = new ArrayList<>(good);
        all.add(60, bad);
        for (Learned with : List.of(Learned.of(DrawnShop.EXPECTED, all), without.after(bad))) {
            assertEquals(List.of(why), with.aside().stream().map(SetAside::why).toList());
            assertEquals(without.factor(Sort.WASH, at("class-1")), with.factor(Sort.WASH, at("class-1")), 1e-9);
            assertEquals(without.lessonsOf(Sort.WASH), with.lessonsOf(Sort.WASH));
        }
    }

    @Test
    void hindsight_says_nothing_of_minutes_that_cannot_be_and_goes_on() {
        List<Lesson> good = lessons(3, 60);
        List<Lesson> all = new ArrayList<>(good);
        all.add(30, lesson("V-bad", 40, Double.NaN));
        all.add(31, lesson("V-bad", Double.POSITIVE_INFINITY, 30));
        assertEquals(Hindsight.of(DrawnShop.EXPECTED, good), Hindsight.of(DrawnShop.EXPECTED, all));
    }

    @Test
    void with_nothing_but_bad_lessons_the_catalogue_stands() {
        Learned learned = Learned.of(DrawnShop.EXPECTED, List.of(lesson("V1", 40, 0), lesson("V2", 0, 30)));
        assertEquals(1, learned.factor(Sort.WASH, at("class-1")), 1e-12);
        assertEquals(2, learned.aside().size());
    }

    @Test
    void an_empty_history_scores_nothing_and_raises_no_alarm() {
        assertEquals(List.of(), Hindsight.of(DrawnShop.EXPECTED, List.of()));
        for (Sort sort : Sort.values()) {
            assertTrue(Drift.of(sort, List.of()).isEmpty());
            assertEquals(Map.of(), Learned.of(DrawnShop.EXPECTED, List.of()).usualPeople(sort));
        }
    }

    @Test
    void no_minutes_in_the_catalogue_cannot_be_forecast() {
        Learned learned = Learned.of(DrawnShop.EXPECTED, List.of());
        assertThrows(IllegalArgumentException.class, () -> learned.minutes(Sort.WASH, 0, at("class-1")));
        assertThrows(IllegalArgumentException.class, () -> learned.minutes(Sort.WASH, Double.NaN, at("class-1")));
    }

    @Test
    void work_by_nobody_is_learned_from_and_forecast_as_by_one_like_the_rest() {
        List<Lesson> lessons = new ArrayList<>(lessons(4, 80));
        Circumstances nobody = new Circumstances(
                "class-1", Mud.MUDDY, Depth.STANDARD, OptionalInt.empty(), DAY.plusDays(40), Map.of());
        int before = Learned.of(DrawnShop.EXPECTED, lessons).lessonsOf(Sort.WASH);
        lessons.add(new Lesson("V-nobody", Sort.WASH, nobody, 40, 45));
        Learned learned = Learned.of(DrawnShop.EXPECTED, lessons);
        assertEquals(before + 1, learned.lessonsOf(Sort.WASH));
        assertSane(learned.minutes(Sort.WASH, 40, nobody));
        assertTrue(learned.story(Sort.WASH, 40, nobody).shares().stream()
                .noneMatch(share -> share.trait() == Trait.PERSON));
    }

    @Test
    void a_class_that_no_lesson_names_adds_no_share_to_the_story() {
        Learned learned = Learned.of(DrawnShop.EXPECTED, lessons(5, 100));
        assertSane(learned.minutes(Sort.WASH, 40, at("hovercraft")));
        assertTrue(learned.story(Sort.WASH, 40, at("hovercraft")).shares().stream()
                .noneMatch(share -> share.trait() == Trait.CLASS));
    }

    @Test
    void who_has_not_been_named_for_a_year_is_not_one_of_the_usual_people() {
        List<Lesson> lessons = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            lessons.add(by("P9", DAY.plusDays(i)));
            lessons.add(by("P1", DAY.plusDays(370 + i)));
        }
        Learned learned = Learned.of(DrawnShop.EXPECTED, lessons);
        assertEquals(Set.of("P1"), learned.usualPeople(Sort.WASH).keySet());
        assertEquals(1, learned.usualPeople(Sort.WASH).get("P1"), 1e-12);
        assertEquals(40, learned.lessonsOf(Sort.WASH), "what they did is still learned from");
    }

    @Test
    void a_machines_year_typed_wrong_moves_nothing_far() {
        List<Lesson> lessons = new ArrayList<>(lessons(6, 120));
        Learned without = Learned.of(DrawnShop.EXPECTED, lessons);
        Lesson wrong = new Lesson("V-old", Sort.WASH, aged(1_000), 40, 45);
        lessons.add(wrong);
        Learned with = Learned.of(DrawnShop.EXPECTED, lessons);
        assertEquals(without.factor(Sort.WASH, aged(3)), with.factor(Sort.WASH, aged(3)), 0.1);
        assertSane(with.minutes(Sort.WASH, 40, aged(Integer.MAX_VALUE)));
        assertSane(with.minutes(Sort.WASH, 40, aged(-5)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, Double.NaN, Double.POSITIVE_INFINITY})
    void shares_of_the_work_that_cannot_be_are_refused(double share) {
        assertThrows(
                IllegalArgumentException.class,
                () -> new Circumstances("quad", Mud.CLEAN, Depth.FULL, OptionalInt.empty(), DAY, Map.of("P1", share)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.3, Double.NaN, Double.POSITIVE_INFINITY})
    void spreads_that_cannot_be_are_refused(double spread) {
        Map<Sort, Double> spreads = new EnumMap<>(DrawnShop.EXPECTED.spreads());
        spreads.put(Sort.REPAIR, spread);
        assertThrows(IllegalArgumentException.class, () -> new Expectation(spreads, 0.1, 0.1, Set.of()));
    }

    @Test
    void parts_shared_that_cannot_be_are_refused() {
        Map<Sort, Double> spreads = DrawnShop.EXPECTED.spreads();
        assertThrows(IllegalArgumentException.class, () -> new Expectation(spreads, -0.1, 0.1, Set.of()));
        assertThrows(IllegalArgumentException.class, () -> new Expectation(spreads, 0.1, Double.NaN, Set.of()));
    }

    /** Beside ten, forty, a hundred and fifty stays one more that was clocked a hundred times too short, or far too long. */
    @ParameterizedTest
    @CsvSource({"0.01, 10", "0.01, 40", "0.01, 150", "24, 10", "24, 40", "24, 150"})
    void one_wild_entry_is_set_aside_and_moves_next_to_nothing(double times, int stays) {
        Wild wild = new Wild(times, stays);
        assertTrue(wild.asideShare >= 0.95, wild.toString());
        assertTrue(wild.likelyMoved < 0.02 && wild.safeMoved < 0.03, wild.toString());
    }

    /** What might just be true is learned from, and moves likely minutes the less the more is known: by a sixth, a fifteenth, a thirtieth. */
    @ParameterizedTest
    @CsvSource({
        "0.2, 10, 0.17",
        "0.3, 10, 0.17",
        "2, 10, 0.17",
        "3, 10, 0.17",
        "5, 10, 0.17",
        "0.2, 40, 0.067",
        "0.3, 40, 0.067",
        "2, 40, 0.067",
        "3, 40, 0.067",
        "5, 40, 0.067",
        "0.2, 150, 0.033",
        "0.3, 150, 0.033",
        "2, 150, 0.033",
        "3, 150, 0.033",
        "5, 150, 0.033"
    })
    void one_entry_that_is_somewhat_off_moves_likely_minutes_a_little(double times, int stays, double atMost) {
        Wild wild = new Wild(times, stays);
        assertTrue(wild.likelyMoved < atMost, wild.toString());
    }

    @Test
    void work_that_was_clocked_right_is_hardly_ever_set_aside() {
        int aside = 0;
        for (int seed = 1; seed <= SHOPS; seed++) {
            for (int stays : new int[] {10, 40, 150}) {
                aside += Learned.of(DrawnShop.EXPECTED, lessons(seed, stays))
                        .aside()
                        .size();
            }
        }
        assertTrue(aside <= 0.002 * SHOPS * 200, aside + " set aside");
    }

    /** By how much one entry that is off moves the forecasts of other work of its sort, in logarithms, on average over drawn shops. */
    private static final class Wild {
        private static final int OTHERS = 20;

        private double asideShare;
        private double likelyMoved;
        private double safeMoved;

        Wild(double times, int stays) {
            for (int seed = 1; seed <= SHOPS; seed++) {
                DrawnShop shop = new DrawnShop(seed);
                List<Lesson> lessons = new ArrayList<>(shop.visitsWith(stays).stream()
                        .map(DrawnShop.Piece::lesson)
                        .toList());
                Learned without = Learned.of(DrawnShop.EXPECTED, lessons);
                Lesson hit = shop.visit().get(0).lesson();
                lessons.add(off(hit, times));
                Learned with = Learned.of(DrawnShop.EXPECTED, lessons);
                asideShare += with.aside().stream().anyMatch(each -> isOf(hit, each.lesson())) ? 1.0 / SHOPS : 0;
                shop.visitsWith(OTHERS)
                        .forEach(piece -> compare(
                                without.minutes(hit.sort(), 40, piece.lesson().circumstances()),
                                with.minutes(hit.sort(), 40, piece.lesson().circumstances())));
            }
        }

        private void compare(LogNormal before, LogNormal after) {
            likelyMoved += Math.abs(after.mu() - before.mu()) / SHOPS / OTHERS;
            safeMoved += Math.abs(Math.log(after.quantile(Said.SAFE) / before.quantile(Said.SAFE))) / SHOPS / OTHERS;
        }

        private static Lesson off(Lesson hit, double times) {
            double actual = Math.min(16 * 60, times * hit.actualMinutes());
            return new Lesson(hit.visitId(), hit.sort(), hit.circumstances(), hit.catalogueMinutes(), actual);
        }

        private static boolean isOf(Lesson hit, Lesson lesson) {
            return hit.visitId().equals(lesson.visitId()) && hit.sort() == lesson.sort();
        }

        @Override
        public String toString() {
            return "set aside %.3f, likely moved %.4f, safe %.4f".formatted(asideShare, likelyMoved, safeMoved);
        }
    }

    private static void assertSane(LogNormal minutes) {
        assertTrue(minutes.median() > 15 && minutes.median() < 100 && minutes.sigma() < 0.8, minutes.toString());
    }

    private static List<Lesson> lessons(long seed, int count) {
        return new DrawnShop(seed)
                .visitsWith(count).stream().map(DrawnShop.Piece::lesson).toList();
    }

    private static Lesson by(String person, LocalDate date) {
        return new Lesson("V" + person + date, Sort.WASH, at("class-1", 8, person, date), 40, 42);
    }

    private static Lesson lesson(String visit, double catalogue, double actual) {
        return new Lesson(visit, Sort.WASH, at("class-1"), catalogue, actual);
    }

    private static Circumstances at(String classId) {
        return at(classId, 8, "P1", DAY);
    }

    private static Circumstances aged(int years) {
        return at("class-1", years, "P1", DAY);
    }

    private static Circumstances at(String classId, int years, String person, LocalDate date) {
        return new Circumstances(classId, Mud.MUDDY, Depth.STANDARD, OptionalInt.of(years), date, Map.of(person, 1.0));
    }
}
