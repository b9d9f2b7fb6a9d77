package org.shedboard.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;

/** The yard, listed, ordered and found, on the demonstration day at 09:40. */
class YardKeysTest {
    private final FakeShell shell = FakeShell.demonstration().press(Key.TAB);

    private Screen.YardPage yard() {
        return (Screen.YardPage) shell.board().screen();
    }

    private List<Visit> listed() {
        return YardKeys.listed(shell.board().expectOutlook(), yard());
    }

    private Visit chosen() {
        return YardKeys.chosen(shell.board().expectOutlook(), yard()).orElseThrow();
    }

    @Test
    void tab_goes_from_the_board_to_the_yard_to_the_crew_and_to_the_board() {
        assertTrue(shell.board().screen() instanceof Screen.YardPage);
        shell.press(Key.TAB);
        assertTrue(shell.board().screen() instanceof Screen.Crew);
        shell.press(Key.TAB);
        assertTrue(shell.board().screen() instanceof Screen.Places);
    }

    @Test
    void back_tab_goes_the_other_way_round() {
        shell.press(Key.BACK_TAB);
        assertTrue(shell.board().screen() instanceof Screen.Places);
        shell.press(Key.BACK_TAB, Key.BACK_TAB);
        assertTrue(shell.board().screen() instanceof Screen.YardPage);
        shell.press(Key.BACK_TAB);
        assertTrue(shell.board().screen() instanceof Screen.Places);
    }

    @Test
    void escape_leads_back_to_the_board_however_often_one_went_round() {
        shell.press(Key.TAB, Key.BACK_TAB, Key.TAB, Key.ESCAPE);
        assertTrue(shell.board().screen() instanceof Screen.Places);
        assertTrue(shell.board().behind().isEmpty());
    }

    @Test
    void the_machine_that_was_chosen_on_the_board_is_chosen_in_the_yard() {
        FakeShell other = FakeShell.demonstration().types("12").press(Key.TAB);
        assertEquals(
                Optional.of(other.visitOf("M6").id()),
                ((Screen.YardPage) other.board().screen()).selected());
    }

    @Test
    void every_machine_that_is_here_or_due_is_listed_in_planned_order() {
        assertEquals(Yard.of(shell.board().expectOutlook()), listed());
        assertFalse(listed().isEmpty());
    }

    @Test
    void what_is_typed_leaves_those_that_have_all_the_words() {
        shell.types("/yard mudd");
        assertFalse(listed().isEmpty());
        assertTrue(listed().stream()
                .allMatch(visit ->
                        visit.state() == VisitState.IN_YARD && visit.intake().mud() == Mud.MUDDY));
        assertTrue(listed().size() < Yard.of(shell.board().expectOutlook()).size());
    }

    @Test
    void digits_belong_to_the_filter_while_it_is_typed() {
        shell.types("/12");
        assertEquals(
                List.of(12),
                listed().stream().map(visit -> visit.tag().orElseThrow()).toList());
        assertEquals("12", yard().filter().text());
    }

    @Test
    void enter_keeps_what_was_typed_and_enter_again_opens_the_sheet() {
        shell.types("/12").press(Key.ENTER);
        assertFalse(yard().isTyping());
        shell.press(Key.ENTER);
        assertEquals(shell.visitOf("M6").id(), ((Screen.Sheet) shell.board().screen()).visitId());
    }

    @Test
    void escape_shows_everything_again_before_it_leaves() {
        shell.types("/12").press(Key.ENTER, Key.ESCAPE);
        assertTrue(yard().filter().isBlank());
        shell.press(Key.ESCAPE);
        assertTrue(shell.board().screen() instanceof Screen.Places);
    }

    @Test
    void letters_that_mean_something_elsewhere_are_only_typed_in_the_filter() {
        int before = shell.effects.size();
        shell.types("/so");
        assertEquals("so", yard().filter().text());
        assertEquals(YardOrder.PLAN, yard().order());
        assertEquals(before, shell.effects.size());
    }

    @Test
    void each_press_of_o_takes_the_next_order_and_the_last_leads_to_the_first() {
        for (YardOrder order : YardOrder.values()) {
            assertEquals(order, yard().order());
            shell.types("o");
        }
        assertEquals(YardOrder.PLAN, yard().order());
    }

    @Test
    void the_dirtiest_come_first_where_that_is_the_order() {
        shell.types("ooo");
        List<Mud> mud = listed().stream().map(visit -> visit.intake().mud()).toList();
        assertEquals(mud.stream().sorted(Comparator.reverseOrder()).toList(), mud);
        assertTrue(mud.get(0).compareTo(mud.get(mud.size() - 1)) > 0);
    }

    @Test
    void what_has_no_promise_stands_behind_all_promises() {
        shell.types("o");
        List<Boolean> promised =
                listed().stream().map(visit -> visit.promise().isPresent()).toList();
        assertTrue(promised.contains(false) && promised.get(0));
        assertFalse(promised.subList(promised.indexOf(false), promised.size()).contains(true));
    }

    @Test
    void the_chosen_machine_stays_chosen_in_another_order() {
        shell.press(Key.DOWN, Key.DOWN);
        Visit before = chosen();
        shell.types("oooo");
        assertEquals(before, chosen());
    }

    @Test
    void keys_about_a_visit_work_on_the_chosen_machine() {
        shell.types("/12").press(Key.ENTER).types("h1").press(Key.ENTER);
        assertEquals(VisitState.HELD, shell.visitOf("M6").state());
    }
}
