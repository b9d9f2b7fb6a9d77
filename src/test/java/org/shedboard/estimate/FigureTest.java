package org.shedboard.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shedboard.files.Seed;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Step;

/** Single figures of the demonstration's catalogue. */
class FigureTest {
    private static final Catalogue CATALOGUE = Seed.catalogue();

    @ParameterizedTest
    @CsvSource({"wash:quad:caked, 20", "inspect:quad:underside, 40", "task:full-quad:brakes-clean, 18"})
    void a_figure_is_found_by_its_name_and_changes_alone(String id, int minutes) {
        Figure figure = Figure.find(CATALOGUE, id).orElseThrow();
        assertEquals(Optional.of(minutes), figure.minutesIn(CATALOGUE));
        Catalogue next = figure.in(CATALOGUE, minutes + 7);
        assertEquals(Optional.of(minutes + 7), figure.minutesIn(next));
        for (Figure other : Figure.of(CATALOGUE)) {
            if (!other.equals(figure)) {
                assertEquals(other.minutesIn(CATALOGUE), other.minutesIn(next), other.id());
            }
        }
        assertEquals(CATALOGUE, figure.in(next, minutes));
    }

    @Test
    void no_two_figures_have_one_name() {
        List<Figure> all = Figure.of(CATALOGUE);
        assertTrue(all.size() > 150, all.size() + " figures");
        assertEquals(all.size(), new HashSet<>(all.stream().map(Figure::id).toList()).size());
    }

    @ParameterizedTest
    @CsvSource({"wash:boat:caked", "wash:quad:filthy", "inspect:quad:wash", "task:full-quad:nothing", "''"})
    void what_the_catalogue_has_not_is_not_found(String id) {
        assertEquals(Optional.empty(), Figure.find(CATALOGUE, id));
    }

    @Test
    void a_wash_stays_between_the_grades_beside_it() {
        Figure muddy = new Figure.Wash("quad", Mud.MUDDY);
        assertEquals(6, muddy.least(CATALOGUE));
        assertEquals(20, muddy.most(CATALOGUE));
        assertEquals(0, new Figure.Wash("quad", Mud.CLEAN).least(CATALOGUE));
        assertEquals(Figure.LONGEST_MINUTES, new Figure.Wash("quad", Mud.CAKED).most(CATALOGUE));
    }

    @Test
    void the_points_of_a_step_are_together_just_what_they_were_given_and_none_is_left_without() {
        MachineClass quads = CATALOGUE.expectClass("quad");
        int points = new Figure.Inspection("quad", Step.UNDERSIDE).least(CATALOGUE);
        for (int minutes = points; minutes <= 200; minutes++) {
            MachineClass next = quads.withInspectMinutes(Step.UNDERSIDE, minutes);
            assertEquals(minutes, next.inspectMinutes(Step.UNDERSIDE));
            assertTrue(next.points().stream().allMatch(point -> point.inspectMinutes() >= 1));
        }
        assertThrows(IllegalArgumentException.class, () -> quads.withInspectMinutes(Step.UNDERSIDE, points - 1));
    }

    @Test
    void what_rounding_leaves_over_goes_to_those_that_lack_most() {
        // 1.5 3 4.5 of 6 parts: worked by hand
        assertEquals(List.of(2, 3, 4), Portions.of(List.of(1, 2, 3), 9));
        assertEquals(List.of(1, 1, 2), Portions.of(List.of(1, 1, 10), 4));
        assertEquals(List.of(4, 6, 10), Portions.of(List.of(2, 3, 5), 20));
    }
}
