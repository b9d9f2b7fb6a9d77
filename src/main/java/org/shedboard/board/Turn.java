package org.shedboard.board;

import java.util.ArrayList;
import java.util.List;

/** What a message makes of the board: the next board, and what the shell shall do. */
public record Turn(Board board, List<Effect> effects) {
    public Turn {
        effects = List.copyOf(effects);
    }

    static Turn to(Board board, Effect... effects) {
        return new Turn(board, List.of(effects));
    }

    Turn plus(Effect effect) {
        List<Effect> all = new ArrayList<>(effects);
        all.add(effect);
        return new Turn(board, all);
    }

    /** With another board. */
    Turn with(Board next) {
        return new Turn(next, effects);
    }

    /** Without one effect, and with another board, as it then is. */
    Turn without(Effect effect, Board then) {
        return new Turn(
                then, effects.stream().filter(each -> !each.equals(effect)).toList());
    }
}
