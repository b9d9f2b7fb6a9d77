package org.shedboard.board;

import java.time.LocalDate;
import java.util.Optional;
import org.shedboard.day.Act;
import org.shedboard.day.Concern;
import org.shedboard.day.FixOffer;
import org.shedboard.day.Riding;
import org.shedboard.day.RingList;
import org.shedboard.day.Round;
import org.shedboard.register.Rung;
import org.shedboard.shop.Visit;
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
        return new Screen.Ring(Round.of(board.expectOutlook()), list, weeks, 0).to(row);
    }

    Turn perform(Deed deed) {
        return switch (deed) {
            case NOTE_CALL -> Turn.to(board.asking(whatTheySaid()));
            case MORE_WEEKS -> weeks(screen.weeks() + 1);
            case FEWER_WEEKS -> weeks(screen.weeks() - 1);
            default -> throw new IllegalStateException(deed + " is no key of this screen");
        };
    }

    private Turn weeks(int weeks) {
        return Turn.to(board.with(of(board, Math.max(1, Math.min(MOST_WEEKS, weeks)), screen.row())));
    }

    private Overlay whatTheySaid() {
        return screen.chosenToday()
                .map(this::whatTheySaid)
                .orElseGet(() -> whatTheySaid(screen.chosen().orElseThrow()));
    }

    /** What can be noted hangs on why the owner is rung; the sheet has all the rest. */
    private Overlay whatTheySaid(Round.Call call) {
        ChoiceList choices = new ChoiceList();
        call.concerns().forEach(concern -> add(choices, call.visit(), concern.kind()));
        Screen sheet = new Screen.Sheet(call.visit().id(), 0, 0);
        return choices.add(Words.say("round.sheet"), Optional.empty(), new Overlay.Reply.Show(sheet))
                .titled(Words.say("ask.rung", call.owner().name(), call.owner().phone()));
    }

    private void add(ChoiceList choices, Visit visit, Concern.Kind kind) {
        switch (kind) {
            case PROMISE_MISSED, PROMISE_IN_DANGER ->
                choices.ask(Words.say("round.new_time"), new Asks(board.expectOutlook()).whatTime(visit));
            case OWNER_TO_ASK -> choices.carry(Words.say("round.word_given"), new Act.Release(visit.id()));
            case FIX_TO_ASK ->
                FixOffer.toAsk(board.expectDay(), visit)
                        .forEach(point -> choices.add(
                                Words.say("round.wants", point.name()),
                                Optional.empty(),
                                new Overlay.Reply.Offer(visit.id(), point.id())));
            case OWNER_TO_RING -> addFetched(choices, visit);
            default -> {}
        }
    }

    private void addFetched(ChoiceList choices, Visit visit) {
        String label = Words.say("round.fetched");
        if (Riding.isStopped(board.expectDay(), visit)) {
            choices.ask(label, new InspectAsks(board.expectDay()).whoHandsOver(visit));
        } else {
            choices.carry(label, new Act.Collect(visit.id(), Optional.empty()));
        }
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
