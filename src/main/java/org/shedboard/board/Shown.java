package org.shedboard.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What stands on the full screen.
 *
 * @param behind the screens that Escape leads back to, the nearest last
 * @param overlay the question that is asked over it
 */
public record Shown(Screen screen, List<Screen> behind, Optional<Overlay> overlay, Optional<Note> note) {
    public Shown {
        behind = List.copyOf(behind);
    }

    static Shown only(Screen screen) {
        return new Shown(screen, List.of(), Optional.empty(), Optional.empty());
    }

    /** The same screen, further on. */
    Shown with(Screen next) {
        return new Shown(next, behind, overlay, note);
    }

    /** Another screen, from which Escape leads back here. */
    Shown on(Screen next) {
        List<Screen> back = new ArrayList<>(behind);
        back.add(screen);
        return new Shown(next, back, Optional.empty(), note);
    }

    /** The screen before this one; another one where there is none. */
    Shown back(Screen otherwise) {
        if (behind.isEmpty()) {
            return new Shown(otherwise, behind, Optional.empty(), note);
        }
        int last = behind.size() - 1;
        return new Shown(behind.get(last), behind.subList(0, last), Optional.empty(), note);
    }

    /** A screen that nothing leads back from. */
    Shown onlyOn(Screen next) {
        return new Shown(next, List.of(), Optional.empty(), note);
    }

    Shown asking(Optional<Overlay> question) {
        return new Shown(screen, behind, question, note);
    }

    Shown noting(Optional<Note> next) {
        return new Shown(screen, behind, overlay, next);
    }
}
