package org.shedboard.app.command;

import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** How good the plans for a folder of problems are. */
@Command(name = "bench")
public final class BenchCommand implements Wish {
    private static final int MOST_SEEDS = 1000;

    @Parameters(index = "0", paramLabel = "DIR", descriptionKey = "option.problems")
    private Path folder;

    @Mixin
    private SearchOptions search;

    @Option(names = "--seeds", paramLabel = "K", defaultValue = "1")
    private int seeds;

    /** A folder of problems, or one file. */
    public Path folder() {
        return folder;
    }

    /** @param processors how many the machine has */
    public BenchTerms terms(int processors) {
        if (seeds < 1 || seeds > MOST_SEEDS) {
            throw new WrongUse("command.bench.seeds_range", MOST_SEEDS);
        }
        return new BenchTerms(search.limit(), seeds, search.threads(processors));
    }
}
