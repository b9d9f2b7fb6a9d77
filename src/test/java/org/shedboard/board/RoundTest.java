package org.shedboard.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shedboard.day.Act;
import org.shedboard.day.Round;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;

/** The round of calls on the demonstration day at 09:40: 7 was found unsafe, 9 is in danger, 5 is done. */
class RoundTest {
    private final FakeShell shell = FakeShell.demonstration().types("d");

    private Screen.Ring ring() {
        return (Screen.Ring) shell.board().screen();
    }

    private List<Integer> tags() {
        return ring().round().calls().stream()
                .map(call -> call.visit().tag().orElseThrow())
                .toList();
    }

    private Round.Call callOf(int tag) {
        return ring().round().calls().stream()
                .filter(call -> call.visit().tag().orElseThrow() == tag)
                .findFirst()
                .orElseThrow();
    }

    private FakeShell on(int tag) {
        for (int i = 0; i < tags().indexOf(tag); i++) {
            shell.press(Key.DOWN);
        }
        return shell;
    }

    @Test
    void who_has_to_hear_something_today_stands_before_the_services_that_are_due() {
        assertEquals(List.of(9, 7, 5), tags());
        assertEquals(callOf(9), ring().chosenToday().orElseThrow());
        shell.press(Key.DOWN, Key.DOWN, Key.DOWN);
        assertTrue(ring().chosenToday().isEmpty());
        assertEquals(ring().list().calls().get(0), ring().chosen().orElseThrow());
    }

    @Test
    void each_is_rung_for_a_reason() {
        assertEquals(Round.Why.IN_DANGER, callOf(9).why());
        assertEquals(Round.Why.FOUND, callOf(7).why());
        assertEquals(Round.Why.DONE, callOf(5).why());
    }

    @Test
    void what_to_say_is_a_sentence_without_gaps() {
        assertEquals("It is done and can be fetched.", RoundWords.toSay(callOf(5)));
        for (Round.Call call : ring().round().calls()) {
            assertFalse(RoundWords.toSay(call).contains("{"), RoundWords.toSay(call));
        }
    }

    @Test
    void one_machine_with_two_reasons_is_one_call() {
        Visit visit = callOf(7).visit();
        shell.minutesPass(5 * 60);
        assertEquals(1, tags().stream().filter(tag -> tag == 7).count());
        assertEquals(Round.Why.LATE, callOf(7).why());
        assertEquals("late, found", RoundWords.why(callOf(7)));
        assertEquals(visit.id(), callOf(7).visit().id());
    }

    @Test
    void a_new_time_that_was_told_is_noted_from_the_round() {
        on(9).press(Key.ENTER).types("1").press(Key.control('u')).types("16:25").press(Key.ENTER);
        shell.types("parts came late").press(Key.ENTER).types("1");
        shell.assertDone();
        assertTrue(shell.lastAct() instanceof Act.SayPromise);
        assertTrue(shell.board().screen() instanceof Screen.Ring);
    }

    @Test
    void what_was_said_last_is_told() {
        List<String> said = RoundWords.said(shell.day(), callOf(9).visit());
        assertEquals(1, said.size());
        assertTrue(said.get(0).contains("ready 12:15"), said.get(0));
    }

    @Test
    void what_was_fetched_is_noted_and_leaves_the_round() {
        Visit visit = callOf(5).visit();
        on(5).press(Key.ENTER).types("1").assertDone();
        assertEquals(VisitState.GONE, shell.visitOf(visit.machineId()).state());
        assertFalse(tags().contains(5));
    }

    @Test
    void the_sheet_has_all_the_rest_and_leads_back_to_the_round() {
        on(7).press(Key.ENTER, Key.UP, Key.ENTER);
        assertEquals(callOfSheet(), ((Screen.Sheet) shell.board().screen()).visitId());
        shell.press(Key.ESCAPE);
        assertTrue(shell.board().screen() instanceof Screen.Ring);
    }

    private String callOfSheet() {
        return shell.day().findByTag(7).orElseThrow().id();
    }
}
