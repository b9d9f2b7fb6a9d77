package org.shedboard.pack.lab;

import java.io.IOException;
import java.util.List;
import java.util.Locale;

/**
 * Measures every target of the packing engine and prints one table of them, with the rows behind each line below it. What is
 * found is shown on the error stream as it comes. Without options its searches add up to some
 * 48 minutes, fewer where a plan is proven to be best before its time is up.
 *
 * <pre>
 *   Targets DAYS REFERENCE KEPT [option...]
 *
 *   DAYS            day files, with the proven optima in optimum.csv
 *   REFERENCE       published shops in its folders jsp and fjsp, with the best values known in results.csv
 *   KEPT            the best plans kept, NAME.plan.json; see {@link BestKept}
 *   only=NAME,...   only these sections: small few many event solver hint first pace replays quote memory shops
 *   scale=X         every search X times as long
 *   seeds=N         of each judged day; 3
 *   files=N         at most N days or shops a section, spread over all
 *   long=N          days that the solver gets its longest time on; 4, of 12
 *   keep            a plan found that is better than the one kept replaces it
 * </pre>
 */
public final class Targets {
    private final TargetTerms terms;

    private Targets(TargetTerms terms) {
        this.terms = terms;
    }

    public static void main(String[] arguments) throws IOException, InterruptedException {
        Locale.setDefault(Locale.ROOT);
        new Targets(TargetTerms.parse(arguments)).run();
    }

    private static List<Section> sections() {
        return List.of(
                new SmallDays(),
                OverBestKept.few(),
                OverBestKept.many(),
                new AfterOneEvent(),
                new BesideSolver(),
                new SolverFromPlan(),
                new FirstPlan(),
                new Pace(),
                new ReplayTime(),
                new QuoteTime(),
                new Memory(),
                new PublishedShops());
    }

    private void run() throws IOException, InterruptedException {
        long begun = System.nanoTime();
        TargetTable table = new TargetTable();
        try (Laboratory lab = new Laboratory(terms)) {
            for (Section section : sections()) {
                if (terms.wants(section.name())) {
                    table.add(line(section, lab));
                }
            }
        }
        table.text().forEach(System.out::println);
        System.out.printf(
                "%nsearches on %d threads, %s times as long as their targets say; %.0f minutes in all%n",
                Laboratory.THREADS, terms.scale(), (System.nanoTime() - begun) / 60e9);
    }

    private static TargetTable.Line line(Section section, Laboratory lab) throws IOException, InterruptedException {
        Rows rows = new Rows();
        Reached reached = reached(section, lab, rows);
        System.err.printf("%s: %s: %s%n", section.name(), reached.verdict().word(), reached.text());
        return TargetTable.Line.of(section, reached, rows);
    }

    /** A plan that breaks a rule ends its own section, not the hour. */
    private static Reached reached(Section section, Laboratory lab, Rows rows)
            throws IOException, InterruptedException {
        try {
            return section.measure(lab, rows);
        } catch (IllegalStateException broken) {
            rows.add("broken off: %s", broken);
            return new Reached("broken off, see below", Verdict.MISSED);
        }
    }
}
