package org.shedboard.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.shedboard.estimate.Catalogue;
import org.shedboard.hours.ClockEntry;
import org.shedboard.hours.Correction;
import org.shedboard.learn.Lesson;
import org.shedboard.learn.Sort;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Step;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;

class LessonsTest {
    private static final Visit VISIT = SmallShop.visit("V1", Mud.MUDDY, Depth.STANDARD, "minor-quad");
    private static final String TOBIN = "P2"; // 95 minutes for a hundred
    private static final String JORY = "P4"; // 150 minutes for a hundred

    @Test
    void a_step_clocked_as_a_whole_is_one_lesson_where_it_has_one_sort_of_work() {
        List<Lesson> lessons = new SmallShop()
                .finished(VISIT)
                .clocked(JORY, VISIT, Step.WASH, Optional.empty(), "07:00", "08:00")
                .lessons();
        Lesson wash = only(lessons, Sort.WASH);
        assertEquals(60, wash.actualMinutes(), 1e-9);
        assertEquals(1.5 * minutes(VISIT, Step.WASH), wash.catalogueMinutes(), 1e-9);
        assertEquals(Map.of(JORY, 1.0), wash.circumstances().people());
        assertEquals(OptionalInt.of(8), wash.circumstances().ageYears());
        assertEquals("quad", wash.circumstances().classId());
    }

    @Test
    void two_people_together_count_both_and_share_the_pace() {
        List<Lesson> lessons = new SmallShop()
                .finished(VISIT)
                .clocked(JORY, VISIT, Step.WASH, Optional.empty(), "07:00", "07:30")
                .clocked(TOBIN, VISIT, Step.WASH, Optional.empty(), "07:00", "07:10")
                .lessons();
        Lesson wash = only(lessons, Sort.WASH);
        assertEquals(40, wash.actualMinutes(), 1e-9);
        assertEquals(Map.of(JORY, 0.75, TOBIN, 0.25), wash.circumstances().people());
        assertEquals((0.75 * 1.5 + 0.25 * 0.95) * minutes(VISIT, Step.WASH), wash.catalogueMinutes(), 1e-9);
    }

    @Test
    void what_was_clocked_before_a_hold_and_after_it_counts_alike() {
        List<Lesson> lessons = new SmallShop()
                .finished(VISIT)
                .clocked(TOBIN, VISIT, Step.UNDERSIDE, Optional.of("inspect-underside"), "07:00", "07:20")
                .clocked(TOBIN, VISIT, Step.UNDERSIDE, Optional.of("inspect-underside"), "14:00", "14:25")
                .lessons();
        assertEquals(45, only(lessons, Sort.UNDERSIDE).actualMinutes(), 1e-9);
    }

    @Test
    void work_found_on_the_way_takes_its_minutes_away_from_the_service_it_was_found_on() {
        Visit withBoot = SmallShop.visit("V1", Mud.MUDDY, Depth.STANDARD, "minor-quad", "shaft-boot");
        Task boot = taskOf(withBoot, "shaft-boot");
        SmallShop exact = new SmallShop()
                .finished(withBoot)
                .clocked(TOBIN, withBoot, Step.UNDERSIDE, Optional.of("inspect-underside"), "07:00", "07:30")
                .clocked(TOBIN, withBoot, Step.UNDERSIDE, Optional.of(boot.id()), "07:30", "09:30");
        assertEquals(30, only(exact.lessons(), Sort.UNDERSIDE).actualMinutes(), 1e-9);
        double repairs = exact.lessons().stream()
                .filter(lesson -> lesson.sort() == Sort.REPAIR)
                .mapToDouble(Lesson::actualMinutes)
                .sum();
        assertEquals(120, repairs, 1e-9);
        SmallShop coarse = new SmallShop()
                .finished(withBoot)
                .clocked(TOBIN, withBoot, Step.UNDERSIDE, Optional.empty(), "07:00", "10:00");
        Lesson underside = only(coarse.lessons(), Sort.UNDERSIDE);
        assertEquals(
                180.0 / minutes(withBoot, Step.UNDERSIDE),
                underside.actualMinutes() / underside.catalogueMinutes() * 0.95,
                1e-9);
    }

