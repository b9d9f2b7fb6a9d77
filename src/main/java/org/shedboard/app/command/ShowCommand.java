package org.shedboard.app.command;

import java.util.List;
import java.util.Optional;
import org.shedboard.board.NamedScreen;
import org.shedboard.grid.Grid;
import org.shedboard.grid.Size;
import org.shedboard.screen.View;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** A screen as it looks now, as plain lines. */
@Command(name = "show")
final class ShowCommand implements Wish.OnTheDay {
    /** Tall, so that nothing that has rows of its own is cut off. */
    private static final Size USUAL = new Size(120, 60);

    @Parameters(index = "0", paramLabel = "SCREEN", descriptionKey = "option.screen")
    private NamedScreen screen;

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
        List<String> lines = grid.text();
        Tree tree = new Tree().put("screen", screen).put("lines", lines);
        return new Reply.Tell(new Answer(lines, tree.fields()));
    }
}
