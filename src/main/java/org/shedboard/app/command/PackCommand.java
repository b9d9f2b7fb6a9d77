package org.shedboard.app.command;

import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A plan for the problem of a day file. */
@Command(name = "pack")
public final class PackCommand implements Wish {
    @Parameters(index = "0", paramLabel = "FILE", descriptionKey = "option.file")
    private Path file;

    @Mixin
    private SearchOptions search;

    @Option(names = "--seed", paramLabel = "K", defaultValue = "1")
    private long seed;

    @Option(names = "--against-risk")
    private boolean againstRisk;

    @Option(names = "--text")
    private boolean text;

    public Path file() {
        return file;
    }

    /** @param processors how many the machine has */
    public PackTerms terms(int processors) {
        return new PackTerms(search.limit(), seed, search.threads(processors), againstRisk);
    }

    /** @param json whether JSON was asked for, which it need not be: it is what is printed otherwise */
    public boolean isText(boolean json) {
        if (text && json) {
            throw new WrongUse("command.pack.one_form");
        }
        return text;
    }
}
