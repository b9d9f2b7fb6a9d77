package org.shedboard.screen;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.shedboard.day.Outlook;
import org.shedboard.grid.Grid;
import org.shedboard.pack.check.PlanCheck;

/**
 * Whatever is done at whatever window in whatever shop: nothing breaks, every screen that is drawn is sound, and the plan
 * on it obeys every rule.
 */
class RandomBoardTest {
    private static final int SHOPS = 10 * Integer.getInteger("proof.scale", 1);
    private static final int DEEDS = 300;
    private static final int REMEMBERED = 25;

    /** Shops in which something once went wrong, soon after the first deed. */
    private static final int[] ONCE_WRONG = {134, 223, 298};

    static IntStream seeds() {
        return IntStream.concat(IntStream.rangeClosed(1, SHOPS), IntStream.of(ONCE_WRONG))
                .distinct();
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void whatever_is_done_in_whatever_shop_the_screen_is_sound(int seed) {
        Random random = new Random(seed);
        RandomShops.Morning morning = new RandomShops(random).next();
        Rehearsal rehearsal = Rehearsal.of(morning.day(), morning.now());
        RandomHands hands = new RandomHands(random);
        Deque<String> last = new ArrayDeque<>();
        Grid grid = rehearsal.drawn(hands.size());
        Outlook legal = rehearsal.outlook();
        for (int i = 0; i < DEEDS; i++) {
            try {
                last.addLast(hands.act(rehearsal, grid));
                if (last.size() > REMEMBERED) {
                    last.removeFirst();
                }
                grid = rehearsal.drawn(hands.size());
                new FrameCheck(rehearsal.board(), grid, hands.size()).all();
                if (rehearsal.outlook() != legal) {
                    legal = rehearsal.outlook();
                    assertLegal(legal);
                }
            } catch (RuntimeException | AssertionError wrong) {
                String at = rehearsal.board().screen().getClass().getSimpleName();
                fail("deed %d of seed %d, after %s on %s: %s%n%s".formatted(i, seed, last, at, wrong, grid), wrong);
            }
        }
    }

    private static void assertLegal(Outlook outlook) {
        PlanCheck check = PlanCheck.of(outlook.problem(), outlook.plan());
        assertTrue(check.isLegal(), check::toString);
    }
}
