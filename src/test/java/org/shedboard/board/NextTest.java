package org.shedboard.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shedboard.day.Act;

/** Somebody's next machine: left by itself, and for two at one terminal. */
class NextTest {
    private final FakeShell shell = FakeShell.demonstration().types("n2");

    private void idleFor(Duration time) {
        shell.tell(new Msg.TimeWent(shell.board().lastKey().plus(time)));
    }

    private Screen.Next next() {
        return (Screen.Next) shell.board().screen();
    }

    @Test
    void it_stays_for_a_minute_and_comes_back_to_the_board_by_itself() {
        idleFor(Duration.ofSeconds(59));
        assertTrue(shell.board().screen() instanceof Screen.Next);
        idleFor(Duration.ofSeconds(60));
        assertTrue(shell.board().screen() instanceof Screen.Places);
        assertTrue(shell.board().behind().isEmpty());
    }

    @Test
    void the_board_it_comes_back_to_has_the_same_machine_selected() {
        FakeShell other = FakeShell.demonstration().types("12n2");
        other.tell(new Msg.TimeWent(other.board().lastKey().plusSeconds(60)));
        assertEquals(
                Optional.of(other.visitOf("M6").id()),
                ((Screen.Places) other.board().screen()).selected());
    }

    @Test
    void something_half_typed_keeps_it_open() {
        shell.types("81").types("n");
        assertTrue(shell.board().overlay().orElseThrow() instanceof Overlay.TypeIn);
        idleFor(Duration.ofHours(1));
        assertTrue(shell.board().screen() instanceof Screen.Next);
    }

    @Test
    void a_question_that_nobody_answers_goes_with_it() {
        shell.types("9");
        idleFor(Duration.ofMinutes(2));
        assertTrue(shell.board().screen() instanceof Screen.Places);
        assertTrue(shell.board().overlay().isEmpty());
    }

    @Test
    void no_other_screen_is_left_by_itself() {
        FakeShell sheet = FakeShell.demonstration().press(Key.ENTER);
        sheet.tell(new Msg.TimeWent(sheet.board().lastKey().plus(Duration.ofDays(1))));
        assertTrue(sheet.board().screen() instanceof Screen.Sheet);
    }

    @Test
    void a_second_person_comes_beside_the_first_and_has_the_keys() {
        String first = next().personId();
        shell.types("/1");
        assertEquals(first, next().beside().orElseThrow().personId());
        assertFalse(first.equals(next().personId()));
        assertTrue(next().isSecond());
    }

    @Test
    void nobody_can_stand_beside_themselves() {
        String first = next().personId();
        shell.types("/");
        Overlay.Choose ask = (Overlay.Choose) shell.board().overlay().orElseThrow();
        assertEquals(shell.day().shop().people().size() - 1, ask.choices().size());
        shell.types("1.");
        assertFalse(((Overlay.Choose) shell.board().overlay().orElseThrow())
                .choices().stream()
                        .anyMatch(choice -> choice.reply() instanceof Overlay.Reply.Show show
                                && ((Screen.Next) show.screen()).personId().equals(first)));
    }

    @Test
    void one_key_gives_the_keys_to_the_other_and_back() {
        shell.types("/1");
        Screen.Next before = next();
        shell.types("/");
        assertEquals(before.personId(), next().beside().orElseThrow().personId());
        assertFalse(next().isSecond());
        shell.types("/");
        assertEquals(before, next());
    }

    @Test
    void enter_leaves_the_one_who_has_the_keys_alone() {
        shell.types("/1");
        String person = next().personId();
        shell.press(Key.ENTER);
        assertEquals(new Screen.Next(person, Optional.empty()), next());
    }

    @Test
    void a_finding_of_the_one_moves_on_only_their_point() {
        Screen.Next wren = new Screen.Next("P3", Optional.of("boots")).marked();
        Screen.Next both = wren.joinedBy("P2").again("plug").marked();
        Screen.Next after = both.onward("P3");
        assertEquals(Optional.of("plug"), after.pointBack());
        assertEquals(Optional.empty(), after.beside().orElseThrow().pointBack());
    }

    @Test
    void nobody_lends_a_hand_where_no_machine_is_here() {
        FakeShell empty = FakeShell.unopened().types("n1+");
        assertTrue(empty.board().overlay().isEmpty());
        empty.assertRefused("No machine is here.");
    }

    @Test
    void in_the_crew_nobody_lends_a_hand_either_where_no_machine_is_here() {
        FakeShell empty = FakeShell.unopened();
        Instant now = empty.now();
        empty.does(new Act.OpenDay("P1", List.of(new Act.OpenDay.Here("P1", now, now.plusSeconds(3600))), List.of()));
        empty.types("w").press(Key.ENTER);
        Overlay.Choose asked = (Overlay.Choose) empty.board().overlay().orElseThrow();
        assertEquals(Optional.of("No machine is here."), asked.choices().get(3).off());
    }
}
