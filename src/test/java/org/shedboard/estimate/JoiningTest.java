package org.shedboard.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
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

/** Work found on the way, on a side-by-side that came for its minor service: a split boot, or worn front brakes. */
class JoiningTest {
    private static final Instant NOW = Instant.parse("2026-05-12T00:00:00Z");
    private static final Catalogue CATALOGUE = Seed.catalogue();
    private static final Estimator ESTIMATOR = new Estimator(CATALOGUE);
    private static final Intake INTAKE = new Intake(NOW, Mud.CLEAN, Depth.STANDARD, Condition.SOUND, "");
    private static final Line SERVICE = line("L1", "minor-side-by-side");
    private static final Line BOOT = line("L2", "shaft-boot");
    private static final Line OTHER_BOOT = line("L3", "shaft-boot");
    private static final Line BRAKES = line("L4", "brakes-front");

    @Test
    void found_work_joins_an_open_stay_ahead_of_lowering() {
        List<Stay> stays = add(service(), BOOT);
        assertEquals(steps(service()), steps(stays));
        List<String> ids = ids(stays.get(0));
        assertEquals(List.of("shaft-out", "boot-change", "shaft-in", "lower"), ids.subList(ids.size() - 4, ids.size()));
        assertTrue(task(stays, "lower").after().containsAll(List.of("shaft-out", "boot-change", "shaft-in", "grease")));
        assertEquals(List.of("raise"), task(stays, "shaft-out").after());
        assertConsistent(stays);
    }

    @Test
    void a_task_that_the_open_stay_has_already_is_not_done_twice() {
        List<Stay> stays = add(add(service(), BRAKES), line("L5", "brakes-rear"));
        assertEquals(
                1,
                stays.stream()
                        .flatMap(stay -> ids(stay).stream())
                        .filter("brake-bleed"::equals)
                        .count());
        assertConsistent(stays);
    }

    @Test
    void nobody_who_did_found_work_that_another_must_check_signs_the_machine_off() {
        assertEquals(List.of(), task(service(), "sign-off").notBy());
        List<Stay> stays = add(service(), BOOT);
        assertEquals(List.of("shaft-in"), task(stays, "sign-off").notBy());
        assertEquals(
                List.of("shaft-in", "pads-front-change", "brake-bleed"),
                task(add(stays, BRAKES), "sign-off").notBy());
    }

    @Test
    void work_found_after_its_step_is_over_brings_the_machine_in_once_more_before_the_last_step() {
        List<Stay> stays = add(done(service(), Step.UNDERSIDE), BOOT);
        assertEquals(List.of(Step.UNDERSIDE, Step.TOPSIDE, Step.UNDERSIDE, Step.DRIVE), steps(stays));
        assertEquals(
                List.of("in-underside-2", "raise-2", "shaft-out", "boot-change", "shaft-in", "lower-2"),
                ids(stays.get(2)));
        assertEquals(List.of("raise-2"), task(stays, "shaft-out").after());
        assertEquals(List.of("in-underside-2"), task(stays, "raise-2").after());
        assertConsistent(stays);
    }

    @Test
    void the_same_work_found_once_more_gets_fresh_ids_and_the_signature_minds_those_too() {
        List<Stay> once = done(add(service(), BOOT), Step.UNDERSIDE);
        List<Stay> twice = add(once, OTHER_BOOT);
        assertTrue(ids(twice.get(2)).containsAll(List.of("shaft-out-2", "boot-change-2", "shaft-in-2")));
        assertEquals(List.of("shaft-in", "shaft-in-2"), task(twice, "sign-off").notBy());
        assertConsistent(twice);
    }

    @Test
    void more_found_in_the_second_stay_comes_ahead_of_its_lowering_too() {
        List<Stay> once = add(done(service(), Step.UNDERSIDE), BOOT);
        List<Stay> stays = add(once, BRAKES);
        List<String> ids = ids(stays.get(2));
        assertEquals("lower-2", ids.get(ids.size() - 1));
        assertTrue(task(stays, "lower-2").after().contains("pads-front-change"));
        assertEquals(List.of("raise-2"), task(stays, "pads-front-change").after());
        assertConsistent(stays);
    }

    @Test
    void ids_stay_unique_when_a_third_of_the_kind_joins_the_second_stay() {
        List<Stay> once = done(add(service(), BOOT), Step.UNDERSIDE);
        assertConsistent(add(add(once, BRAKES), OTHER_BOOT));
    }

