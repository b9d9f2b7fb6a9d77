package org.shedboard.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.shedboard.words.Words;

/** The board at a terminal that only looks. */
class LookOnlyTest {
    private static final List<Key> KEYS = Stream.concat(
                    Stream.of(
                            Key.ENTER,
                            Key.ESCAPE,
                            Key.UP,
                            Key.DOWN,
                            Key.LEFT,
                            Key.RIGHT,
                            Key.TAB,
                            Key.BACK_TAB,
                            Key.BACKSPACE),
                    IntStream.rangeClosed(' ', '~').mapToObj(letter -> Key.of((char) letter)))
            .toList();

    private final Board board = FakeShell.demonstration().board().lookingOnly();

    private static boolean changes(Effect effect) {
        return effect instanceof Effect.CarryOut || effect instanceof Effect.Keep || effect instanceof Effect.MakeShop;
    }

    private static Turn pressed(Board board, int millis, Key key) {
        return Update.of(board, new Msg.Pressed(key, Instant.EPOCH.plusMillis(millis)));
    }

    @Test
    void a_key_that_changes_something_is_off_and_says_why() {
        Board refused = pressed(board, 400, Key.of('t')).board();
        assertEquals(board.screen(), refused.screen());
        assertEquals(Words.say("off.look_only"), refused.note().orElseThrow().sentence());
    }

    @Test
    void what_only_shows_something_is_on() {
        assertTrue(pressed(board, 400, Key.of('l')).board().screen() instanceof Screen.Hours);
        assertTrue(pressed(board, 400, Key.ENTER).board().screen() instanceof Screen.Sheet);
        assertTrue(pressed(board, 400, Key.of('j')).board().screen() instanceof Screen.ScorecardPage);
    }

    @Test
    void the_keys_that_are_on_are_those_that_look() {
        assertEquals(
                List.of(),
                Keys.of(board).stream()
                        .filter(Binding::isOn)
                        .filter(binding -> !binding.deed().isLook())
                        .toList());
    }

    /** Twelve thousand keys at random, with seed 7, over every screen they lead to. */
    @Test
    void no_row_of_keys_leads_to_a_change() {
        Random chance = new Random(7);
        Board now = board;
        StringBuilder shown = new StringBuilder();
        for (int i = 1; i <= 12_000; i++) {
            Turn turn = pressed(now, 400 * i, KEYS.get(chance.nextInt(KEYS.size())));
            assertTrue(
                    turn.effects().stream().noneMatch(LookOnlyTest::changes),
                    turn.effects().toString());
            now = turn.board();
            shown.append(now.screen().getClass().getSimpleName()).append(' ');
        }
        int screens = Stream.of(shown.toString().split(" "))
                .collect(Collectors.toSet())
                .size();
        assertTrue(screens >= 8, "only " + screens + " screens were seen");
    }
}
