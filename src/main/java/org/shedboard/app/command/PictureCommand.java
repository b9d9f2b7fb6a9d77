package org.shedboard.app.command;

import java.nio.file.Path;
import java.util.List;
import org.shedboard.day.Clocks;
import org.shedboard.day.Day;
import org.shedboard.files.ScreenPicture;
import org.shedboard.grid.Grid;
import org.shedboard.grid.Size;
import org.shedboard.look.Scheme;
import org.shedboard.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** A screen as it looks now, as a picture. */
@Command(name = "picture")
final class PictureCommand implements Wish.OnTheDay {
    /** Comfortable to read, and in a page. */
    private static final Size USUAL = new Size(120, 36);

    @Mixin
    private WhichScreen which;

    @Parameters(index = "1", paramLabel = "FILE", descriptionKey = "option.picture_file")
    private Path file;

    @ParentCommand
    private Root root;

    @Override
    public Reply reply(Seen seen) {
        Grid grid = which.drawn(seen, USUAL, root);
        Scheme scheme = root.globals().scheme().orElse(Scheme.DARK);
        String name = Words.say("picture." + which.screen());
        String words = words(seen.day(), seen);
        return new Reply.Write(file, new ScreenPicture(grid, scheme, name, words).text(), written());
    }

    private static String words(Day day, Seen seen) {
        return Words.say("picture.of", day.shop().name(), Clocks.sayDate(day.date()), Clocks.sayTime(day, seen.now()));
    }

    private Answer written() {
        Tree tree = new Tree().put("screen", which.screen()).put("file", file.toString());
        return new Answer(List.of(Words.say("command.picture.written", file)), tree.fields());
    }
}
