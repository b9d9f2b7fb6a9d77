package org.shedboard.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shedboard.day.Act;
import org.shedboard.day.Outlook;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;
import org.shedboard.words.Words;

/** The keys that move a task by hand: picked up on the bay board, moved with the arrows, dropped or put back. */
final class HandKeys {
    /** A key goes about this part of what the axis shows, but never by less than five minutes. */
    private static final int STEPS_SHOWN = 48;

    private static final int LEAST_STEP = 5;

    private final Board board;
    private final Outlook outlook;

    HandKeys(Board board) {
        this.board = board;
        this.outlook = board.expectOutlook();
    }

    /** On the bay board. */
    static List<Binding> pickUp(Board board) {
        boolean isRunning = board.expectDay().isOpened() && !board.expectDay().isClosed();
        boolean can = isRunning
                && Subject.of(board)
                        .flatMap(subject -> Hand.pickUpFirst(subject.outlook(), subject.visit()))
                        .isPresent();
        return List.of(
                Binding.when(can, ' ', Deed.PICK_UP, "off.nothing_to_move"),
                Binding.when(can, Key.LEFT, Deed.MOVE_EARLIER, "off.nothing_to_move"),
                Binding.when(can, Key.RIGHT, Deed.MOVE_LATER, "off.nothing_to_move"));
    }

    /** With a task in hand. */
    static List<Binding> inHand(Board board, Screen.InHand screen) {
        Hand hand = screen.hand();
        Outlook outlook = board.expectOutlook();
        boolean canMove = hand.canMoveTo(outlook);
        List<Binding> keys = new ArrayList<>();
        keys.add(Binding.when(hand.canDrop(), Key.ENTER, Deed.DROP, whyNot(hand)));
        keys.add(Binding.on(Key.ESCAPE, Deed.PUT_BACK));
        keys.add(Binding.on(Key.LEFT, Deed.MOVE_EARLIER));
        keys.add(Binding.on(Key.RIGHT, Deed.MOVE_LATER));
        keys.add(Binding.when(canMove, Key.UP, Deed.PLACE_ABOVE, "off.place_fixed"));
        keys.add(Binding.when(canMove, Key.DOWN, Deed.PLACE_BELOW, "off.place_fixed"));
        keys.add(Binding.when(hand.person().isPresent(), 'p', Deed.NEXT_PERSON, "off.needs_nobody"));
        keys.add(Binding.on(' ', Deed.NEXT_TASK));
        keys.add(Binding.when(task(outlook, hand).pin().isPresent(), 'l', Deed.LIFT, "off.not_pinned"));
        keys.add(Binding.on('?', Deed.HELP));
        return keys;
    }

    private static String whyNot(Hand hand) {
        return hand.tried().isPresent() ? "off.drop_refused" : "off.not_moved";
    }

    private static Task task(Outlook outlook, Hand hand) {
        return outlook.day().expectVisit(hand.visitId()).findTask(hand.taskId()).orElseThrow();
    }

    Turn perform(Deed deed) {
        return board.screen() instanceof Screen.InHand screen ? onHand(deed, screen.hand()) : pickUp(deed);
    }

    private Turn pickUp(Deed deed) {
        Visit visit = Subject.of(board).orElseThrow().visit();
        Hand hand = Hand.pickUpFirst(outlook, visit).orElseThrow();
        return Turn.to(board.on(new Screen.InHand(deed == Deed.PICK_UP ? hand : moved(deed, hand))));
    }

    private Turn onHand(Deed deed, Hand hand) {
        return switch (deed) {
            case DROP -> carry(hand.act());
            case LIFT -> carry(new Act.LiftPin(hand.visitId(), hand.taskId()));
            case PUT_BACK -> Turn.to(board.back());
            case NEXT_TASK -> to(hand.next(outlook));
            default -> to(moved(deed, hand));
        };
    }

    private Turn to(Hand next) {
        return Turn.to(board.with(new Screen.InHand(next)));
    }

    private Hand moved(Deed deed, Hand hand) {
        return switch (deed) {
            case MOVE_EARLIER -> hand.later(outlook, -step());
            case MOVE_LATER -> hand.later(outlook, step());
            case PLACE_ABOVE -> hand.inPlace(outlook, -1);
            case PLACE_BELOW -> hand.inPlace(outlook, 1);
            case NEXT_PERSON -> hand.byNext(outlook);
            default -> throw new IllegalStateException(deed + " moves nothing");
        };
    }

    private int step() {
        int part = board.sight().zoom().minutes() / STEPS_SHOWN;
        return Math.max(LEAST_STEP, part / LEAST_STEP * LEAST_STEP);
    }

    private Turn carry(Act act) {
        return Turn.to(board.back().saving(1), new Effect.CarryOut(act));
    }

    /** A task in hand on a day that was read again; the bay board where it has begun meanwhile. */
    static Board again(Board board, Screen.InHand screen) {
        Optional<Hand> hand = screen.hand().on(board.expectOutlook());
        return hand.map(held -> board.with(new Screen.InHand(held)))
                .orElseGet(() -> board.back().noting(Note.refused(Words.say("hand.gone"))));
    }
}
