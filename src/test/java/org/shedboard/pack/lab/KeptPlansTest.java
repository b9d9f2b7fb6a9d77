package org.shedboard.pack.lab;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.pack.PackedPlans;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Search;
import org.shedboard.pack.WorkshopDays;

class KeptPlansTest {
    private static final Problem DAY = WorkshopDays.of(6, WorkshopDays.FAIR, 1);
    private static final Plan FIRST = PackedPlans.first(DAY);
    private static final Plan BETTER = PackedPlans.pack(DAY, 1, 2000);

    @TempDir
    private Path folder;

    private KeptPlans kept;

    @BeforeEach
    void an_empty_folder() {
        assertTrue(BETTER.isBetterThan(FIRST));
        kept = new KeptPlans(folder.resolve("best"));
    }

    @Test
    void the_first_legal_plan_is_kept_and_a_better_one_replaces_it() throws IOException {
        assertEquals(Optional.empty(), kept.find("day", DAY));
        assertTrue(kept.offer("day", DAY, FIRST));
        assertTrue(kept.offer("day", DAY, BETTER));
        assertEquals(Optional.of(BETTER), kept.find("day", DAY));
    }

    @Test
    void a_worse_plan_replaces_nothing_and_of_two_that_are_as_good_the_old_one_stays() throws IOException {
        kept.offer("day", DAY, BETTER);
        assertFalse(kept.offer("day", DAY, FIRST));
        assertFalse(kept.offer("day", DAY, BETTER.withSearch(Search.of(77, 1))));
        assertEquals(Optional.of(BETTER), kept.find("day", DAY));
    }

    @Test
    void a_plan_that_breaks_a_rule_or_lies_about_its_cost_is_never_kept() throws IOException {
        assertFalse(kept.offer("day", DAY, withCost(0)));
        assertEquals(Optional.empty(), kept.find("day", DAY));
        kept.offer("day", DAY, FIRST);
        Plan empty = new Plan(0, 0, List.of(), List.of(), List.of(), 0, 0, 0);
        assertFalse(kept.offer("day", DAY, empty));
        assertFalse(kept.offer("day", DAY, withCost(FIRST.cost() - 1)));
        assertEquals(Optional.of(FIRST), kept.find("day", DAY));
    }

    @Test
    void a_file_that_is_no_legal_plan_of_this_day_gives_way_to_any_that_is() throws IOException {
        kept.offer("day", DAY, BETTER);
        Path file = folder.resolve("best/day.plan.json");
        Files.writeString(file, Files.readString(file).replaceFirst("\"cost\":\\d+", "\"cost\":1"));
        assertEquals(Optional.empty(), kept.find("day", DAY));
        assertTrue(kept.offer("day", DAY, FIRST));
        Files.writeString(file, "no plan");
        assertTrue(kept.offer("day", DAY, FIRST));
        assertEquals(Optional.of(FIRST), kept.find("day", DAY));
    }

    private static Plan withCost(long cost) {
        return new Plan(cost, 0, BETTER.unplaced(), BETTER.stays(), BETTER.tasks(), 0, 0, 0);
    }
}
