package org.shedboard.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.shedboard.board.Key;
import org.shedboard.board.Msg;
import org.shedboard.board.Screen;
import org.shedboard.board.Update;
import org.shedboard.grid.Grid;
import org.shedboard.grid.Size;
import org.shedboard.testing.Golden;

/**
 * Every screen in every state that matters, compared whole; and whatever the window's size, it simply draws. Whatever else is held of every
 * scene stands here too, so that each is come to once.
 */
class ScreensTest {
    private static final Size USUAL = new Size(80, 24);
    private static final List<Size> LARGER = List.of(new Size(120, 36), new Size(200, 60));
    /** Scenes that show more of what they are about where there is more room. */
    private static final Set<String> BETTER_WIDE = Set.of(
            "take-in left-last-time",
            "scorecard drawn",
            "in-hand moved",
            "in-hand breaks-a-promise",
            "in-hand refused",
            "next two-people");

    /** Scenes of the time axis, which shows more of the same at each size. */
    private static final Set<String> EVERY_SIZE =
            Set.of("board two-hours", "board five-days", "crew two-hours", "crew five-days");

    /** Screens that work on the smallest window too. */
    private static final Set<String> SMALLEST_TOO = Set.of("next", "sheet");

    private static final Size SMALLEST = new Size(60, 18);
    private static final Size WIDE = LARGER.get(0);
    private static final List<Size> TOO_SMALL = List.of(
            new Size(79, 24), new Size(80, 23), new Size(60, 18), new Size(59, 18), new Size(60, 17), new Size(20, 5));
    private static final String SMALL = "too-small";
    private static final String ASCII = "ascii";

    static List<Scenes.Scene> scenes() {
        return Scenes.all();
    }

    /** The ordinary state of every screen. */
    static List<Scenes.Scene> ordinary() {
        Map<String, Scenes.Scene> first = new LinkedHashMap<>();
        Scenes.all().forEach(scene -> first.putIfAbsent(scene.screen(), scene));
        return List.copyOf(first.values());
    }

    @ParameterizedTest
    @MethodSource("scenes")
    void a_screen_is_as_it_was_accepted(Scenes.Scene scene) {
        for (Size size : sizesOf(scene)) {
            Golden.check(scene.screen(), named(scene, size), scene.drawn(size));
        }
    }

    @ParameterizedTest
    @MethodSource("ordinary")
    void a_screen_in_plain_letters_is_as_it_was_accepted(Scenes.Scene scene) {
        Golden.check(ASCII, scene.screen(), scene.drawn(USUAL).toAscii());
    }

    @Test
    void a_window_that_is_too_small_says_so() {
        for (Size size : TOO_SMALL) {
            Golden.check(SMALL, sized(size), Rehearsal.atTheDemonstration().drawn(size));
        }
    }

    @Test
    void no_stored_screen_is_without_a_case() {
        Map<String, List<String>> cases = new LinkedHashMap<>();
        for (Scenes.Scene scene : Scenes.all()) {
            for (Size size : sizesOf(scene)) {
                cases.computeIfAbsent(scene.screen(), screen -> new ArrayList<>())
                        .add(named(scene, size));
            }
        }
        cases.put(ASCII, ordinary().stream().map(Scenes.Scene::screen).toList());
        cases.put(SMALL, TOO_SMALL.stream().map(ScreensTest::sized).toList());
        cases.forEach(Golden::checkCases);
        Golden.checkScreens(cases.keySet());
    }

    @ParameterizedTest
    @MethodSource("scenes")
    void a_screen_of_any_size_simply_draws(Scenes.Scene scene) {
        for (Size size : sillySizes()) {
            Grid grid = scene.drawn(size);
            assertEquals(size, grid.size());
            assertFalse(steersTheTerminal(grid), () -> scene + " at " + size + "\n" + grid);
        }
    }

