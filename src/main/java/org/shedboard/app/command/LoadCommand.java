package org.shedboard.app.command;

import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** A catalogue for the shop, or a shop for an empty home, from a file. */
@Command(name = "load")
public final class LoadCommand implements Wish {
    @Parameters(index = "0", paramLabel = "FILE", descriptionKey = "option.file")
    private Path file;

    public Path file() {
        return file;
    }
}
