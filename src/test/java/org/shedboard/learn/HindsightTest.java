package org.shedboard.learn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Mud;

class HindsightTest {
    private static final LocalDate DAY = LocalDate.of(2026, 1, 5);

    @Test
    void the_first_day_is_forecast_by_the_catalogue_and_the_next_by_what_was_learned() {
        List<Said> said = Hindsight.of(DrawnShop.EXPECTED, List.of(lesson(0, 80), lesson(0, 80), lesson(1, 80)));
        assertEquals(40, said.get(0).learned().median(), 1e-9);
        assertEquals(40, said.get(1).learned().median(), 1e-9);
        assertTrue(said.get(2).learned().median() > 45);
        assertEquals(40, said.get(2).catalogue().median(), 1e-9);
        assertEquals(80, said.get(2).lastTen().median(), 1e-9);
    }

    @Test
    void a_shop_unlike_its_catalogue_is_forecast_better_than_by_either_rival() {
        List<Lesson> lessons = new DrawnShop(1)
                .visitsWith(600).stream().map(DrawnShop.Piece::lesson).toList();
        Score score = Score.of(Hindsight.of(DrawnShop.EXPECTED, lessons));
        assertTrue(score.learned().crps() < score.lastTen().crps(), score.toString());
        assertTrue(score.learned().crps() < score.catalogue().crps(), score.toString());
        assertTrue(score.learned().percentageError() < score.catalogue().percentageError(), score.toString());
        assertEquals(0.8, score.safeShare(), 0.05);
    }

    @Test
    void nothing_forecast_cannot_be_scored() {
        assertEquals(List.of(), Hindsight.of(DrawnShop.EXPECTED, List.of(lesson(0, 0))));
        assertThrows(IllegalArgumentException.class, () -> Score.of(List.of()));
    }

    @Test
    void a_sort_that_runs_over_since_a_day_is_named_with_that_day() {
        Random random = new Random(4);
        List<Lesson> lessons = new ArrayList<>();
        for (int day = 0; day < 80; day++) {
            double drift = day < 70 ? 0 : 0.8;
            lessons.add(lesson(day, 40 * Math.exp(drift + 0.3 * random.nextGaussian())));
        }
        Drift drift =
                Drift.of(Sort.WASH, Hindsight.of(DrawnShop.EXPECTED, lessons)).orElseThrow();
        assertTrue(
                !drift.since().isBefore(DAY.plusDays(66)) && !drift.since().isAfter(DAY.plusDays(73)),
                drift.toString());
        assertTrue(drift.factor() > 1.3, drift.toString());
    }

    @Test
    void a_steady_sort_raises_no_alarm() {
        Random random = new Random(9);
        List<Lesson> lessons = new ArrayList<>();
        for (int day = 0; day < 80; day++) {
            lessons.add(lesson(day, 40 * Math.exp(0.3 * random.nextGaussian())));
        }
        List<Said> said = Hindsight.of(DrawnShop.EXPECTED, lessons);
        assertEquals(Optional.empty(), Drift.of(Sort.WASH, said));
        assertEquals(Optional.empty(), Drift.of(Sort.REPAIR, said));
    }

    private static Lesson lesson(int day, double actual) {
        Circumstances at = new Circumstances(
                "quad", Mud.DUSTY, Depth.STANDARD, OptionalInt.of(8), DAY.plusDays(day), Map.of("P1", 1.0));
        return new Lesson("V" + day, Sort.WASH, at, 40, actual);
    }
}
