package org.shedboard.pack.lab;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.shedboard.pack.PackedPlans;
import org.shedboard.pack.Problem;
import org.shedboard.testing.Days;

/** The days whose optima are known, proven once more: the rules are understood here as they were where the optima come from. */
class ExactDaysTest {
    private static final boolean IN_FULL = Integer.getInteger("proof.scale", 1) > 1;
    private static final double EFFORT = 300;
    private static final int WORKERS = 2;

    @BeforeEach
    void needs_the_solver() {
        NativeSolver.expect();
    }

    /** The days of three days are left to the full run: the hardest takes half a minute. */
    @Test
    void the_optima_of_small_days_are_proven_again() throws IOException {
        Map<String, Long> optima = Days.optima();
        Map<String, Long> proven = optima.keySet().stream()
                .filter(day -> IN_FULL || !day.contains("three-day"))
                .collect(Collectors.toMap(day -> day, ExactDaysTest::optimum));
        assertTrue(proven.size() >= 10, "only " + proven.size() + " days");
        proven.forEach((day, cost) -> assertEquals(optima.get(day), cost, day));
    }

    private static long optimum(String day) {
        Problem problem = read(day);
        ExactLimit limit = ExactLimit.ofEffort(EFFORT, WORKERS).withHint(PackedPlans.pack(problem, 1, 2000));
        ExactAnswer answer = ExactPacker.pack(problem, limit);
        assertTrue(answer.isProven(), day + " is not proven in time");
        assertEquals(answer.expectPlan().cost(), answer.bound(), day);
        return answer.expectPlan().cost();
    }

    private static Problem read(String day) {
        try {
            return Days.read(day);
        } catch (IOException unread) {
            throw new UncheckedIOException(unread);
        }
    }
}
