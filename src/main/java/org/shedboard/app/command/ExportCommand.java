package org.shedboard.app.command;

import java.nio.file.Path;
import java.util.List;
import org.shedboard.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Everything in the records, as one file that {@code load} takes into an empty home. */
@Command(name = "export")
public final class ExportCommand implements Wish {
    @Parameters(index = "0", paramLabel = "FILE", descriptionKey = "option.file_to_write")
    private Path file;

    public Path file() {
        return file;
    }

    public Answer answer(long rows) {
        Tree tree = new Tree().put("exported", file.toString()).put("rows", rows);
        return new Answer(List.of(Words.say("command.export.done", rows, file)), tree.fields());
    }
}