    @ParameterizedTest
    @MethodSource("scenes")
    void whatever_is_pointed_at_on_any_screen_nothing_breaks(Scenes.Scene scene) {
        Grid grid = scene.drawn(USUAL);
        Set<Press> presses = new LinkedHashSet<>();
        for (int row = 0; row < USUAL.rows(); row++) {
            for (int column = 0; column < USUAL.columns(); column++) {
                grid.meaningAt(column, row).map(Press.class::cast).ifPresent(presses::add);
            }
        }
        for (Press press : presses) {
            assertFalse(press.keys().isEmpty());
            Update.of(scene.board(), new Msg.Pointed(press.keys(), Instant.EPOCH));
        }
        boolean isWaiting = scene.board().screen() instanceof Screen.Loading;
        assertEquals(isWaiting, presses.isEmpty(), "only while the day is read is there nothing to point at");
    }

    /** Nothing is told by colour alone. */
    @Test
    void no_two_screens_differ_in_their_looks_alone() {
        Map<List<String>, Map<List<String>, List<String>>> looksByWords = new LinkedHashMap<>();
        for (Scenes.Scene scene : Scenes.all()) {
            Grid grid = scene.drawn(USUAL).toAscii();
            looksByWords
                    .computeIfAbsent(grid.lines(), words -> new LinkedHashMap<>())
                    .computeIfAbsent(grid.styleLines(), looks -> new ArrayList<>())
                    .add(scene.toString());
        }
        List<String> alike = looksByWords.values().stream()
                .filter(looks -> looks.size() > 1)
                .map(looks -> looks.values().toString())
                .toList();
        assertEquals(List.of(), alike);
    }

    private static Set<Size> sillySizes() {
        Set<Size> sizes = new LinkedHashSet<>();
        for (int length : new int[] {0, 1, 2, 3, 10, 24, 80, 300}) {
            sizes.addAll(List.of(new Size(length, 0), new Size(0, length), new Size(length, 1), new Size(1, length)));
        }
        Stream.of(
                        "59x18", "60x17", "60x18", "61x19", "79x24", "80x23", "81x24", "80x25", "119x35", "100x33",
                        "100x34", "300x100", "300x24", "80x100")
                .map(text -> text.split("x"))
                .forEach(parts -> sizes.add(new Size(Integer.parseInt(parts[0]), Integer.parseInt(parts[1]))));
        return sizes;
    }

    private static boolean steersTheTerminal(Grid grid) {
        return grid.lines().stream()
                .flatMapToInt(String::chars)
                .anyMatch(letter -> Character.isISOControl(letter) || Character.getType(letter) == Character.FORMAT);
    }

    /** What leads to a screen with something selected, as keys of the demonstration's board. */
    @ParameterizedTest
    @CsvSource({"the board, ''", "a question, n", "machines found, tq", "a form, tzeb>", "a sheet, >"})
    void what_is_selected_is_seen_without_colour(String where, String keys) {
        Rehearsal rehearsal = Rehearsal.atTheDemonstration();
        keys.chars().forEach(key -> rehearsal.press(key == '>' ? Key.ENTER : Key.of((char) key)));
        List<String> before = rehearsal.drawn(USUAL).toAscii().lines();
        List<String> after = rehearsal.press(Key.DOWN).drawn(USUAL).toAscii().lines();
        assertNotEquals(before, after, where);
    }

    private static List<Size> sizesOf(Scenes.Scene scene) {
        List<Size> sizes = new ArrayList<>(List.of(USUAL));
        if (ordinary().contains(scene) && SMALLEST_TOO.contains(scene.screen())) {
            sizes.add(SMALLEST);
        }
        if (ordinary().contains(scene) || EVERY_SIZE.contains(scene.toString())) {
            sizes.addAll(LARGER);
        } else if (BETTER_WIDE.contains(scene.toString())) {
            sizes.add(WIDE);
        }
        return sizes;
    }

    private static String named(Scenes.Scene scene, Size size) {
        return scene.name() + "-" + sized(size);
    }

    private static String sized(Size size) {
        return size.columns() + "x" + size.rows();
    }
}
