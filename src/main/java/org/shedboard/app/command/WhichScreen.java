package org.shedboard.app.command;

import java.util.Optional;
import org.shedboard.board.NamedScreen;
import org.shedboard.grid.Grid;
import org.shedboard.grid.Size;
import org.shedboard.screen.View;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Which screen a command shows, of which machine or person, and how large. */
final class WhichScreen {
    @Parameters(index = "0", paramLabel = "SCREEN", descriptionKey = "option.screen")
    private NamedScreen screen;

    @Option(names = "--size", paramLabel = "COLUMNSxROWS", descriptionKey = "option.screen_size")
    private Optional<Size> size;

    @Option(names = "--tag", paramLabel = "TAG", descriptionKey = "option.screen_tag")
    private Optional<String> tag;

    @Option(names = "--person", paramLabel = "NAME", descriptionKey = "option.screen_person")
    private Optional<String> person;

    NamedScreen screen() {
        return screen;
    }

    /** As it looks now, in the letters that were asked for. */
    Grid drawn(Seen seen, Size usual, Root root) {
        Grid drawn = View.of(new ScreenSeen(seen).open(screen, tag, person), size.orElse(usual));
        return root.globals().ascii() ? drawn.toAscii() : drawn;
    }
}
