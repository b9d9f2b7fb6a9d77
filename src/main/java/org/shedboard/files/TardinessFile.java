package org.shedboard.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.shedboard.pack.Costs;
import org.shedboard.pack.Problem;
import org.shedboard.pack.fault.ProblemCheck;

/**
 * Weighted tardiness in job shops, after Singer and Pinedo, IIE Transactions 30, 1998: a table with the columns {@code instance}
 * (a job shop's name), {@code f10} (due dates are so many tenths of a job's minutes, rounded down) and {@code best_known}. The
 * construction has ten jobs, of which the first two weigh 4, the next six 2, the last two 1; of a larger shop its first ten count.
 */
public final class TardinessFile {
    private static final int[] WEIGHTS = {4, 4, 2, 2, 2, 2, 2, 2, 1, 1};
    private static final Costs LATE_ONLY = new Costs(1, 0, 0, 0, 0, 0, 0);
    private static final long LARGEST_FACTOR = 1000;

    private TardinessFile() {}

    /** Whether the text has those columns. */
    public static boolean isOne(String text) {
        CsvText table = CsvText.of(text);
        return table.has("instance") && table.has("f10");
    }

    /** One row. */
    public record Row(String instance, int tenths, OptionalLong bestKnown) {
        /** The job shop with due dates and weights; empty when it has fewer than ten jobs. */
        public Optional<Problem> of(Problem shop) {
            if (shop.jobs().size() < WEIGHTS.length) {
                return Optional.empty();
            }
            List<Problem.Job> jobs = new ArrayList<>();
            for (int weight : WEIGHTS) {
                Problem.Job job = shop.jobs().get(jobs.size());
                jobs.add(job.withWeight(weight).withPromise(dueOf(job)));
            }
            return Optional.of(shop.withJobs(jobs).withCosts(LATE_ONLY));
        }

        private int dueOf(Problem.Job job) {
            long minutes = job.stays().stream()
                    .flatMap(stay -> stay.tasks().stream())
                    .mapToLong(Problem.Task::handsOn)
                    .sum();
            return (int) Math.min(ProblemCheck.LARGEST, minutes * tenths / 10);
        }
    }

    public static Reading<List<Row>> read(String text) {
        CsvText table = CsvText.of(text);
        List<Row> rows = new ArrayList<>();
        for (CsvText.Row row : table.rows()) {
            Optional<String> instance = row.expect("instance");
            OptionalLong tenths = row.expect("f10").isPresent() ? row.findWhole("f10") : OptionalLong.empty();
            OptionalLong bestKnown = row.findWhole("best_known");
            if (tenths.isPresent() && tenths.getAsLong() > LARGEST_FACTOR) {
                row.fault("f10", "%s is not from 0 to %s".formatted(tenths.getAsLong(), LARGEST_FACTOR));
            } else if (instance.isPresent() && tenths.isPresent()) {
                rows.add(new Row(instance.get(), (int) tenths.getAsLong(), bestKnown));
            }
        }
        return new Reading<>(table.faults().isEmpty() ? Optional.of(rows) : Optional.empty(), table.faults());
    }
}
