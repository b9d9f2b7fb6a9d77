package org.shedboard.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.shedboard.estimate.Catalogue;
import org.shedboard.estimate.MachineClass;
import org.shedboard.estimate.Point;
import org.shedboard.estimate.Work;
import org.shedboard.estimate.Work.WorkTask;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Skill;

/** Whether the seed's catalogue is one a country workshop could believe; what it believes is common practice, no source. */
@Tag("elsewhere")
class SeedTest {
    private static final Catalogue CATALOGUE = Seed.catalogue();

    @Test
    void each_seed_file_says_inside_that_it_is_invented() {
        assertTrue(Seed.text("catalogue.json").lines().limit(3).anyMatch(line -> line.contains("invented")));
    }

    @Test
    void each_class_has_twenty_to_forty_five_points_and_some_at_every_depth() {
        assertTrue(CATALOGUE.classes().size() >= 5);
        for (MachineClass machineClass : CATALOGUE.classes()) {
            int points = machineClass.points().size();
            assertTrue(points >= 20 && points <= 45, machineClass.id() + " has " + points);
            for (Depth depth : Depth.values()) {
                assertTrue(machineClass.points().stream().anyMatch(point -> point.due() == depth));
            }
        }
    }

    @Test
    void a_four_wheel_drive_has_four_shafts_and_a_boot_at_either_end() {
        List<Point> boots = CATALOGUE.expectClass("side-by-side").points().stream()
                .filter(point -> point.name().contains("boot ") && point.id().startsWith("boot-"))
                .toList();
        assertEquals(8, boots.size());
        assertEquals(8, boots.stream().map(Point::where).distinct().count());
    }

    @Test
    void every_class_has_points_that_stop_it_being_ridden_for_brakes_frame_and_fuel() {
        for (MachineClass machineClass : CATALOGUE.classes()) {
            for (String word : List.of("brake", "frame", "fuel")) {
                assertTrue(
                        machineClass.points().stream()
                                .anyMatch(point ->
                                        point.stopsRiding() && point.id().contains(word)),
                        machineClass.id() + " " + word);
            }
        }
    }

    @Test
    void every_class_has_an_oil_a_minor_and_a_full_service_each_deeper_than_the_one_before() {
        for (MachineClass machineClass : CATALOGUE.classes()) {
            assertEquals(Depth.ONCE_OVER, byKey(machineClass, "o").depth());
            assertEquals(Depth.STANDARD, byKey(machineClass, "m").depth());
            assertEquals(Depth.FULL, byKey(machineClass, "f").depth());
        }
    }

    @Test
    void there_are_sixteen_works_at_least_and_no_key_begins_another() {
        assertTrue(CATALOGUE.works().size() >= 16);
        for (MachineClass machineClass : CATALOGUE.classes()) {
            List<String> keys = CATALOGUE.worksFor(machineClass.id()).stream()
                    .map(Work::key)
                    .toList();
            for (String key : keys) {
                assertEquals(
                        1, keys.stream().filter(other -> other.startsWith(key)).count(), machineClass.id() + " " + key);
            }
        }
    }

    @Test
    void brakes_and_steering_are_checked_by_another() {
        List<WorkTask> brakes =
                allTasks().filter(task -> task.skill() == Skill.BRAKES).toList();
        assertFalse(brakes.isEmpty());
        brakes.forEach(task -> assertTrue(task.checkedByAnother(), task.id()));
    }

    @Test
    void nothing_that_runs_is_left_unattended() {
        List<WorkTask> unattended =
                allTasks().filter(task -> task.unattended() > 0).toList();
        assertFalse(unattended.isEmpty());
        unattended.forEach(task -> {
            String words = (task.name() + " " + task.caution()).toLowerCase(Locale.ROOT);
            assertFalse(words.contains("engine runs"), task.id());
        });
    }

    private static Stream<WorkTask> allTasks() {
        return CATALOGUE.works().stream().flatMap(work -> work.tasks().stream());
    }

    private static Work byKey(MachineClass machineClass, String key) {
        return CATALOGUE.worksFor(machineClass.id()).stream()
                .filter(work -> work.key().equals(key))
                .findFirst()
                .orElseThrow();
    }
}