    @Test
    void a_machine_that_is_being_lowered_comes_up_once_more() {
        List<Stay> lowering = begun(done(service(), task -> task.id().startsWith("in-under")), "lower");
        List<Stay> stays = add(lowering, BOOT);
        assertEquals(List.of(Step.UNDERSIDE, Step.TOPSIDE, Step.UNDERSIDE, Step.DRIVE), steps(stays));
        assertConsistent(stays);
    }

    @Test
    void work_found_on_the_test_drive_is_done_before_the_signature_and_the_drive_so_far_stays_done() {
        List<Stay> driven = done(
                done(done(service(), Step.UNDERSIDE), Step.TOPSIDE),
                task -> task.id().equals("test-drive"));
        List<Stay> stays = add(driven, BOOT);
        assertEquals(List.of(Step.UNDERSIDE, Step.TOPSIDE, Step.DRIVE, Step.UNDERSIDE, Step.DRIVE), steps(stays));
        assertTrue(stays.get(2).isDone());
        assertEquals(List.of("sign-off"), ids(stays.get(4)));
        assertConsistent(stays);
    }

    @Test
    void work_found_during_the_signature_asks_for_another_one() {
        List<Stay> signing = begun(
                done(
                        done(done(service(), Step.UNDERSIDE), Step.TOPSIDE),
                        task -> task.id().equals("test-drive")),
                "sign-off");
        List<Stay> stays = add(signing, BOOT);
        assertEquals(List.of("sign-off-2"), ids(stays.get(4)));
        assertEquals(List.of("shaft-in"), task(stays, "sign-off-2").notBy());
        assertConsistent(stays);
    }

    /** Ids are unique, waiting stays within a stay and goes backwards, and no stay comes after one that began later. */
    private static void assertConsistent(List<Stay> stays) {
        Set<String> all = new HashSet<>();
        boolean openBefore = false;
        for (Stay stay : stays) {
            Set<String> before = new HashSet<>();
            for (Task task : stay.tasks()) {
                assertTrue(all.add(task.id()), "two tasks are called " + task.id());
                assertTrue(before.containsAll(task.after()), task.id() + " waits for " + task.after());
                before.add(task.id());
            }
            assertFalse(openBefore && stay.hasBegun(), stay.step() + " has begun before its time");
            openBefore |= !stay.isDone() && !stay.hasBegun();
        }
        Task last = stays.get(stays.size() - 1).tasks().stream()
                .reduce((one, other) -> other)
                .orElseThrow();
        assertTrue(last.id().startsWith("sign-off") && !last.hasBegun());
        assertTrue(all.containsAll(last.notBy()));
    }

    private static List<Stay> service() {
        return ESTIMATOR.estimate("side-by-side", INTAKE, List.of(SERVICE)).stays();
    }

    private static List<Stay> add(List<Stay> stays, Line line) {
        return ESTIMATOR.withAdded("side-by-side", INTAKE, stays, List.of(line));
    }

    private static List<Stay> done(List<Stay> stays, Step step) {
        return stays.stream()
                .map(stay -> stay.step() == step ? stay.withTasks(doneOf(stay.tasks(), task -> true)) : stay)
                .toList();
    }

    private static List<Stay> done(List<Stay> stays, Predicate<Task> which) {
        return stays.stream()
                .map(stay -> stay.withTasks(doneOf(stay.tasks(), which)))
                .toList();
    }

    private static List<Task> doneOf(List<Task> tasks, Predicate<Task> which) {
        return tasks.stream()
                .map(task -> which.test(task) ? task.with(task.progress().done("P1", NOW)) : task)
                .toList();
    }

    private static List<Stay> begun(List<Stay> stays, String taskId) {
        return stays.stream()
                .map(stay ->
                        stay.withTask(taskId, task -> task.with(task.progress().started("P1", NOW, task.handsOn()))))
                .toList();
    }

    private static Task task(List<Stay> stays, String id) {
        return stays.stream()
                .flatMap(stay -> stay.findTask(id).stream())
                .findFirst()
                .orElseThrow();
    }

    private static List<Step> steps(List<Stay> stays) {
        return stays.stream().map(Stay::step).toList();
    }

    private static List<String> ids(Stay stay) {
        return stay.tasks().stream().map(Task::id).toList();
    }

    private static Line line(String id, String workId) {
        return new Line(id, workId, CATALOGUE.expectWork(workId).name(), Payer.OWNER, List.of());
    }
}
