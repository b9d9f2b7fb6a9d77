package org.shedboard.app;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.shedboard.app.command.BenchCommand;
import org.shedboard.app.command.BenchRow;
import org.shedboard.app.command.BenchTable;
import org.shedboard.app.command.BenchTerms;
import org.shedboard.app.command.BenchTree;
import org.shedboard.app.command.CannotDo;
import org.shedboard.words.Words;

/** Says how good the plans for a folder of problems are: row by row as they come, or all as JSON at the end. */
final class Benching {
    private final Voice voice;
    private final Surroundings around;
    private final boolean json;

    Benching(Voice voice, Surroundings around, boolean json) {
        this.voice = voice;
        this.around = around;
        this.json = json;
    }

    int run(BenchCommand asked) {
        BenchTerms terms = asked.terms(around.processors());
        BenchFolder folder = BenchFolder.of(asked.folder());
        Progress progress = new Progress(voice, around.isWatched());
        Thread hook = new Thread(progress::end, "interrupted");
        Runtime.getRuntime().addShutdownHook(hook);
        try {
            List<BenchRow> rows = run(new BenchRun(folder, terms, progress), folder, terms);
            if (rows.isEmpty()) {
                throw new CannotDo("command.bench.nothing", asked.folder());
            }
        } finally {
            FullScreen.forget(hook);
        }
        return Shedboard.DONE;
    }

    private List<BenchRow> run(BenchRun run, BenchFolder folder, BenchTerms terms) {
        long begun = System.nanoTime();
        if (json) {
            List<BenchRow> rows = run.run(row -> {});
            voice.json(BenchTree.of(terms, rows, folder.skipped(), millisecondsSince(begun)));
            return rows;
        }
        BenchTable table = new BenchTable(
                folder.cases().stream().map(BenchFolder.Case::name).toList(), terms.seeds() > 1, folder.hasKnown());
        voice.say(List.of(table.head()));
        List<BenchRow> rows = run.run(row -> voice.say(List.of(table.line(row))));
        voice.say(Stream.of(table.sums(rows), skipped(folder.skipped()), List.of(terms(terms, rows.size(), begun)))
                .flatMap(List::stream)
                .toList());
        return rows;
    }

    private static List<String> skipped(Map<String, String> skipped) {
        return skipped.entrySet().stream()
                .map(each -> Words.say("command.bench.skipped", each.getKey(), each.getValue()))
                .toList();
    }

    private static String terms(BenchTerms terms, int count, long begun) {
        String wall = seconds(millisecondsSince(begun));
        return terms.limit().tries().isPresent()
                ? Words.say(
                        "command.bench.terms_tries",
                        count,
                        terms.seeds(),
                        terms.limit().tries().get(),
                        terms.threads(),
                        wall)
                : Words.say(
                        "command.bench.terms_seconds",
                        count,
                        terms.seeds(),
                        seconds(terms.limit().time().toMillis()),
                        terms.threads(),
                        wall);
    }

    private static String seconds(long milliseconds) {
        return String.format(Locale.ROOT, "%.1f", milliseconds / 1000.0);
    }

    private static long millisecondsSince(long begun) {
        return Duration.ofNanos(System.nanoTime() - begun).toMillis();
    }
}
