package org.shedboard.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shedboard.day.Act;
import org.shedboard.shop.VisitState;
import org.shedboard.words.Words;

/** Acts that have to be signed, made by keys that know nothing of that: Marnie alone has a PIN. */
class SigningFlowsTest {
    private final FakeShell shell = FakeShell.demonstration();

    private void close() {
        shell.minutesPass(415);
        for (String person : List.of("P2", "P3", "P4", "P1")) {
            shell.does(new Act.Stop(person, true));
        }
        shell.does(new Act.CloseDay("P1"));
        assertTrue(shell.day().isClosed());
    }

    private VisitState stateOf(String tag) {
        return shell.day().visits().stream()
                .filter(visit -> visit.tag().isPresent()
                        && String.valueOf(visit.tag().getAsInt()).equals(tag))
                .findFirst()
                .map(visit -> visit.state())
                .orElse(VisitState.GONE);
    }

    @Test
    void a_machine_goes_home_from_a_day_that_runs_without_a_pin() {
        shell.types("5c");
        assertEquals(VisitState.GONE, stateOf("5"));
    }

    @Test
    void from_a_closed_day_it_goes_with_one() {
        close();
        shell.types("5c");
        assertEquals(VisitState.DONE, stateOf("5"));
        assertEquals(0, shell.board().saving());
        Overlay asked = shell.board().overlay().orElseThrow();
        assertEquals(Words.say("ask.pin", "Marnie"), ((Overlay.TypeIn) asked).title());
        shell.types("2468").press(Key.ENTER);
        assertEquals(VisitState.GONE, stateOf("5"));
        assertEquals(Optional.of(new Effect.Signed("P1", "2468")), shell.lastSignature());
    }

    @Test
    void whoever_leaves_the_question_has_done_nothing() {
        close();
        shell.types("5c").press(Key.ESCAPE);
        assertEquals(VisitState.DONE, stateOf("5"));
        assertEquals(Optional.empty(), shell.board().overlay());
        assertEquals(0, shell.board().saving());
    }

    @Test
    void a_machine_taken_in_after_closing_is_signed_for_and_the_form_is_not_lost() {
        close();
        shell.types("ttashenfold hauler")
                .press(Key.ENTER)
                .types("o")
                .press(Key.ENTER)
                .types("0")
                .press(Key.ENTER);
        assertTrue(shell.board().screen() instanceof Screen.TakeIn);
        assertTrue(((Overlay.TypeIn) shell.board().overlay().orElseThrow()).isSecret());
        shell.types("2468").press(Key.ENTER);
        assertTrue(shell.lastAct() instanceof Act.TakeIn);
        assertTrue(shell.board().screen() instanceof Screen.Places);
    }
}
