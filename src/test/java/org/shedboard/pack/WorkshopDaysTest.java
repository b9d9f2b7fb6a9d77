package org.shedboard.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.shedboard.pack.fault.ProblemCheck;

class WorkshopDaysTest {
    private static final int SEEDS = 6 * Integer.getInteger("proof.scale", 1);

    @ParameterizedTest
    @ValueSource(ints = {8, 12, 28})
    void a_drawn_day_is_sound_and_its_plans_obey_every_rule_machines(int machines) {
        for (int seed = 0; seed < SEEDS; seed++) {
            for (double load : new double[] {WorkshopDays.FAIR, WorkshopDays.TIGHT}) {
                Problem day = WorkshopDays.rich(machines, load, seed);
                assertEquals(List.of(), ProblemCheck.faults(day), "seed " + seed);
                Plan plan = PackedPlans.pack(day, seed, 100);
                assertTrue(plan.tasks().size() > machines, "seed " + seed + " is next to empty");
            }
        }
    }

    @ParameterizedTest
    @EnumSource(ReplanDays.Event.class)
    void a_day_on_which_something_happens_is_under_way_and_can_be_packed_after(ReplanDays.Event event) {
        for (int seed = 0; seed < SEEDS; seed++) {
            Problem before = WorkshopDays.of(12, WorkshopDays.FAIR, seed);
            Problem day = ReplanDays.of(before, PackedPlans.pack(before, seed, 200), event, seed);
            assertTrue(day.jobs().stream().anyMatch(Problem.Job::hasBegun), "seed " + seed);
            Plan follow = PackedPlans.follow(day);
            assertFalse(follow.isBetterThan(PackedPlans.pack(day, seed, 200)), "seed " + seed);
        }
    }

    @Test
    void days_of_one_seed_are_the_same_and_of_two_seeds_are_not() {
        assertEquals(WorkshopDays.rich(12, WorkshopDays.TIGHT, 7), WorkshopDays.rich(12, WorkshopDays.TIGHT, 7));
        assertFalse(WorkshopDays.of(12, WorkshopDays.FAIR, 7).equals(WorkshopDays.of(12, WorkshopDays.FAIR, 8)));
    }
}
