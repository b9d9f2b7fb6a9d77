package org.shedboard.app.command;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** What came of many problems, as a tree of JSON. */
public final class BenchTree {
    private BenchTree() {}

    /**
     * @param skipped what was not packed, with the reason
     * @param milliseconds all took by the clock on the wall
     */
    public static Map<String, Object> of(
            BenchTerms terms, List<BenchRow> rows, Map<String, String> skipped, long milliseconds) {
        return new Tree()
                .put("tries", terms.limit().tries())
                .put("seconds", terms.limit().tries().isPresent() ? Optional.empty() : Optional.of(seconds(terms)))
                .put("seeds", terms.seeds())
                .put("threads", terms.threads())
                .put("problems", rows.stream().map(BenchTree::row).toList())
                .put("gapToBound", gaps(rows.stream().map(BenchRow::gapToBound).toList()))
                .put("gapToKnown", gaps(rows.stream().map(BenchRow::gapToKnown).toList()))
                .put(
                        "skipped",
                        skipped.entrySet().stream()
                                .map(each -> new Tree()
                                        .put("file", each.getKey())
                                        .put("why", each.getValue())
                                        .fields())
                                .toList())
                .put("wallSeconds", milliseconds / 1000.0)
                .fields();
    }

    private static double seconds(BenchTerms terms) {
        return terms.limit().time().toMillis() / 1000.0;
    }

    private static Map<String, Object> row(BenchRow row) {
        return new Tree()
                .put("problem", row.name())
                .put("jobs", row.jobs())
                .put("tasks", row.tasks())
                .put("best", row.best().cost())
                .put("median", row.median().cost())
                .put("worst", row.worst().cost())
                .put("bound", row.bound())
                .put("gapToBound", number(row.gapToBound()))
                .put("known", row.known())
                .put("gapToKnown", number(row.gapToKnown()))
                .put("leftOut", row.leftOut())
                .put("tries", row.tries())
                .put("searchSeconds", row.nanoseconds() / 1_000_000 / 1000.0)
                .put("triesASecond", row.triesASecond())
                .fields();
    }

    private static Map<String, Object> gaps(List<OptionalDouble> all) {
        Gaps gaps = Gaps.of(all);
        return new Tree()
                .put("count", gaps.count())
                .put("median", number(gaps.median()))
                .put("mean", number(gaps.mean()))
                .put("max", number(gaps.max()))
                .fields();
    }

    /** To a thousandth of a percent. */
    private static Optional<Double> number(OptionalDouble percent) {
        return percent.isPresent() ? Optional.of(Math.round(percent.getAsDouble() * 1000) / 1000.0) : Optional.empty();
    }
}
