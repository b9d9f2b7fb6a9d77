package org.shedboard.pack.check;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.shedboard.pack.PackedPlans;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.RandomProblems;
import org.shedboard.pack.ReplanDays;
import org.shedboard.pack.WorkshopDays;
import org.shedboard.pack.fault.ProblemCheck;

/** Legal plans of drawn days, broken in every way there is at every line that admits it: the checker names the rule and the line. */
class PlanBreaksTest {
    private static final int SEEDS = 2 * Integer.getInteger("proof.scale", 1);
    private static final int TRIES = 60;
    /** Broken plans of one kind and day; more tell nothing new. */
    private static final int EACH = 5;

    private static final List<DayPlan> DAYS = days();

    private static List<DayPlan> days() {
        List<DayPlan> days = new ArrayList<>();
        for (int seed = 0; seed < SEEDS; seed++) {
            add(days, WorkshopDays.rich(8, WorkshopDays.FAIR, seed), seed);
            Problem before = WorkshopDays.rich(8, WorkshopDays.FAIR, 100 + seed);
            Plan posted = PackedPlans.pack(before, seed, TRIES);
            add(days, ReplanDays.of(before, posted, ReplanDays.Event.values()[seed % 4], seed), seed);
        }
        for (int seed = 0; seed < 3 * SEEDS; seed++) {
            Problem before = RandomProblems.of(seed);
            add(days, before, seed);
            Problem later = RandomProblems.later(before, PackedPlans.pack(before, seed, TRIES), 60, seed);
            if (ProblemCheck.faults(later).isEmpty()) {
                add(days, later, seed);
            }
        }
        return days;
    }

    private static void add(List<DayPlan> days, Problem problem, long seed) {
        days.add(new DayPlan(problem, PackedPlans.pack(problem, seed, TRIES)));
    }

    @ParameterizedTest
    @EnumSource(PlanBreak.class)
    void a_plan_broken_in_one_way_is_refused_for_that_and_where(PlanBreak way) {
        int count = 0;
        for (int index = 0; index < DAYS.size(); index++) {
            DayPlan day = DAYS.get(index);
            List<PlanBreak.Broken> all = way.of(day);
            int step = 1 + all.size() / EACH;
            for (int one = 0; one < all.size(); one += step) {
                PlanBreak.Broken broken = all.get(one);
                PlanCheck check = PlanCheck.of(day.problem, broken.plan().get());
                String name =
                        "day " + index + ", " + way.rule + " at " + broken.where() + ", but the checker says\n" + check;
                assertTrue(broken.isNamedBy(check, way.rule), name);
                count++;
            }
        }
        assertTrue(count >= SEEDS, "only " + count + " plans could be broken like this");
    }
}
