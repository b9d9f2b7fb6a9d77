package org.shedboard.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shedboard.day.Act;
import org.shedboard.day.Day;
import org.shedboard.day.Refusal;
import org.shedboard.day.WhatIf;
import org.shedboard.shop.Person;
import org.shedboard.shop.Place;
import org.shedboard.words.Words;

/** A change is tried with the keys, on the demonstration day at 09:40. */
class TrialKeysTest {
    private final FakeShell shell = FakeShell.demonstration();
    private final Day before = shell.day();
    private final Place hoist = before.shop().hoists().get(0);

    private Screen.Trial trial() {
        return (Screen.Trial) shell.board().screen();
    }

    private List<Act> acts() {
        return trial().whatIf().acts();
    }

    private void hoistOut() {
        shell.types("=k10hose").press(Key.ENTER);
    }

    private boolean isReached() {
        return shell.effects.stream()
                .anyMatch(effect -> effect instanceof Effect.CarryOut || effect instanceof Effect.Keep);
    }

    private boolean isOut() {
        return !shell.day().opening().orElseThrow().isChecked(hoist.id());
    }

    @Test
    void nothing_reaches_the_records_before_it_is_kept() {
        hoistOut();
        assertEquals(1, acts().size());
        assertFalse(trial().comparison().orElseThrow().rows().isEmpty());
        assertFalse(isReached());
        assertEquals(before, shell.day());
        assertEquals(0, shell.board().saving());
    }

    @Test
    void what_is_dropped_leaves_everything_as_it_was() {
        hoistOut();
        shell.press(Key.ESCAPE);
        assertTrue(shell.board().screen() instanceof Screen.Places);
        assertFalse(isReached());
        assertEquals(before, shell.day());
    }

    @Test
    void what_is_kept_is_the_day_that_was_shown() {
        hoistOut();
        var shown = trial().expectTried().outlook();
        shell.press(Key.ENTER);
        assertTrue(isOut());
        assertEquals(shown.plan(), shell.board().expectOutlook().plan());
        assertTrue(shell.board().screen() instanceof Screen.Places);
        assertEquals(Words.say("trial.kept", 1), shell.note());
        shell.assertDone();
    }

    @Test
    void a_second_enter_in_a_hurry_keeps_nothing_twice() {
        hoistOut();
        Board asked = Update.of(shell.board(), new Msg.Pressed(Key.ENTER, java.time.Instant.MAX))
                .board();
        Turn again = Update.of(asked, new Msg.Pressed(Key.ENTER, java.time.Instant.MAX));
        assertEquals(List.of(), again.effects());
    }

    @Test
    void somebody_sick_from_eleven_is_tried_with_the_questions_of_the_board() {
        Person second = before.shop().people().get(1);
        shell.types("=w21");
        for (int letter = 0; letter < 8; letter++) {
            shell.press(Key.BACKSPACE);
        }
        shell.types("11:00").press(Key.ENTER);
        assertEquals(List.of(new Act.BeHere(second.id(), before.instantOf(11 * 60))), acts());
    }

    @Test
    void a_walk_in_is_tried_with_the_form_and_not_taken_in() {
        shell.types("=ttashenfold hauler")
                .press(Key.ENTER)
                .types("o")
                .press(Key.ENTER)
                .types("0");
        assertTrue(shell.board().screen() instanceof Screen.TakeIn);
        shell.press(Key.ENTER);
        assertTrue(acts().get(0) instanceof Act.TakeIn);
        assertEquals(before.visits(), shell.day().visits());
        shell.press(Key.ENTER);
        assertEquals(before.visits().size() + 1, shell.day().visits().size());
    }

    @Test
    void what_was_kept_can_be_taken_back() {
        shell.types("=ttashenfold hauler")
                .press(Key.ENTER)
                .types("o")
                .press(Key.ENTER)
                .types("0");
        shell.press(Key.ENTER).press(Key.ENTER);
        assertEquals(open(before) + 1, open(shell.day()));
        shell.types("z").press(Key.ENTER);
        assertEquals(open(before), open(shell.day()));
    }

    private static long open(Day day) {
        return day.visits().stream().filter(visit -> visit.state().isOpen()).count();
    }

    @Test
    void a_promise_and_a_wash_down_are_tried() {
        shell.types("=d1");
        assertTrue(acts().get(0) instanceof Act.SetWashDown);
        shell.types("p1");
        assertTrue(shell.board().overlay().orElseThrow() instanceof Overlay.TypeIn);
    }

    @Test
    void what_was_added_last_is_taken_back() {
        hoistOut();
        shell.types("d1").press(Key.BACKSPACE);
        assertEquals(1, acts().size());
        shell.press(Key.BACKSPACE);
        assertEquals(List.of(), acts());
        shell.press(Key.ENTER);
        shell.assertRefused(Words.say("off.nothing_to_keep"));
        assertFalse(isReached());
    }

    @Test
    void what_cannot_be_is_said_and_the_rest_stays_tried() {
        hoistOut();
        Act over = new Act.BeHere("P1", shell.now().minusSeconds(60));
        WhatIf both = trial().whatIf().plus(over);
        Board asked = shell.board().with(new Screen.Trial(both, Optional.empty(), 0));
        Turn turn = Update.of(asked, new Msg.Tried(both, both.on(shell.board().expectOutlook())));
        assertEquals(1, ((Screen.Trial) turn.board().screen()).whatIf().acts().size());
        assertTrue(turn.board().note().orElseThrow().isRefusal());
    }

    @Test
    void what_cannot_be_kept_any_more_is_said_and_stays_on_the_screen() {
        hoistOut();
        Turn turn = Update.of(
                shell.board().saving(1), new Msg.NotKept(trial().whatIf(), new Refusal("plan_is_stale", List.of())));
        assertTrue(turn.board().screen() instanceof Screen.Trial);
        assertTrue(turn.board().note().orElseThrow().isRefusal());
        assertEquals(0, turn.board().saving());
    }

    @Test
    void a_day_that_moves_on_is_tried_on_anew() {
        hoistOut();
        shell.minutesPass(10);
        assertEquals(shell.now(), trial().expectTried().outlook().at());
        assertEquals(1, acts().size());
    }

    @Test
    void it_is_off_before_the_day_is_opened() {
        FakeShell unopened = FakeShell.unopened().types("=");
        unopened.assertRefused(Words.say("off.day_not_open"));
    }

    @Test
    void where_no_machine_is_there_is_none_to_try_anything_with() {
        FakeShell empty = FakeShell.unopened();
        empty.does(new Act.OpenDay(
                "P1",
                List.of(new Act.OpenDay.Here("P1", empty.now(), empty.now().plusSeconds(3600))),
                List.of()));
        empty.types("=p");
        empty.assertRefused(Words.say("off.nothing_open"));
        empty.types("d");
        empty.assertRefused(Words.say("off.all_begun"));
        assertTrue(empty.board().overlay().isEmpty());
    }
}
