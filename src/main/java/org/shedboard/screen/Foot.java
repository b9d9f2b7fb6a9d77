package org.shedboard.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shedboard.board.Binding;
import org.shedboard.board.Board;
import org.shedboard.board.Deed;
import org.shedboard.board.Key;
import org.shedboard.board.Keys;
import org.shedboard.board.Note;
import org.shedboard.board.Overlay;
import org.shedboard.board.Screen;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.grid.TextWidth;
import org.shedboard.words.Words;

/** The lines at the foot of every screen: the latest note with whether all is saved, and the keys that work now. */
final class Foot {
    /** Keys that a sentence at the foot may name. */
    private static final List<Key> NAMED = List.of(Key.ENTER, Key.ESCAPE, Key.TAB, Key.control('s'));

    /** Columns between two keys. */
    private static final int GAP = 2;
    /** Rows of a note; longer ones are cut. */
    private static final int MOST_NOTE = 3;

    /** From this width on all keys of the screen for wet hands have room in two rows. */
    private static final int WIDE_FOR_NEXT = 80;

    private final Board board;

    Foot(Board board) {
        this.board = board;
    }

    /** The screen for wet hands shows all its keys, since nobody leafs through help there. */
    int rows(int width) {
        return note(width).size() + (board.screen() instanceof Screen.Next next ? rowsOfKeys(next, width) : 1);
    }

    /** With two people there are more keys, and less room beside them where one stands above the other. */
    private static int rowsOfKeys(Screen.Next next, int width) {
        int wide = next.beside().isPresent() ? NextPairView.SIDE_BY_SIDE : WIDE_FOR_NEXT;
        return width < wide ? 3 : 2;
    }

    void draw(Canvas canvas, Region foot) {
        Region inside = foot.inside(1, 0);
        canvas.textRight(inside.row(0), saved(), Style.QUIET);
        List<String> note = note(foot.width());
        for (int row = 0; row < note.size(); row++) {
            canvas.text(inside, row, note.get(row), styleOfNote());
        }
        keys(canvas, inside.below(note.size()));
    }

    /** The note in as many rows as it needs, so that a reason is never cut; one blank row where there is none. */
    private List<String> note(int width) {
        int room = width - 2 - GAP - TextWidth.of(saved());
        List<String> lines = TextWidth.wrap(sentence(), room);
        return lines.subList(0, Math.min(MOST_NOTE, lines.size()));
    }

    /** That the records are away stands there whenever nothing newer does. */
    private String sentence() {
        return board.note().map(Note::sentence).or(board::away).orElse("");
    }

    private Style styleOfNote() {
        boolean isGood =
                board.note().map(note -> !note.isRefusal()).orElse(board.away().isEmpty());
        return isGood ? Style.GOOD : Style.DANGER;
    }

    private void keys(Canvas canvas, Region lines) {
        Region line = lines.row(0);
        if (board.overlay().isPresent()) {
            boolean typed = board.overlay().get() instanceof Overlay.TypeIn;
            sentence(canvas, line, Words.say(typed ? "ask.type_foot" : "ask.foot"));
        } else if (board.screen() instanceof Screen.TakeIn) {
            sentence(canvas, line, Words.say("form.foot"));
        } else if (board.screen() instanceof Screen.YardPage yard && yard.isTyping()) {
            sentence(canvas, line, Words.say("yard.foot"));
        } else if (board.screen() instanceof Screen.Register) {
            sentence(canvas, line, Words.say("register.foot"));
        } else if (board.screen() instanceof Screen.Setup) {
            sentence(canvas, line, Words.say("setup.foot"));
        } else if (board.seen().isPresent() || board.screen() instanceof Screen.FirstRun) {
            bound(canvas, lines);
        }
    }

    /** Keys told in a sentence: each can be pointed at, from its name to the comma. */
    private static void sentence(Canvas canvas, Region line, String text) {
        canvas.text(line, text, Style.QUIET);
        Region rest = line;
        for (String part : text.split("(?<=, )")) {
            Region here = rest.left(TextWidth.of(part));
            keyIn(part).ifPresent(key -> Press.key(canvas, touched(here), key));
            rest = rest.rightOf(here.width());
        }
    }

    private static Optional<Key> keyIn(String part) {
        return NAMED.stream()
                .filter(key -> part.contains(Words.say("key." + key.kind())))
                .findFirst();
    }

    private String saved() {
        if (board.away().isPresent()) {
            return Words.say("foot.away");
        }
        if (board.saving() > 0) {
            return Words.say("foot.saving");
        }
        return board.seen().isPresent() ? Words.say("foot.saved") : "";
    }

    /** The keys that are on, the most used first, as many as fit whole; the way to all of them is always there. */
    private void bound(Canvas canvas, Region lines) {
        List<Binding> on = Keys.of(board).stream().filter(Binding::isOn).toList();
        int row = 0;
        Region rest = help(canvas, lines.row(0), on);
        for (Binding binding : withoutHelp(on)) {
            int width = TextWidth.of(binding.label()) + TextWidth.of(binding.name()) + 1;
            if (width > rest.width() && row + 1 < lines.height()) {
                row++;
                rest = lines.row(row);
            }
            if (width > rest.width()) {
                return;
            }
            Press.key(canvas, touched(rest.left(width + GAP)), binding.key());
            Region name = canvas.text(rest, binding.label(), Style.KEY);
            rest = canvas.text(name, " " + binding.name(), Style.NORMAL).rightOf(GAP);
        }
    }

    /** A finger wants two rows: that of the keys and the one above it. */
    private static Region touched(Region key) {
        return new Region(key.left(), key.top() - 1, key.width(), key.height() + 1);
    }

    private static Region help(Canvas canvas, Region line, List<Binding> on) {
        Region rest = line;
        for (Binding binding : on) {
            if (binding.deed() == Deed.HELP) {
                Region whole = rest;
                rest = canvas.textRight(rest, " " + binding.label() + " " + binding.name(), Style.KEY);
                Press.key(canvas, touched(whole.rightOf(rest.width())), binding.key());
            }
        }
        return rest;
    }

    /** One key for each thing that can be done. */
    private static List<Binding> withoutHelp(List<Binding> on) {
        List<Binding> shown = new ArrayList<>();
        for (Binding binding : on) {
            boolean told = shown.stream().anyMatch(each -> each.deed() == binding.deed());
            if (binding.deed() != Deed.HELP && !told) {
                shown.add(binding);
            }
        }
        return shown;
    }
}
