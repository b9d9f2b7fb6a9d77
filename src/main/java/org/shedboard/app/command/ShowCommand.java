package org.shedboard.app.command;

import java.util.List;
import org.shedboard.grid.Grid;
import org.shedboard.grid.Size;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.ParentCommand;

/** A screen as it looks now, as plain lines. */
@Command(name = "show")
final class ShowCommand implements Wish.OnTheDay {
    /** Tall, so that nothing that has rows of its own is cut off. */
    private static final Size USUAL = new Size(120, 60);

    @Mixin
    private WhichScreen which;

    @ParentCommand
    private Root root;

    @Override
    public Reply reply(Seen seen) {
        Grid grid = which.drawn(seen, USUAL, root);
        List<String> lines = grid.text();
        Tree tree = new Tree().put("screen", which.screen()).put("lines", lines);
        return new Reply.Tell(new Answer(lines, tree.fields()));
    }
}
