package org.shedboard.pack.check;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;

/**
 * What is wrong with a plan, and what it really costs.
 *
 * @param cost the cost of what is listed, by the day file's formula
 */
public record PlanCheck(List<Breach> breaches, long cost) {
    public PlanCheck {
        breaches = List.copyOf(breaches);
    }

    public static PlanCheck of(Problem problem, Plan plan) {
        List<Breach> breaches = new ArrayList<>();
        Listing listing = Listing.of(problem, plan, breaches);
        new TaskRules(problem, listing, breaches).check();
        new StayRules(problem, plan, listing, breaches).check();
        new PersonRules(problem, listing, breaches).check();
        long cost = new CostCount(problem, plan, listing).count();
        if (cost != plan.cost()) {
            breaches.add(Breach.of(Rule.COST, "", "the plan says %s, it costs %s".formatted(plan.cost(), cost)));
        }
        return new PlanCheck(breaches, cost);
    }

    public boolean isLegal() {
        return breaches.isEmpty();
    }

    public boolean names(Rule rule) {
        return breaches.stream().anyMatch(breach -> breach.rule() == rule);
    }

    @Override
    public String toString() {
        return breaches.stream().map(Breach::toString).collect(Collectors.joining("\n"));
    }
}
