package org.shedboard.board;

import java.util.List;
import java.util.Optional;
import org.shedboard.register.Finder;
import org.shedboard.register.Merged;
import org.shedboard.shop.Machine;

/** What keys do where machines and owners are found. */
public final class RegisterKeys {
    /** As far as one press of a page key leads. */
    private static final int PAGE = 10;

    private final Board board;
    private final Screen.Register screen;

    RegisterKeys(Board board, Screen.Register screen) {
        this.board = board;
        this.screen = screen;
    }

    /** What is listed. */
    public static List<Finder.Hit> listed(Board board, Screen.Register screen) {
        Finder finder = board.finder();
        return screen.find().isBlank()
                ? finder.all()
                : Found.by(finder, board.expectDay(), screen.find().text());
    }

    Turn press(Key key) {
        return switch (key.kind()) {
            case ESCAPE -> Turn.to(board.withoutNote().back());
            case UP, BACK_TAB -> Turn.to(moved(-1));
            case DOWN, TAB -> Turn.to(moved(1));
            case PAGE_UP -> Turn.to(moved(-PAGE));
            case PAGE_DOWN -> Turn.to(moved(PAGE));
            case ENTER -> enter();
            default ->
                Turn.to(board.withoutNote()
                        .with(new Screen.Register(screen.find().with(key), 0)));
        };
    }

    private Board moved(int by) {
        int last = Math.max(0, listed(board, screen).size() - 1);
        int row = Math.max(0, Math.min(last, screen.row() + by));
        return board.with(new Screen.Register(screen.find(), row));
    }

    private Turn enter() {
        List<Finder.Hit> listed = listed(board, screen);
        if (screen.row() >= listed.size()) {
            return Turn.to(board);
        }
        Finder.Hit hit = listed.get(screen.row());
        Optional<Machine> machine = hit.machine();
        return machine.isPresent()
                ? open(board, machine.get().id())
                : Turn.to(board.asking(new RegisterAsks(board.expectDay()).whatOf(hit.owner())));
    }

    /** On to the page of a machine. */
    static Turn open(Board board, String machineId) {
        Screen.MachinePage page = new Screen.MachinePage(machineId);
        return Turn.to(board.withoutNote().on(page), new Effect.ReadHistory(machineId));
    }

    /** The page anew, after something changed: of the machine that stands, where the one shown was merged into it. */
    static Turn show(Board board, Screen.MachinePage page) {
        Optional<String> into = board.expectDay().books().register().merged().stream()
                .filter(merged -> merged.machine().id().equals(page.machineId()))
                .map(Merged::into)
                .findFirst();
        Screen.MachinePage shown = into.map(Screen.MachinePage::new).orElse(page);
        return Turn.to(board.with(shown), new Effect.ReadHistory(shown.machineId()));
    }
}
