package org.shedboard.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.shedboard.day.Act;

/** On the demonstration, where the first machine of the yard has a task that has not begun. */
class HandKeysTest {
    private final Board board = FakeShell.demonstration().board();
    private final Board held = press(board, Key.of(' ')).board();

    @Test
    void space_picks_a_task_up_and_escape_puts_it_back_with_nothing_changed() {
        assertInstanceOf(Screen.InHand.class, held.screen());
        Turn back = press(press(held, Key.RIGHT).board(), Key.ESCAPE);
        assertEquals(board.screen(), back.board().screen());
        assertEquals(List.of(), back.effects());
    }

    @Test
    void a_task_that_was_not_moved_is_not_dropped() {
        Turn turn = press(held, Key.ENTER);
        assertEquals(List.of(), turn.effects());
        assertInstanceOf(Screen.InHand.class, turn.board().screen());
    }

    @Test
    void enter_drops_the_task_where_it_is_seen() {
        Board moved = press(press(held, Key.RIGHT).board(), Key.RIGHT).board();
        Hand hand = handOf(moved);
        Turn turn = press(moved, Key.ENTER);
        Act.PinTask pin =
                new Act.PinTask(hand.visitId(), hand.taskId(), hand.pin().orElseThrow());
        assertEquals(List.of(new Effect.CarryOut(pin)), turn.effects());
        assertEquals(
                board.expectDay().instantOf(hand.lay().start() + 20),
                pin.pin().at().orElseThrow());
    }

    @Test
    void an_arrow_on_the_board_picks_up_and_moves_at_once() {
        assertEquals(
                press(held, Key.RIGHT).board().screen(),
                press(board, Key.RIGHT).board().screen());
    }

    @Test
    void it_cannot_be_held_before_now() {
        Board early = held;
        for (int i = 0; i < 60; i++) {
            early = press(early, Key.LEFT).board();
        }
        Instant start = handOf(early).start(board.expectDay());
        assertFalse(start.isBefore(
                board.expectDay().instantOf(board.expectOutlook().problem().now())));
    }

    @Test
    void space_goes_on_to_another_task_of_the_same_machine() {
        Hand next = handOf(press(held, Key.of(' ')).board());
        assertEquals(handOf(held).visitId(), next.visitId());
        assertTrue(!next.taskId().equals(handOf(held).taskId()), "it is still " + next.taskId());
    }

    @Test
    void the_person_goes_round() {
        Board other = press(held, Key.of('p')).board();
        assertTrue(!handOf(other).person().equals(handOf(held).person()), "it is still the same person");
    }

    private static Hand handOf(Board board) {
        return ((Screen.InHand) board.screen()).hand();
    }

    private static Turn press(Board board, Key key) {
        return Update.of(board, new Msg.Pressed(key, Instant.EPOCH));
    }
}
