package org.shedboard.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shedboard.day.Act;
import org.shedboard.day.Trace;
import org.shedboard.hours.ClockEntry;
import org.shedboard.shop.Hold;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;
import org.shedboard.words.Words;

/** What was done at one terminal of the demonstration at 09:40, taken back with the keys. Somebody is on tag 7. */
class TakeBackKeysTest {
    private final FakeShell shell = FakeShell.demonstration();
    private final Visit seven = tag(7);

    private Visit tag(int number) {
        return shell.day().findByTag(number).orElseThrow();
    }

    private String note() {
        return shell.board().note().orElseThrow().sentence();
    }

    private Overlay.Choose question() {
        return (Overlay.Choose) shell.board().overlay().orElseThrow();
    }

    private Task running(Visit visit) {
        return visit.tasks().stream()
                .filter(task -> task.progress().isRunning())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void before_anything_was_done_the_key_says_so() {
        shell.types("z");
        assertEquals(Words.say("off.nothing_done"), note());
        assertTrue(shell.board().overlay().isEmpty());
    }

    @Test
    void the_question_says_what_was_done_and_what_comes_of_taking_it_back() {
        shell.types("7u").types("z");
        assertEquals(
                "09:40  7 (Pellwether): \"%s\" is paused."
                        .replace("Pellwether", shell.day().ownerOf(seven).name())
                        .formatted(running(seven).name()),
                question().about().get(0));
        String person = shell.day().nameOf(running(seven).progress().person().orElseThrow());
        assertTrue(question().about().get(1).startsWith(person + " is on it again"), question()::toString);
        assertTrue(question().about().contains(Words.say("undo.rows_kept")));
    }

    @Test
    void enter_takes_it_back_and_the_second_choice_does_it_again() {
        shell.types("7u");
        Visit paused = tag(7);
        shell.minutesPass(3).types("z").press(Key.ENTER);
        assertEquals(seven, tag(7));
        assertTrue(note().startsWith("Taken back: 7 "), note());
        shell.minutesPass(1).types("z2");
        assertEquals(paused, tag(7));
        assertTrue(note().startsWith("Done again: 7 "), note());
        shell.types("z").press(Key.ENTER);
        assertEquals(seven, tag(7));
    }

    @Test
    void escape_changes_nothing() {
        shell.types("7u");
        Visit paused = tag(7);
        shell.types("z").press(Key.ESCAPE);
        assertEquals(paused, tag(7));
        assertTrue(shell.board().overlay().isEmpty());
    }

    @Test
    void acts_are_taken_back_one_by_one_the_newest_first() {
        shell.types("7u").types("h1").press(Key.ENTER);
        assertTrue(tag(7).hold().isPresent());
        shell.types("z").press(Key.ENTER);
        assertTrue(tag(7).hold().isEmpty());
        shell.types("z").press(Key.ENTER);
        assertEquals(seven, tag(7));
    }

    @Test
    void what_is_done_after_taking_something_back_leaves_nothing_to_do_again() {
        shell.types("7u").types("z").press(Key.ENTER).types("7u").types("z");
        assertEquals(1, question().choices().size());
    }

    @Test
    void what_another_terminal_did_to_the_same_machine_is_not_passed() {
        shell.types("7u");
        shell.does(new Act.HoldVisit(seven.id(), Hold.Reason.PARTS, "", Optional.empty()));
        shell.types("z");
        assertTrue(shell.board().overlay().isEmpty());
        assertTrue(note().contains("7 ") && note().contains("changed since"), note());
    }

    @Test
    void a_question_that_is_answered_too_late_changes_nothing() {
        shell.types("7u").types("z");
        shell.does(new Act.HoldVisit(seven.id(), Hold.Reason.PARTS, "", Optional.empty()));
        Visit held = tag(7);
        shell.press(Key.ENTER);
        assertEquals(held, tag(7));
        assertTrue(note().contains("changed since"), note());
    }

    @Test
    void what_cannot_be_taken_back_is_named_with_its_reason_and_the_act_before_it_is_offered() {
        shell.types("7u");
        String hoist = shell.day().shop().hoists().get(0).id();
        Act check = new Act.CheckHoist(new Act.OpenDay.Checked(hoist, "P1", Optional.empty()));
        shell.tell(new Msg.Saved(check, Optional.empty(), Optional.of(Trace.NOTHING)));
        shell.types("z");
        assertTrue(question().about().get(0).contains(Words.say("lasting.PRESENCE")), question()::toString);
        shell.press(Key.ENTER);
        assertEquals(seven, tag(7));
    }

    @Test
    void a_second_press_in_a_hurry_does_no_harm() {
        shell.types("7u").types("zz").press(Key.ENTER).press(Key.ENTER);
        assertEquals(seven, tag(7));
        List<Act> acts = shell.effects.stream()
                .filter(Effect.CarryOut.class::isInstance)
                .map(effect -> ((Effect.CarryOut) effect).act())
                .filter(Act.TakeBack.class::isInstance)
                .toList();
        assertEquals(1, acts.size());
    }

    @Test
    void the_hours_are_kept_with_their_correction() {
        shell.types("7u");
        int rows = shell.day().entries().size();
        shell.minutesPass(2).types("z").press(Key.ENTER);
        List<ClockEntry> entries = shell.day().entries();
        assertEquals(rows + 1, entries.size());
        ClockEntry last = entries.get(rows);
        assertEquals(Words.say("undo.why"), last.correction().orElseThrow().why());
        assertTrue(last.isOpen());
    }

    @Test
    void while_an_act_is_being_saved_nothing_older_is_offered_instead() {
        Board saving = shell.types("7u").board().saving(1);
        Turn turn =
                Update.of(saving, new Msg.Pressed(Key.of('z'), saving.lastKey().plus(Duration.ofSeconds(1))));
        assertEquals(
                Words.say("off.still_saving"), turn.board().note().orElseThrow().sentence());
    }

    @Test
    void so_many_acts_are_remembered_and_no_more() {
        Doings doings = Doings.NONE;
        for (int i = 0; i < 120; i++) {
            doings = doings.plus(
                    new Doings.Doing(Instant.EPOCH.plusSeconds(i), "act " + i, Trace.NOTHING, Optional.empty()));
        }
        assertEquals(50, doings.done().size());
        assertEquals("act 119", doings.done().get(49).sentence());
    }
}
