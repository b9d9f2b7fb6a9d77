package org.shedboard.app.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.shedboard.board.NamedScreen;
import org.shedboard.day.Clocks;
import org.shedboard.day.Day;
import org.shedboard.files.ScreenPicture;
import org.shedboard.grid.Grid;
import org.shedboard.grid.Size;
import org.shedboard.look.Scheme;
import org.shedboard.screen.View;
import org.shedboard.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** A screen as it looks now, as a picture. */
@Command(name = "picture")
final class PictureCommand implements Wish.OnTheDay {
    /** Comfortable to read, and in a page. */
    private static final Size USUAL = new Size(120, 36);

    @Parameters(index = "0", paramLabel = "SCREEN", descriptionKey = "option.screen")
    private NamedScreen screen;

    @Parameters(index = "1", paramLabel = "FILE", descriptionKey = "option.picture_file")
    private Path file;

    @Option(names = "--size", paramLabel = "COLUMNSxROWS")
    private Size size = USUAL;

    @Option(names = "--tag", paramLabel = "TAG")
    private Optional<String> tag;

    @Option(names = "--person", paramLabel = "NAME")
    private Optional<String> person;

    @ParentCommand
    private Root root;

    @Override
    public Reply reply(Seen seen) {
        Grid drawn = View.of(new ScreenSeen(seen).open(screen, tag, person), size);
        Grid grid = root.globals().ascii() ? drawn.toAscii() : drawn;
        Scheme scheme = root.globals().scheme().orElse(Scheme.DARK);
        String name = Words.say("picture." + screen);
        String words = words(seen.day(), seen);
        return new Reply.Write(file, new ScreenPicture(grid, scheme, name, words).text(), written());
    }

    private static String words(Day day, Seen seen) {
        return Words.say("picture.of", day.shop().name(), Clocks.sayDate(day.date()), Clocks.sayTime(day, seen.now()));
    }

    private Answer written() {
        Tree tree = new Tree().put("screen", screen).put("file", file.toString());
        return new Answer(List.of(Words.say("command.picture.written", file)), tree.fields());
    }
}
