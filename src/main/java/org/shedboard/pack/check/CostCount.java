package org.shedboard.pack.check;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.shedboard.pack.Costs;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;

/** Adds up what a plan costs, straight from the formula of the day file. */
final class CostCount {
    private static final int SOON_MINUTES = 60;
    private static final int SOON_FACTOR = 4;

    private final Problem problem;
    private final Plan plan;
    private final Listing listing;
    private final Costs costs;

    CostCount(Problem problem, Plan plan, Listing listing) {
        this.problem = problem;
        this.plan = plan;
        this.listing = listing;
        costs = problem.costs();
    }

    long count() {
        long sum = 0;
        int latest = 0;
        for (Problem.Job job : listing.placed()) {
            int finish =
                    listing.of(job).stream().mapToInt(Entry::complete).max().orElse(0);
            latest = Math.max(latest, finish);
            sum += costs.flow() * job.weight() * finish;
            if (job.promise().isPresent()) {
                sum += costs.late()
                        * job.weight()
                        * Math.max(0, finish - job.promise().getAsInt());
            }
            for (int stay = 0; stay < job.stays().size(); stay++) {
                sum += costs.handover() * handovers(job, stay) + swappedPlace(job, stay);
            }
        }
        for (Entry entry : listing.entries()) {
            sum += costs.overtime() * overtime(entry) + changes(entry);
        }
        return sum + costs.makespan() * latest;
    }

    private int handovers(Problem.Job job, int stay) {
        Set<String> different = new HashSet<>();
        int crew = 0;
        for (Entry entry : listing.of(job, stay)) {
            different.addAll(entry.time().people());
            crew = Math.max(crew, entry.task().people());
        }
        return Math.max(0, different.size() - crew);
    }

    private int overtime(Entry entry) {
        int minutes = 0;
        for (String person : entry.time().people()) {
            List<Windows.Stretch> work = entry.workOf(person, problem.now());
            minutes += work.stream()
                    .filter(Windows.Stretch::overtime)
                    .mapToInt(Windows.Stretch::minutes)
                    .sum();
        }
        return minutes;
    }

    private long changes(Entry entry) {
        Optional<Plan.TaskTime> posted = problem.posted()
                .flatMap(before -> before.findTask(
                        entry.job().id(), entry.stayIndex(), entry.task().id()));
        if (posted.isEmpty() || entry.task().hasBegun()) {
            return 0;
        }
        long minutes = Math.abs(entry.time().start() - posted.get().start());
        boolean soon = Math.abs(posted.get().start() - problem.now()) <= SOON_MINUTES;
        boolean swapped = !posted.get().person().equals(entry.time().person());
        return costs.moved() * minutes * (soon ? SOON_FACTOR : 1) + (swapped ? costs.swapped() : 0);
    }

    private long swappedPlace(Problem.Job job, int stay) {
        Optional<Plan.StayPlace> posted = problem.posted().flatMap(before -> before.findStay(job.id(), stay));
        Optional<Plan.StayPlace> found = plan.findStay(job.id(), stay);
        if (posted.isEmpty() || found.isEmpty() || job.stays().get(stay).hasBegun()) {
            return 0;
        }
        return posted.get().place().equals(found.get().place()) ? 0 : costs.swapped();
    }
}
