package org.shedboard.app.command;

import java.util.Optional;
import org.shedboard.board.Board;
import org.shedboard.board.Effect;
import org.shedboard.board.Msg;
import org.shedboard.board.NamedScreen;
import org.shedboard.board.Turn;
import org.shedboard.board.Update;

/** The full screen as it would show the day that a command sees, with all read that it would have read by now. */
final class ScreenSeen {
    private final Seen seen;

    ScreenSeen(Seen seen) {
        this.seen = seen;
    }

    /**
     * The board with a screen open.
     *
     * @param tag of the visit that the screen is about; the one selected first when empty
     * @param person whose next machine it is; of whoever opened the day when empty
     */
    Board open(NamedScreen screen, Optional<String> tag, Optional<String> person) {
        Asked asked = new Asked(seen);
        Board start = start();
        Board board =
                tag.map(text -> NamedScreen.select(start, asked.visit(text))).orElse(start);
        if (!screen.canOpen(board)) {
            throw new CannotDo("off.nothing_selected");
        }
        String personId = person.map(text -> asked.person(text).id()).orElseGet(board::who);
        Turn turn = screen.open(board, personId);
        return turn.effects().stream().reduce(turn.board(), this::answered, (one, other) -> other);
    }

    private Board start() {
        Board board = Board.starting(seen.day().zone());
        board = told(board, new Msg.Seen(seen.outlook(), seen.tally()));
        board = told(board, new Msg.KnockOffSeen(seen.knockOff()));
        return told(board, new Msg.DriftsSeen(seen.day().books().experience().drifts()));
    }

    /** What a screen asks for when it opens is only ever read; it changes nothing. */
    private Board answered(Board board, Effect effect) {
        if (effect instanceof Effect.ReadHours read) {
            return told(board, new Msg.HoursRead(seen.tally(read.from(), read.until())));
        }
        if (effect instanceof Effect.LookBack back) {
            return told(board, new Msg.LookedBack(seen.lookBack(back.from(), back.until())));
        }
        if (effect instanceof Effect.ReadHistory read) {
            return told(board, new Msg.HistoryRead(seen.history(read.machineId())));
        }
        if (effect instanceof Effect.TryOut tried) {
            return told(board, new Msg.Tried(tried.whatIf(), tried.whatIf().on(seen.outlook())));
        }
        throw new IllegalArgumentException("nothing is read for " + effect);
    }

    private static Board told(Board board, Msg msg) {
        return Update.of(board, msg).board();
    }
}
