package org.shedboard.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.shedboard.pack.check.PlanCheck;
import org.shedboard.pack.search.Packer;

/** Makes plans for tests; none gets past without the checker's word. */
public final class PackedPlans {
    private PackedPlans() {}

    public static Plan pack(Problem problem, long seed, long tries) {
        return checked(problem, Packer.pack(problem, Search.of(seed, tries)));
    }

    public static Plan first(Problem problem) {
        return checked(problem, Packer.first(problem));
    }

    public static Plan follow(Problem problem) {
        return checked(problem, Packer.follow(problem));
    }

    public static Plan checked(Problem problem, Plan plan) {
        PlanCheck check = PlanCheck.of(problem, plan);
        assertEquals(List.of(), check.breaches(), () -> "seed " + plan.seed() + ": " + plan);
        assertEquals(plan.cost(), check.cost());
        return plan;
    }
}
