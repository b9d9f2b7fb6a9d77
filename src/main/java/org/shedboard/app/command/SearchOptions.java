package org.shedboard.app.command;

import java.time.Duration;
import java.util.Optional;
import picocli.CommandLine.Option;

/** What may be said of any search: how long it looks, and on how many threads. */
final class SearchOptions {
    /** Enough for most days to be near the end of what more time would bring. */
    private static final double USUAL_SECONDS = 2;

    private static final int LONGEST_SECONDS = 24 * 60 * 60;

    private static final int MOST_THREADS = 64;

    @Option(names = "--seconds", paramLabel = "S", descriptionKey = "option.search.seconds")
    private Optional<Double> seconds;

    @Option(names = "--tries", paramLabel = "N", descriptionKey = "option.search.tries")
    private Optional<Long> tries;

    @Option(names = "--threads", paramLabel = "T", descriptionKey = "option.search.threads")
    private Optional<Integer> threads;

    SearchLimit limit() {
        if (tries.isPresent() && seconds.isPresent()) {
            throw new WrongUse("command.search.one_limit");
        }
        return tries.isPresent() ? SearchLimit.ofTries(checked(tries.get())) : SearchLimit.ofTime(time());
    }

    private static long checked(long tries) {
        if (tries < 0) {
            throw new WrongUse("command.search.tries_range");
        }
        return tries;
    }

    private Duration time() {
        double asked = seconds.orElse(USUAL_SECONDS);
        if (!(asked >= 0 && asked <= LONGEST_SECONDS)) {
            throw new WrongUse("command.search.seconds_range", LONGEST_SECONDS);
        }
        return Duration.ofMillis(Math.round(asked * 1000));
    }

    /** @param processors how many the machine has */
    int threads(int processors) {
        int asked = threads.orElse(Math.min(SearchLimit.USEFUL_THREADS, processors));
        if (asked < 1 || asked > MOST_THREADS) {
            throw new WrongUse("command.search.threads_range", MOST_THREADS);
        }
        return asked;
    }
}
