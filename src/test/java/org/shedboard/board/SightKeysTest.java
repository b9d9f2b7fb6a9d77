package org.shedboard.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.shedboard.words.Words;

/** The time axis and the crew with the keys, on the demonstration day at 09:40. */
class SightKeysTest {
    private final FakeShell shell = FakeShell.demonstration();

    private Sight sight() {
        return shell.board().sight();
    }

    private int from() {
        return sight().from(Sight.Extent.of(shell.board().expectOutlook()));
    }

    private String note() {
        return shell.board().note().orElseThrow().sentence();
    }

    @Test
    void later_and_earlier_go_two_hours_with_shift_or_without() {
        assertEquals(9 * 60, from());
        assertEquals(11 * 60, from(">"));
        assertEquals(13 * 60, from("."));
        assertEquals(11 * 60, from("<"));
        assertEquals(9 * 60, from(","));
        assertTrue(sight().isFollowing());
    }

    private int from(String key) {
        shell.types(key);
        return from();
    }

    @Test
    void plus_and_minus_show_fewer_and_more_hours_and_say_where_it_ends() {
        shell.types("++");
        assertEquals(Zoom.TWO_HOURS, sight().zoom());
        shell.types("+");
        assertEquals(Zoom.TWO_HOURS, sight().zoom());
        assertEquals(Words.say("off.sight_closest"), note());
        shell.types("------");
        assertEquals(Zoom.FIVE_DAYS, sight().zoom());
        assertEquals(Words.say("off.sight_widest"), note());
    }

    @Test
    void home_leads_back_to_now_and_keeps_how_much_is_shown() {
        shell.types("+>>").press(Key.HOME);
        assertTrue(sight().isFollowing());
        assertEquals(Zoom.FOUR_HOURS, sight().zoom());
        shell.press(Key.HOME);
        assertEquals(Words.say("off.sight_follows"), note());
    }

    @Test
    void what_is_shown_stays_when_one_looks_at_a_sheet_and_comes_back() {
        shell.types("+>").press(Key.ENTER, Key.ESCAPE);
        assertEquals(Zoom.FOUR_HOURS, sight().zoom());
        assertFalse(sight().isFollowing());
    }

    @Test
    void back_tab_goes_to_the_crew_and_tab_back_on_the_same_axis() {
        shell.types("-").press(Key.BACK_TAB);
        assertTrue(shell.board().screen() instanceof Screen.Crew);
        shell.types("-").press(Key.TAB);
        assertTrue(shell.board().screen() instanceof Screen.Places);
        assertEquals(Zoom.TWO_DAYS, sight().zoom());
    }

    @Test
    void n_on_the_crew_shows_the_chosen_persons_next_machine() {
        String second = shell.day().shop().people().get(1).id();
        shell.press(Key.BACK_TAB, Key.DOWN).types("n");
        assertEquals(second, ((Screen.Next) shell.board().screen()).personId());
    }

    @Test
    void the_arrows_on_the_crew_stop_at_the_first_and_the_last() {
        shell.press(Key.BACK_TAB, Key.UP);
        assertEquals(new Screen.Crew(0), shell.board().screen());
        int last = shell.day().shop().people().size() - 1;
        for (int i = 0; i <= last + 2; i++) {
            shell.press(Key.DOWN);
        }
        assertEquals(new Screen.Crew(last), shell.board().screen());
    }

    @Test
    void enter_on_the_crew_asks_what_there_is_to_say_of_the_chosen_person() {
        shell.press(Key.BACK_TAB, Key.DOWN, Key.ENTER);
        Overlay.Choose ask = (Overlay.Choose) shell.board().overlay().orElseThrow();
        assertEquals(shell.day().shop().people().get(1).name(), ask.title());
    }

    @Test
    void before_the_day_is_opened_enter_on_the_crew_says_so() {
        FakeShell unopened = FakeShell.unopened().press(Key.BACK_TAB, Key.ENTER);
        assertTrue(unopened.board().overlay().isEmpty());
        assertEquals(
                Words.say("off.day_not_open"),
                unopened.board().note().orElseThrow().sentence());
    }
}
