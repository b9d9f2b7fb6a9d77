package org.shedboard.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shedboard.day.Act;
import org.shedboard.day.Day;
import org.shedboard.day.Refusal;
import org.shedboard.shop.Hold;
import org.shedboard.words.Words;

/** What a board does when another terminal was first. */
class TwoTerminalsTest {
    private final FakeShell shell = FakeShell.demonstration();

    private Act promise(int hours) {
        String visit = shell.day().findByTag(7).orElseThrow().id();
        return new Act.SayPromise(visit, shell.now().plus(Duration.ofHours(hours)), "P1", "Quillgate", "parts", false);
    }

    private Earlier earlier(String act, Optional<String> machine) {
        String visit = shell.day().findByTag(7).orElseThrow().id();
        return new Earlier("P2", shell.now(), act, Optional.of(visit), machine);
    }

    private void overtaken(Act act) {
        shell.tell(new Msg.NotDone(
                act,
                Optional.empty(),
                new Refusal("overtaken", List.of()),
                Optional.of(earlier("SayPromise", Optional.of("washpad"))),
                true));
    }

    private Overlay.TypeIn typing() {
        return assertInstanceOf(Overlay.TypeIn.class, shell.board().overlay().orElseThrow());
    }

    @Test
    void who_was_first_and_with_what_is_told_and_one_key_does_it_all_the_same() {
        Act mine = promise(6);
        overtaken(mine);
        Overlay.Choose asked =
                assertInstanceOf(Overlay.Choose.class, shell.board().overlay().orElseThrow());
        assertEquals(
                "This was changed at another terminal meanwhile; yours is not saved. "
                        + "Tobin was first, at 09:40 from washpad: another time was promised for 7 (Quillgate, Nettle Flat).",
                asked.about().get(0));
        shell.types("1");
        assertEquals(new Effect.CarryOut(mine), shell.effects.get(shell.effects.size() - 1));
        assertEquals(
                Optional.of(((Act.SayPromise) mine).at()),
                shell.day().findByTag(7).orElseThrow().promise().map(promise -> promise.at()));
    }

    @Test
    void escape_leaves_theirs() {
        int before = shell.effects.size();
        overtaken(promise(6));
        shell.press(Key.ESCAPE);
        assertTrue(shell.board().overlay().isEmpty());
        assertEquals(before, shell.effects.size());
    }

    @Test
    void a_question_is_decided_upon_the_day_as_it_was_when_it_was_asked() {
        shell.types("7p");
        Day asked = shell.day();
        shell.does(promise(5));
        assertFalse(asked.equals(shell.day()));
        assertEquals(asked, shell.board().decidingOn().orElseThrow().day());
        shell.press(Key.ESCAPE);
        assertEquals(shell.day(), shell.board().decidingOn().orElseThrow().day());
    }

    @Test
    void a_note_that_was_typed_for_what_cannot_be_any_more_stays_to_be_read() {
        shell.types("7");
        shell.press(Key.of('h')).types("1the left boot");
        Overlay.TypeIn typed = typing();
        String visit = shell.day().findByTag(7).orElseThrow().id();
        shell.does(new Act.HoldVisit(visit, Hold.Reason.PARTS, "boot", Optional.empty()));
        shell.press(Key.ENTER);
        assertEquals(typed, typing());
        shell.assertRefused(Words.say("nothing_to_hold", "7 (Quillgate, Nettle Flat)"));
    }

    @Test
    void what_was_typed_before_the_last_choice_is_asked_again_too() {
        shell.types("7p");
        for (int i = 0; i < 20; i++) {
            shell.press(Key.BACKSPACE);
        }
        shell.types("1530").press(Key.ENTER).types("belt not in").press(Key.ENTER);
        assertInstanceOf(Overlay.Choose.class, shell.board().overlay().orElseThrow());
        shell.press(Key.ENTER);
        Act sent = ((Effect.CarryOut) shell.effects.get(shell.effects.size() - 1)).act();
        shell.tell(new Msg.NotDone(sent, new Refusal("day_already_closed", List.of("12 May"))));
        assertEquals("belt not in", typing().typing().text());
    }

    @Test
    void nothing_is_asked_again_that_was_left_by_escape() {
        shell.types("7h1the left boot").press(Key.ESCAPE);
        shell.tell(new Msg.NotDone(promise(5), new Refusal("not_held", List.of("7"))));
        assertTrue(shell.board().overlay().isEmpty());
    }

    @Test
    void a_pin_is_never_kept() {
        shell.types("lr")
                .press(Key.DOWN, Key.DOWN)
                .types("xnever was")
                .press(Key.ENTER)
                .types("2");
        assertTrue(typing().isSecret());
        shell.types("9999").press(Key.ENTER);
        Optional<Deciding.Typed> kept = shell.board().atHand().deciding().typed();
        assertTrue(kept.filter(typed -> typed.answer().isSecret()).isEmpty(), kept::toString);
    }

    @Test
    void a_refusal_tells_who_was_first_behind_its_own_sentence() {
        shell.tell(new Msg.NotDone(
                new Act.Release("V1"),
                Optional.empty(),
                new Refusal("not_held", List.of("7 (Quillgate, Nettle Flat)")),
                Optional.of(earlier("Release", Optional.empty())),
                false));
        shell.assertRefused("7 (Quillgate, Nettle Flat) is not held. "
                + "Tobin was first, at 09:40: 7 (Quillgate, Nettle Flat) was let go on.");
    }

    @Test
    void an_act_without_words_of_its_own_is_something() {
        assertTrue(earlier("the catalogue is loaded", Optional.empty())
                .sentence(shell.day())
                .contains("something was changed"));
    }
}
