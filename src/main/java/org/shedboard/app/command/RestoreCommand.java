package org.shedboard.app.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.shedboard.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Going back to a backup, and on from there by the files of changes. */
@Command(name = "restore")
public final class RestoreCommand implements Wish {
    private static final String NEWEST = "newest";

    @Parameters(index = "0", paramLabel = "FILE", descriptionKey = "option.backup_file")
    private Path file;

    @Option(names = "--try")
    private boolean isTry;

    @Option(names = "--without-changes")
    private boolean withoutChanges;

    public Path file() {
        return file;
    }

    public boolean isNewest() {
        return file.toString().equals(NEWEST);
    }

    public boolean isTry() {
        return isTry;
    }

    public boolean withChanges() {
        return !withoutChanges;
    }

    /**
     * What came of it.
     *
     * @param kept where the file that was there is now; empty where there was none
     */
    public record Outcome(Path backup, List<Path> skipped, int redone, int lost, String kept) {}

    public Answer answer(Outcome outcome) {
        List<String> lines = new ArrayList<>();
        outcome.skipped().forEach(each -> lines.add(Words.say("command.restore.skipped", each)));
        lines.add(Words.say(
                isTry ? "command.restore.tried" : "command.restore.done", outcome.backup(), outcome.redone()));
        if (outcome.lost() > 0) {
            lines.add(Words.say("command.restore.lost", outcome.lost()));
        }
        if (!outcome.kept().isEmpty()) {
            lines.add(Words.say("command.restore.kept", outcome.kept()));
        }
        Tree tree = new Tree()
                .put(isTry ? "tried" : "restored", outcome.backup().toString())
                .put("skipped", outcome.skipped().stream().map(Path::toString).toList())
                .put("redone", outcome.redone())
                .put("lost", outcome.lost())
                .put("kept", outcome.kept());
        return new Answer(lines, tree.fields());
    }
}
