package org.shedboard.board;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.shedboard.day.Concern;
import org.shedboard.day.Concerns;
import org.shedboard.day.Outlook;
import org.shedboard.pack.check.PlanCheck;
import org.shedboard.words.Words;

/** Whatever is pressed on the demonstration day: nothing breaks, and the plan on the board obeys every rule. */
class RandomKeysTest {
    private static final int SEQUENCES = 2 * Integer.getInteger("proof.scale", 1);
    private static final int KEYS = 6000;
    private static final int REMEMBERED = 40;

    private static final List<Key> SPECIAL = List.of(
            Key.ENTER,
            Key.ENTER,
            Key.ENTER,
            Key.ESCAPE,
            Key.BACKSPACE,
            Key.DELETE,
            Key.TAB,
            Key.BACK_TAB,
            Key.UP,
            Key.DOWN,
            Key.DOWN,
            Key.LEFT,
            Key.RIGHT,
            Key.HOME,
            Key.END,
            Key.PAGE_UP,
            Key.PAGE_DOWN,
            Key.INSERT,
            Key.PASTE_START,
            Key.PASTE_END,
            Key.PASTE_END,
            Key.OTHER,
            Key.control('s'),
            Key.control('l'));

    static IntStream seeds() {
        return IntStream.rangeClosed(1, SEQUENCES);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void random_keys_break_nothing_and_leave_a_legal_plan(int seed) {
        Random random = new Random(seed);
        FakeShell shell = FakeShell.demonstration();
        Deque<Key> last = new ArrayDeque<>();
        Deque<Key> meant = new ArrayDeque<>();
        int before = 0;
        int done = 0;
        for (int i = 0; i < KEYS; i++) {
            if (meant.isEmpty() && random.nextInt(8) == 0) {
                answer(shell.board(), random, meant);
            }
            Key key = meant.isEmpty() ? key(shell.board(), random) : meant.removeFirst();
            last.addLast(key);
            if (last.size() > REMEMBERED) {
                last.removeFirst();
            }
            try {
                shell.pressAfter(random.nextInt(10) == 0 ? 100 : 400, key);
                if (random.nextInt(40) == 0) {
                    shell.minutesPass(random.nextInt(6));
                }
                assertTrue(shell.board().saving() >= 0);
                if (shell.effects.size() > before) {
                    assertLegal(shell.board());
                    done += shell.effects.size() - before;
                    before = shell.effects.size();
                }
                if (shell.day().isClosed() && random.nextInt(100) == 0) {
                    shell = FakeShell.demonstration();
                    before = 0;
                }
            } catch (RuntimeException | AssertionError wrong) {
                fail(
                        "key %d of seed %d, after %s on %s: %s"
                                .formatted(i, seed, last, shell.board().screen(), wrong),
                        wrong);
            }
        }
        assertTrue(done > 50, "only " + done + " effects");
    }

    /** Now and then somebody answers what is asked, or takes a machine in from one end of the form to the other. */
    private static void answer(Board board, Random random, Deque<Key> meant) {
        if (board.overlay().filter(Overlay.TypeIn.class::isInstance).isPresent()) {
            meant.add(Key.control('u'));
            type(meant, typed(((Overlay.TypeIn) board.overlay().get()).purpose(), random));
            meant.add(Key.ENTER);
        } else if (board.screen() instanceof Screen.Places && board.overlay().isEmpty()) {
            type(meant, "t" + (char) ('a' + random.nextInt(26)) + (char) ('a' + random.nextInt(26)));
            meant.add(Key.ENTER);
            type(meant, List.of("o", "m", "f", "bf").get(random.nextInt(4)));
            meant.add(Key.ENTER);
            type(meant, String.valueOf(random.nextInt(4)));
            meant.add(Key.ENTER);
        } else {
            meant.add(Key.ESCAPE);
        }
    }

    /** Something that might be the answer. */
    private static String typed(Overlay.Purpose purpose, Random random) {
        String soon = "+" + random.nextInt(600);
        if (purpose instanceof Overlay.Purpose.Errand) {
            return soon + " " + random.nextInt(90) + " parts";
        }
        if (purpose instanceof Overlay.Purpose.RightTimes) {
            return String.format(
                    Locale.ROOT, "%d:00-%d:%02d", random.nextInt(9), random.nextInt(10), random.nextInt(60));
        }
        return random.nextBoolean() ? soon : "fri 1" + random.nextInt(10);
    }

    private static void type(Deque<Key> meant, String text) {
        text.chars().forEach(character -> meant.add(Key.of((char) character)));
    }

    /** Half of the keys are ones that mean something on the screen that is shown. */
    private static Key key(Board board, Random random) {
        if (board.pasting() && random.nextInt(4) == 0) {
            return Key.PASTE_END;
        }
        int kind = random.nextInt(10);
        List<Binding> bindings = Keys.of(board).stream()
                .filter(binding -> binding.deed() != Deed.QUIT && binding.isOn())
                .toList();
        if (kind < 5 && board.overlay().isEmpty() && !bindings.isEmpty()) {
            return bindings.get(random.nextInt(bindings.size())).key();
        }
        if (kind < 7) {
            return Key.of((char) ('0' + random.nextInt(10)));
        }
        if (kind == 7) {
            return Key.ENTER;
        }
        return kind == 8 ? Key.of((char) (' ' + random.nextInt(200))) : SPECIAL.get(random.nextInt(SPECIAL.size()));
    }

    private static void assertLegal(Board board) {
        Outlook outlook = board.expectOutlook();
        PlanCheck check = PlanCheck.of(outlook.problem(), outlook.plan());
        assertTrue(check.isLegal(), check::toString);
        for (Concern concern : Concerns.of(outlook)) {
            String sentence = Words.say("concern." + concern.kind(), concern.values());
            assertFalse(sentence.matches(".*\\{\\d}.*"), sentence);
        }
    }
}
