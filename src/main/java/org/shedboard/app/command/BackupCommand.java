package org.shedboard.app.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shedboard.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A backup made now, checked, and where copies of all of them go. */
@Command(name = "backup")
public final class BackupCommand implements Wish {
    @Parameters(index = "0", paramLabel = "DIR", arity = "0..1", descriptionKey = "option.backup_dir")
    private Optional<Path> directory;

    @Option(names = "--also-to", paramLabel = "DIR")
    private Optional<Path> alsoTo;

    @Option(names = "--no-second-place")
    private boolean noSecondPlace;

    public Optional<Path> directory() {
        return directory;
    }

    /** Where a copy of each backup is to go from now on; an empty path for nowhere. */
    public Optional<Path> secondPlace() {
        if (noSecondPlace && alsoTo.isPresent()) {
            throw new WrongUse("command.backup.two_places");
        }
        return noSecondPlace ? Optional.of(Path.of("")) : alsoTo;
    }

    /** @param second where the copy is */
    public static Answer answer(Path made, Optional<Path> second) {
        List<String> lines = new ArrayList<>(List.of(Words.say("command.backup.done", made)));
        second.ifPresent(place -> lines.add(Words.say("command.backup.copied", place)));
        Tree tree = new Tree().put("backup", made.toString()).put("copiedTo", second.map(Path::toString));
        return new Answer(lines, tree.fields());
    }
}
