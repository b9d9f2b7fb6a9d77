package org.shedboard.screen;

import java.util.List;
import org.shedboard.board.Binding;
import org.shedboard.board.Board;
import org.shedboard.board.Deed;
import org.shedboard.board.Keys;
import org.shedboard.board.Screen;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.grid.TextWidth;
import org.shedboard.words.Words;

/** The two lines at the foot of every screen: the latest note with whether all is saved, and the keys that work now. */
final class Foot {
    private final Board board;

    Foot(Board board) {
        this.board = board;
    }

    void draw(Canvas canvas, Region foot) {
        String saved = Words.say(board.saving() > 0 ? "foot.saving" : "foot.saved");
        Region rest = canvas.textRight(foot.row(0).inside(1, 0), saved, Style.QUIET);
        board.note()
                .ifPresent(note -> canvas.text(rest, note.sentence(), note.isRefusal() ? Style.DANGER : Style.GOOD));
        Region line = foot.row(1).inside(1, 0);
        if (board.overlay().isPresent()) {
            canvas.text(line, Words.say("ask.foot"), Style.QUIET);
        } else if (board.screen() instanceof Screen.TakeIn) {
            canvas.text(line, Words.say("form.foot"), Style.QUIET);
        } else if (board.screen() instanceof Screen.Setup) {
            canvas.text(line, Words.say("setup.foot"), Style.QUIET);
        } else if (board.seen().isPresent() || board.screen() instanceof Screen.FirstRun) {
            keys(canvas, line);
        }
    }

    /** The keys that are on, the most used first, as many as fit whole; the way to all of them is always there. */
    private void keys(Canvas canvas, Region line) {
        List<Binding> on = Keys.of(board).stream().filter(Binding::isOn).toList();
        Region rest = line;
        for (Binding binding : on) {
            if (binding.deed() == Deed.HELP) {
                rest = canvas.textRight(rest, " " + binding.label() + " " + binding.name(), Style.KEY);
            }
        }
        for (Binding binding : on) {
            int width = TextWidth.of(binding.label()) + TextWidth.of(binding.name()) + 1;
            if (binding.deed() != Deed.HELP && width <= rest.width()) {
                rest = canvas.text(rest, binding.label(), Style.KEY);
                rest = canvas.text(rest, " " + binding.name() + "  ", Style.NORMAL);
            }
        }
    }
}
