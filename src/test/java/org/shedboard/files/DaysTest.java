package org.shedboard.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shedboard.pack.PackedPlans;
import org.shedboard.pack.Packer;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;

/** Days with proven optima, where there is a folder of them: beside the project, or named by SHEDBOARD_DAYS. */
class DaysTest {
    @Test
    void small_days_are_packed_at_or_near_their_proven_optimum_and_never_below() throws IOException {
        Map<String, Long> optima = optima();
        int met = 0;
        for (Map.Entry<String, Long> day : optima.entrySet()) {
            Plan plan = PackedPlans.pack(read(day.getKey()), 1, 20_000);
            assertEquals(0, plan.unplaced().size(), day.getKey());
            assertTrue(plan.cost() >= day.getValue(), day.getKey() + " is below the optimum: a rule is broken");
            assertTrue(plan.bound() <= day.getValue(), day.getKey() + " has a bound above the optimum");
            met += plan.cost() == day.getValue() ? 1 : 0;
        }
        assertTrue(met >= optima.size() * 3 / 4, "only " + met + " of " + optima.size() + " at the optimum");
    }

    @Test
    void the_bound_of_small_days_is_near_their_proven_optimum_and_never_above() throws IOException {
        List<Double> shares = new ArrayList<>();
        for (Map.Entry<String, Long> day : optima().entrySet()) {
            Problem problem = read(day.getKey());
            long bound = Packer.proven(problem, Packer.first(problem)).bound();
            assertTrue(bound <= day.getValue(), day.getKey() + " has a bound above the optimum: " + bound);
            shares.add(bound / (double) day.getValue());
        }
        double median = shares.stream().sorted().toList().get(shares.size() / 2);
        assertTrue(median >= 0.94, "the bounds are in the median at " + median + " of the optimum: " + shares);
    }

    private static Map<String, Long> optima() throws IOException {
        Map<String, Long> optima = new LinkedHashMap<>();
        List<String> rows = Files.readAllLines(folder().resolve("optimum.csv"));
        for (String row : rows.subList(1, rows.size())) {
            String[] cells = row.split(",");
            optima.put(cells[0], Long.parseLong(cells[3].strip()));
        }
        assertTrue(optima.size() >= 10, "too few days to mean anything");
        return optima;
    }

    private static Problem read(String name) throws IOException {
        Reading<Problem> reading = DayFile.read(Files.readString(folder().resolve(name + ".json")));
        assertEquals(List.of(), reading.faults(), name);
        return reading.value().orElseThrow();
    }

    private static Path folder() {
        String named = Optional.ofNullable(System.getProperty("SHEDBOARD_DAYS"))
                .orElse(Optional.ofNullable(System.getenv("SHEDBOARD_DAYS")).orElse("../shared/days"));
        Path folder = Path.of(named);
        assumeTrue(Files.isDirectory(folder), "no folder of days at " + named + "; SHEDBOARD_DAYS can name one");
        return folder;
    }
}