    @Test
    void minutes_clocked_by_mistake_are_gone_once_they_are_corrected() {
        SmallShop shop =
                new SmallShop().finished(VISIT).clocked(JORY, VISIT, Step.WASH, Optional.empty(), "07:00", "15:00");
        ClockEntry wrong = shop.entries().get(0);
        shop.with(new ClockEntry(
                "K",
                JORY,
                wrong.activity(),
                wrong.from(),
                Optional.of(SmallShop.at(SmallShop.DATE, "08:00")),
                Optional.of(new Correction(
                        Optional.of(wrong.id()),
                        false,
                        "P1",
                        SmallShop.at(SmallShop.DATE, "17:00"),
                        "went to lunch"))));
        assertEquals(60, only(shop.lessons(), Sort.WASH).actualMinutes(), 1e-9);
    }

    @Test
    void work_that_nobody_clocked_is_a_lesson_with_no_minutes_and_is_set_aside() {
        List<Lesson> lessons = new SmallShop().finished(VISIT).lessons();
        Lesson wash = only(lessons, Sort.WASH);
        assertEquals(0, wash.actualMinutes());
        Experience experience =
                Experience.of(SmallShop.CATALOGUE, SmallShop.SHOP.people(), lessons, SmallShop.DATE.plusDays(1));
        assertEquals(lessons.size(), experience.learned().aside().size());
        assertTrue(experience.learned().aside().stream().allMatch(aside -> aside.why() == Lesson.Fault.NO_MINUTES));
        assertEquals(List.of(), experience.hindsight());
    }

    @Test
    void the_work_of_somebody_who_has_left_counts_at_the_catalogues_pace() {
        List<Lesson> lessons = new SmallShop()
                .finished(VISIT)
                .clocked("P99", VISIT, Step.WASH, Optional.empty(), "07:00", "08:00")
                .lessons();
        assertEquals(minutes(VISIT, Step.WASH), only(lessons, Sort.WASH).catalogueMinutes(), 1e-9);
        Grounds grounds = new Grounds(
                SmallShop.CATALOGUE,
                SmallShop.SHOP.people(),
                Experience.of(SmallShop.CATALOGUE, SmallShop.SHOP.people(), lessons, SmallShop.DATE.plusDays(1))
                        .learned());
        assertEquals(Map.of(), grounds.usualPeople(Sort.WASH), "who has left does nothing any more");
    }

    @Test
    void a_class_or_a_work_that_left_the_catalogue_keeps_the_minutes_it_had() {
        Catalogue all = SmallShop.CATALOGUE;
        Catalogue bare = new Catalogue(
                List.of(), List.of(), all.usual(), all.spreads(), all.testDriveMinutes(), all.signOffMinutes());
        List<Lesson> lessons = new SmallShop()
                .finished(VISIT)
                .clocked(TOBIN, VISIT, Step.WASH, Optional.empty(), "07:00", "08:00")
                .lessons(bare, SmallShop.machine("quad"));
        assertEquals(0.95 * minutes(VISIT, Step.WASH), only(lessons, Sort.WASH).catalogueMinutes(), 1e-9);
    }

    private static Lesson only(List<Lesson> lessons, Sort sort) {
        Map<Sort, Lesson> found = new EnumMap<>(Sort.class);
        lessons.forEach(lesson -> found.putIfAbsent(lesson.sort(), lesson));
        return found.get(sort);
    }

    private static int minutes(Visit visit, Step step) {
        return visit.stays().stream()
                .filter(stay -> stay.step() == step)
                .flatMap(stay -> stay.tasks().stream())
                .mapToInt(Task::handsOn)
                .sum();
    }

    private static Task taskOf(Visit visit, String workId) {
        String line = visit.lines().stream()
                .filter(each -> each.workId().equals(workId))
                .findFirst()
                .orElseThrow()
                .id();
        return visit.stays().stream()
                .filter(stay -> stay.step() == Step.UNDERSIDE)
                .flatMap(stay -> stay.tasks().stream())
                .filter(task -> task.lines().equals(List.of(line)))
                .findFirst()
                .orElseThrow();
    }
}
