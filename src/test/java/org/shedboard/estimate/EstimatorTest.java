package org.shedboard.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.shedboard.files.Seed;
import org.shedboard.shop.Condition;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Intake;
import org.shedboard.shop.Line;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Payer;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Step;
import org.shedboard.shop.Task;
import org.shedboard.shop.WorkKind;

/** What the seed's catalogue makes of visits; the rules of thumb are common practice, no source. */
class EstimatorTest {
    private static final Catalogue CATALOGUE = Seed.catalogue();
    private static final Estimator ESTIMATOR = new Estimator(CATALOGUE);
    private static final Condition DEAD = new Condition(false, true, true, true);

    static Stream<String> classes() {
        return CATALOGUE.classes().stream().map(MachineClass::id);
    }

    @Test
    void a_full_service_on_a_caked_side_by_side_takes_half_a_day_to_a_day_and_two_hours_of_it_are_cleaning() {
        Estimate caked = estimate("side-by-side", Mud.CAKED, Depth.FULL, "full-side-by-side");
        assertBetween(4 * 60, 8 * 60, caked.handsOn());
        assertBetween(90, 150, caked.cleaning());
    }

    @Test
    void the_same_service_on_a_clean_one_takes_a_quarter_less_at_least() {
        Estimate caked = estimate("side-by-side", Mud.CAKED, Depth.FULL, "full-side-by-side");
        Estimate clean = estimate("side-by-side", Mud.CLEAN, Depth.FULL, "full-side-by-side");
        assertTrue(clean.handsOn() < 0.75 * caked.handsOn(), clean.handsOn() + " " + caked.handsOn());
    }

    @Test
    void an_oil_service_on_a_clean_quad_takes_about_an_hour_and_needs_no_wash() {
        Estimate oil = estimate("quad", Mud.CLEAN, Depth.ONCE_OVER, "oil-quad");
        assertBetween(45, 75, oil.handsOn());
        assertEquals(List.of(Step.UNDERSIDE, Step.TOPSIDE, Step.DRIVE), steps(oil));
    }

