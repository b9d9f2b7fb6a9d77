package org.shedboard.app.command;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A plan for the problem of a day file. */
@Command(name = "pack")
public final class PackCommand implements Wish {
    private static final String TRIES = "20000";
    private static final int LONGEST_SECONDS = 24 * 60 * 60;

    @Parameters(index = "0", paramLabel = "FILE", descriptionKey = "option.file")
    private Path file;

    @Option(names = "--seconds", paramLabel = "S")
    private Optional<Double> seconds;

    @Option(names = "--tries", paramLabel = "N", defaultValue = TRIES)
    private long tries;

    @Option(names = "--seed", paramLabel = "K", defaultValue = "1")
    private long seed;

    @Option(names = "--text")
    private boolean text;

    public Path file() {
        return file;
    }

    /** How long to look; as many tries as were said when empty. */
    public Optional<Duration> time() {
        if (seconds.filter(each -> !(each >= 0 && each <= LONGEST_SECONDS)).isPresent()) {
            throw new WrongUse("command.pack.seconds_range", LONGEST_SECONDS);
        }
        return seconds.map(each -> Duration.ofMillis(Math.round(each * 1000)));
    }

    public long tries() {
        if (tries < 0) {
            throw new WrongUse("command.pack.tries_range");
        }
        return tries;
    }

    public long seed() {
        return seed;
    }

    public boolean isText() {
        return text;
    }
}
