package org.shedboard.board;

import java.time.LocalDate;
import java.util.Optional;
import org.shedboard.day.Act;
import org.shedboard.day.RingList;
import org.shedboard.register.Rung;
import org.shedboard.words.Words;

/** What keys do on the list of owners to ring. */
final class RingKeys {
    /** Farther ahead nobody can say what a machine will have run. */
    private static final int MOST_WEEKS = 26;

    private final Board board;
    private final Screen.Ring screen;

    RingKeys(Board board, Screen.Ring screen) {
        this.board = board;
        this.screen = screen;
    }

    /** The list as it is at this moment, for so many weeks. */
    static Screen.Ring of(Board board, int weeks, int row) {
        RingList list = RingList.of(board.expectDay(), board.expectOutlook().at(), weeks);
        int last = Math.max(0, list.calls().size() - 1);
        return new Screen.Ring(list, weeks, Math.max(0, Math.min(last, row)));
    }

    Turn perform(Deed deed) {
        return switch (deed) {
            case NOTE_CALL -> Turn.to(board.asking(whatTheySaid(screen.chosen().orElseThrow())));
            case MORE_WEEKS -> weeks(screen.weeks() + 1);
            case FEWER_WEEKS -> weeks(screen.weeks() - 1);
            default -> throw new IllegalStateException(deed + " is no key of this screen");
        };
    }

    private Turn weeks(int weeks) {
        return Turn.to(board.with(of(board, Math.max(1, Math.min(MOST_WEEKS, weeks)), screen.row())));
    }

    private Overlay whatTheySaid(RingList.Call call) {
        Overlay when = new Overlay.TypeIn(
                Words.say("ask.rung_when"),
                Typing.EMPTY,
                new Overlay.Purpose.RingAgain(call.machine().id()));
        return new ChoiceList()
                .carry(Words.say("ask.rung_booked"), said(call, Rung.Said.BOOKED))
                .ask(Words.say("ask.rung_again"), when)
                .carry(Words.say("ask.rung_not_coming"), said(call, Rung.Said.NOT_COMING))
                .titled(Words.say("ask.rung", call.owner().name(), call.owner().phone()));
    }

    private Act said(RingList.Call call, Rung.Said said) {
        return new Act.NoteRung(call.machine().id(), said, Optional.empty(), "", board.who());
    }

    /** The act of a date that was typed; empty where it is none. */
    static Optional<Act> again(Board board, Overlay.Purpose.RingAgain purpose, String text) {
        LocalDate today = board.expectDay().date();
        return RingDate.parse(text, today)
                .map(date ->
                        new Act.NoteRung(purpose.machineId(), Rung.Said.AGAIN, Optional.of(date), "", board.who()));
    }
}
