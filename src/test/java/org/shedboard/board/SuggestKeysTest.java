package org.shedboard.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shedboard.day.Act;
import org.shedboard.estimate.Figure;
import org.shedboard.forecast.Suggestion;
import org.shedboard.learn.Doubt;
import org.shedboard.shop.Mud;

/** Accepting figures with the keys, on the demonstration day. */
class SuggestKeysTest {
    private static final Doubt EVIDENCE = new Doubt("wash:quad:caked", 12, 1.5, 1.5, 1.2, 1.9);

    private final FakeShell shell = FakeShell.demonstration();

    private static Suggestion caked() {
        return new Suggestion(new Figure.Wash("quad", Mud.CAKED), 20, 30, EVIDENCE);
    }

    private static Suggestion muddy() {
        return new Suggestion(new Figure.Wash("quad", Mud.MUDDY), 12, 16, EVIDENCE);
    }

    private Turn pressed(Board board, Key... keys) {
        Turn turn = Turn.to(board);
        for (Key key : keys) {
            turn = Update.of(turn.board(), new Msg.Pressed(key, shell.now()));
        }
        return turn;
    }

    private Board listing(Suggestion... suggestions) {
        return shell.board().on(new Screen.Suggested(List.of(suggestions), 0));
    }

    @Test
    void the_scorecard_leads_to_the_figures_and_escape_leads_back() {
        shell.types("js");
        assertTrue(shell.board().screen() instanceof Screen.Suggested);
        shell.press(Key.ESCAPE);
        assertTrue(shell.board().screen() instanceof Screen.ScorecardPage);
    }

    @Test
    void enter_asks_first_and_the_marked_answer_leaves_the_figure() {
        Turn asked = pressed(listing(caked(), muddy()), Key.ENTER);
        assertTrue(asked.effects().isEmpty());
        assertTrue(asked.board().overlay().isPresent());
        Turn left = pressed(asked.board(), Key.ENTER);
        assertTrue(left.effects().isEmpty());
        assertEquals(Optional.empty(), left.board().overlay());
        assertTrue(left.board().screen() instanceof Screen.Suggested);
    }

    @Test
    void yes_accepts_the_chosen_one_with_a_pin() {
        Turn asked = pressed(listing(caked(), muddy()), Key.DOWN, Key.ENTER, Key.of('1'));
        assertEquals(List.of(), asked.effects());
        Turn accepted = pressed(asked.board(), Key.of('2'), Key.of('4'), Key.of('6'), Key.of('8'), Key.ENTER);
        String who = shell.board().who();
        Act act = new Act.AcceptFigure("wash:quad:muddy", 12, 16, who);
        Optional<Effect.Signed> signed = Optional.of(new Effect.Signed(who, "2468"));
        assertEquals(List.of(new Effect.CarryOut(act, Optional.empty(), signed)), accepted.effects());
    }

    @Test
    void the_arrows_stay_on_the_list() {
        Board board =
                pressed(listing(caked(), muddy()), Key.DOWN, Key.DOWN, Key.DOWN).board();
        assertEquals(Optional.of(muddy()), ((Screen.Suggested) board.screen()).chosen());
        Board top = pressed(board, Key.UP, Key.UP, Key.UP).board();
        assertEquals(Optional.of(caked()), ((Screen.Suggested) top.screen()).chosen());
        Board none = pressed(listing(), Key.DOWN, Key.UP).board();
        assertEquals(Optional.empty(), ((Screen.Suggested) none.screen()).chosen());
    }

    @Test
    void on_an_empty_list_enter_says_why_it_does_nothing() {
        Turn turn = pressed(listing(), Key.ENTER);
        assertTrue(turn.effects().isEmpty());
        assertEquals(
                "There is no figure to accept.",
                turn.board().note().orElseThrow().sentence());
    }
}
