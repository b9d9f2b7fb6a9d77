package org.shedboard.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.shedboard.grid.Size;
import org.shedboard.screen.View;

/** Screens asked for by name. */
class NamedScreenTest {
    private static final Board BOARD = FakeShell.demonstration().board();

    private static String screenOf(Board board) {
        return board.screen().getClass().getSimpleName();
    }

    @Test
    void every_screen_there_is_can_be_asked_for() {
        Set<String> shown = new TreeSet<>();
        for (NamedScreen name : NamedScreen.values()) {
            shown.add(screenOf(name.open(BOARD, "P1").board()));
        }
        Set<String> there = new TreeSet<>();
        Stream.of(Screen.class.getPermittedSubclasses())
                .map(Class::getSimpleName)
                .forEach(there::add);
        assertEquals(there, shown);
    }

    @ParameterizedTest
    @EnumSource(NamedScreen.class)
    void opening_a_screen_changes_nothing_and_asks_nothing(NamedScreen name) {
        Turn turn = name.open(BOARD, "P1");
        assertEquals(BOARD.seen(), turn.board().seen());
        assertTrue(turn.board().overlay().isEmpty());
        for (Effect effect : turn.effects()) {
            assertTrue(
                    effect instanceof Effect.ReadHours
                            || effect instanceof Effect.LookBack
                            || effect instanceof Effect.ReadHistory
                            || effect instanceof Effect.TryOut,
                    effect.toString());
        }
    }

    @Test
    void each_shows_something_that_no_other_shows() {
        Set<List<String>> shown = new HashSet<>();
        for (NamedScreen name : NamedScreen.values()) {
            List<String> lines =
                    View.of(name.open(BOARD, "P1").board(), new Size(120, 36)).lines();
            assertTrue(shown.add(lines), name + " shows what another one does:\n" + String.join("\n", lines));
        }
    }

    @Test
    void a_screen_about_a_visit_is_about_the_one_selected() {
        var visit = BOARD.expectDay().findByTag(7).orElseThrow();
        Board sheet =
                NamedScreen.SHEET.open(NamedScreen.select(BOARD, visit), "P1").board();
        assertEquals(visit.id(), ((Screen.Sheet) sheet.screen()).visitId());
    }

    @Test
    void where_no_visit_is_none_of_the_screens_about_one_can_be_shown() {
        Board empty = FakeShell.unopened().board();
        for (NamedScreen name : NamedScreen.values()) {
            boolean isAboutOne =
                    Set.of("SHEET", "IN_HAND", "MACHINE", "WHY", "MINUTES").contains(name.name());
            assertEquals(!isAboutOne, name.canOpen(empty), name.name());
        }
    }
}