    @ParameterizedTest
    @MethodSource("classes")
    void cleaning_grows_with_every_grade_of_mud_at_every_depth(String classId) {
        for (Depth depth : Depth.values()) {
            for (int grade = 1; grade < Mud.values().length; grade++) {
                int less = cleaning(classId, Mud.of(grade - 1), depth);
                int more = cleaning(classId, Mud.of(grade), depth);
                assertTrue(less < more, "%s %s: %s %s".formatted(classId, depth, less, more));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("classes")
    void cleaning_and_looking_grow_with_depth_on_a_dirty_machine(String classId) {
        for (Mud mud : List.of(Mud.DUSTY, Mud.MUDDY, Mud.CAKED)) {
            for (int depth = 1; depth < Depth.values().length; depth++) {
                Estimate less = estimate(classId, mud, Depth.values()[depth - 1]);
                Estimate more = estimate(classId, mud, Depth.values()[depth]);
                assertTrue(less.cleaning() < more.cleaning(), classId + " " + mud);
                assertTrue(less.minutesOf(WorkKind.INSPECT) < more.minutesOf(WorkKind.INSPECT), classId + " " + mud);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("classes")
    void a_deeper_look_includes_all_of_the_shallower_one(String classId) {
        MachineClass machineClass = CATALOGUE.expectClass(classId);
        for (int depth = 1; depth < Depth.values().length; depth++) {
            List<Point> shallow = machineClass.pointsAt(Depth.values()[depth - 1]);
            List<Point> deep = machineClass.pointsAt(Depth.values()[depth]);
            assertTrue(deep.containsAll(shallow));
            assertTrue(deep.size() > shallow.size());
        }
        assertEquals(machineClass.points(), machineClass.pointsAt(Depth.FULL));
    }

    @Test
    void two_lines_that_both_drain_the_oil_drain_it_once() {
        Estimate both = estimate("quad", Mud.CLEAN, Depth.FULL, "oil-quad", "full-quad");
        List<Task> drains = tasks(both).stream()
                .filter(task -> task.id().equals("drain-oil"))
                .toList();
        assertEquals(1, drains.size());
        assertEquals(List.of("L1", "L2"), drains.get(0).lines());
        Estimate full = estimate("quad", Mud.CLEAN, Depth.FULL, "full-quad");
        assertEquals(full.handsOn(), both.handsOn());
    }

    @Test
    void a_shared_task_waits_for_what_either_line_needs_first() {
        Estimate both = estimate("quad", Mud.CLEAN, Depth.STANDARD, "brakes-front", "brakes-rear");
        Task bleed = taskOf(both, "brake-bleed");
        assertEquals(List.of("pads-front-change", "pads-rear-change"), bleed.after());
    }

    @ParameterizedTest
    @MethodSource("classes")
    void a_machine_that_does_not_drive_is_pushed_and_checked_standing(String classId) {
        Estimate dead = estimate(classId, Mud.MUDDY, Depth.STANDARD, DEAD, "non-starter");
        List<String> names = tasks(dead).stream().map(Task::name).toList();
        assertTrue(names.contains(words(Usual.PUSH_IN)));
        assertTrue(names.contains(words(Usual.STANDING_CHECK)));
        assertFalse(names.contains(words(Usual.DRIVE_IN)));
        assertFalse(names.contains(words(Usual.TEST_DRIVE)));
        Estimate sound = estimate(classId, Mud.MUDDY, Depth.STANDARD, "non-starter");
        assertTrue(dead.minutesOf(WorkKind.MOVE) > sound.minutesOf(WorkKind.MOVE));
    }

    @Test
    void every_breakdown_adds_up_to_its_tasks_for_every_class_work_mud_depth_and_condition() {
        int checked = 0;
        for (MachineClass machineClass : CATALOGUE.classes()) {
            for (Work work : CATALOGUE.worksFor(machineClass.id())) {
                for (Mud mud : Mud.values()) {
                    for (Depth depth : Depth.values()) {
                        for (Condition condition : List.of(Condition.SOUND, DEAD)) {
                            assertAddsUp(estimate(machineClass.id(), mud, depth, condition, work.id()));
                            checked++;
                        }
                    }
                }
            }
        }
        assertTrue(checked > 1000, checked + " visits checked");
    }

    @Test
    void all_lines_of_a_class_together_still_make_one_sound_visit() {
        for (MachineClass machineClass : CATALOGUE.classes()) {
            String[] all =
                    CATALOGUE.worksFor(machineClass.id()).stream().map(Work::id).toArray(String[]::new);
            Estimate estimate = estimate(machineClass.id(), Mud.CAKED, Depth.FULL, all);
            assertAddsUp(estimate);
            estimate.stays().forEach(EstimatorTest::assertNoCircle);
        }
    }

    @Test
    void whoever_did_the_brakes_may_not_sign_off() {
        Estimate brakes = estimate("quad", Mud.CLEAN, Depth.STANDARD, "brakes-front");
        Task signOff = taskOf(brakes, "sign-off");
        assertEquals(List.of("pads-front-change", "brake-bleed"), signOff.notBy());
    }

    @Test
    void a_hoist_stay_opens_with_raising_and_closes_with_lowering_once_all_else_is_complete() {
        Estimate full = estimate("tractor", Mud.MUDDY, Depth.FULL, "full-tractor");
        Stay underside = full.stays().get(1);
        List<Task> tasks = underside.tasks();
        assertEquals("raise", tasks.get(1).id());
        Task lower = tasks.get(tasks.size() - 1);
        assertEquals("lower", lower.id());
        List<String> between =
                tasks.subList(2, tasks.size() - 1).stream().map(Task::id).toList();
        assertEquals(between, lower.after());
    }

    private static void assertAddsUp(Estimate estimate) {
        int items = estimate.items().stream().mapToInt(Estimate.Item::minutes).sum();
        int tasks = tasks(estimate).stream().mapToInt(Task::handsOn).sum();
        assertEquals(tasks, items);
        assertEquals(items, estimate.handsOn());
        for (WorkKind kind : WorkKind.values()) {
            int ofKind = tasks(estimate).stream()
                    .filter(task -> task.kind() == kind)
                    .mapToInt(Task::handsOn)
                    .sum();
            assertEquals(ofKind, estimate.minutesOf(kind));
        }
        List<String> ids = tasks(estimate).stream().map(Task::id).toList();
        assertEquals(new HashSet<>(ids).size(), ids.size(), "task ids are unique in a visit: " + ids);
    }

    /** Takes away what waits for nothing, until nothing is left. */
    private static void assertNoCircle(Stay stay) {
        List<Task> waiting = new ArrayList<>(stay.tasks());
        boolean moved = true;
        while (moved) {
            List<String> ids = waiting.stream().map(Task::id).toList();
            moved = waiting.removeIf(task -> task.after().stream().noneMatch(ids::contains));
        }
        assertTrue(waiting.isEmpty(), "these wait for each other: " + waiting);
    }

    private static Estimate estimate(String classId, Mud mud, Depth depth, String... works) {
        return estimate(classId, mud, depth, Condition.SOUND, works);
    }

    private static Estimate estimate(String classId, Mud mud, Depth depth, Condition condition, String... works) {
        List<Line> lines = new ArrayList<>();
        for (String work : works) {
            lines.add(new Line("L" + (lines.size() + 1), work, work, Payer.OWNER, List.of()));
        }
        return ESTIMATOR.estimate(classId, new Intake(Instant.EPOCH, mud, depth, condition, ""), lines);
    }

    private static int cleaning(String classId, Mud mud, Depth depth) {
        return estimate(classId, mud, depth).cleaning();
    }

    private static List<Task> tasks(Estimate estimate) {
        return estimate.stays().stream().flatMap(stay -> stay.tasks().stream()).toList();
    }

    private static Task taskOf(Estimate estimate, String id) {
        return tasks(estimate).stream()
                .filter(task -> task.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static List<Step> steps(Estimate estimate) {
        return estimate.stays().stream().map(Stay::step).toList();
    }

    private static String words(Usual task) {
        return CATALOGUE.usual().get(task).name();
    }

    private static void assertBetween(int low, int high, int minutes) {
        assertTrue(
                minutes >= low && minutes <= high,
                String.format(Locale.ROOT, "%d minutes, not %d to %d", minutes, low, high));
    }
}
