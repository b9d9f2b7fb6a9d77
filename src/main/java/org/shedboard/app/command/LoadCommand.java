package org.shedboard.app.command;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A catalogue for the shop, or a shop for an empty home, from a file. */
@Command(name = "load")
public final class LoadCommand implements Wish {
    @Parameters(index = "0", paramLabel = "FILE", descriptionKey = "option.file")
    private Path file;

    @Option(names = "--by", paramLabel = "NAME", descriptionKey = "option.signs")
    private Optional<String> by;

    public Path file() {
        return file;
    }

    /** The name of who signs for a catalogue. */
    public Optional<String> by() {
        return by;
    }
}
