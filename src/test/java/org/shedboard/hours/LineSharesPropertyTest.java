package org.shedboard.hours;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.shedboard.hours.Activity.OnStay;
import org.shedboard.shop.Condition;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Intake;
import org.shedboard.shop.Line;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Payer;
import org.shedboard.shop.Progress;
import org.shedboard.shop.Skill;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Step;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;
import org.shedboard.shop.WorkKind;

/** Minutes of random visits shared out over their lines, against the exact fractions. */
class LineSharesPropertyTest {
    private static final int VISITS = 20_000 * Integer.getInteger("proof.scale", 1);

    /** A visit and what was worked on it. */
    private record Worked(long seed, Visit visit, Map<OnStay, Integer> onStays) {
        List<String> lines() {
            return visit.lines().stream().map(Line::id).toList();
        }

        int sum() {
            return onStays.values().stream().mapToInt(minutes -> minutes).sum();
        }

        /** The lines that minutes on a stay are for: those of the task, or all. */
        List<String> servedOn(OnStay stay) {
            List<String> served = new ArrayList<>();
            for (Task task : visit.tasks()) {
                if (stay.taskId().equals(Optional.of(task.id()))) {
                    lines().stream().filter(task.lines()::contains).forEach(served::add);
                }
            }
            return served.isEmpty() ? lines() : served;
        }

        long weight(String line) {
            return visit.tasks().stream()
                    .filter(task -> task.lines().contains(line))
                    .mapToLong(Task::handsOn)
                    .sum();
        }

        /** What a line would get of minutes if these could be split. */
        double fraction(String line, List<String> served, int minutes) {
            if (!served.contains(line)) {
                return 0;
            }
            long all = served.stream().mapToLong(this::weight).sum();
            return all == 0 ? (double) minutes / served.size() : (double) minutes * weight(line) / all;
        }

        @Override
        public String toString() {
            return "seed %d, lines %s, tasks %s, worked %s".formatted(seed, lines(), visit.tasks(), onStays);
        }
    }

    @Test
    void shares_add_up_to_the_whole_minutes_and_none_is_negative_seeds_from_0() {
        for (int seed = 0; seed < VISITS; seed++) {
            Worked worked = worked(seed);
            Map<String, Integer> shares = new LineShares(worked.visit).ofWork(worked.onStays);
            assertEquals(worked.lines(), List.copyOf(shares.keySet()), worked::toString);
            assertEquals(worked.sum(), sum(shares), worked::toString);
            assertTrue(shares.values().stream().allMatch(minutes -> minutes >= 0), worked::toString);
        }
    }

    @Test
    void no_line_has_more_cleaning_than_work_and_all_cleaning_is_shared_seeds_from_0() {
        for (int seed = 0; seed < VISITS; seed++) {
            Worked worked = worked(seed);
            LineShares shares = new LineShares(worked.visit);
            Map<String, Integer> cleaning = shares.ofCleaning(worked.onStays);
            int washed = worked.onStays.entrySet().stream()
                    .mapToInt(stay -> stay.getKey().step() == Step.WASH ? stay.getValue() : 0)
                    .sum();
            assertEquals(washed, sum(cleaning), worked::toString);
            shares.ofWork(worked.onStays)
                    .forEach((line, minutes) -> assertTrue(cleaning.get(line) <= minutes, worked::toString));
        }
    }

    @Test
    void a_line_is_within_a_minute_a_pool_of_its_exact_fraction_seeds_from_0() {
        for (int seed = 0; seed < VISITS; seed++) {
            Worked worked = worked(seed);
            Map<String, Integer> shares = new LineShares(worked.visit).ofWork(worked.onStays);
            for (String line : worked.lines()) {
                double exact = 0;
                Set<List<Object>> pools = new HashSet<>();
                for (Map.Entry<OnStay, Integer> stay : worked.onStays.entrySet()) {
                    List<String> served = worked.servedOn(stay.getKey());
                    exact += worked.fraction(line, served, stay.getValue());
                    pools.add(List.of(served, stay.getKey().step() == Step.WASH));
                }
                pools.removeIf(pool -> !((List<?>) pool.get(0)).contains(line));
                double off = Math.abs(shares.get(line) - exact);
                assertTrue(
                        off <= Math.max(1e-6, pools.size() - 1e-6), () -> line + " is off by " + off + " in " + worked);
            }
        }
    }

    @Test
    void minutes_left_over_go_to_the_largest_fractions_seeds_from_0() {
        int uneven = 0;
        for (int seed = 0; seed < VISITS; seed++) {
            Worked all = worked(seed);
            for (Map.Entry<OnStay, Integer> stay : all.onStays.entrySet()) {
                Worked one = new Worked(seed, all.visit, Map.of(stay.getKey(), stay.getValue()));
                Map<String, Integer> shares = new LineShares(one.visit).ofWork(one.onStays);
                List<String> served = one.servedOn(stay.getKey());
                double smallestUp = 1;
                double largestDown = 0;
                for (String line : served) {
                    double exact = one.fraction(line, served, stay.getValue());
                    double off = shares.get(line) - exact;
                    smallestUp = off > 1e-9 ? Math.min(smallestUp, exact - Math.floor(exact)) : smallestUp;
                    largestDown = off < -1e-9 ? Math.max(largestDown, -off) : largestDown;
                    uneven += off > 1e-9 ? 1 : 0;
                }
                assertTrue(largestDown <= smallestUp + 1e-9, () -> shares + " in " + one);
            }
        }
        assertTrue(uneven > VISITS / 2, "only " + uneven + " shares were rounded up");
    }

    private static int sum(Map<String, Integer> shares) {
        return shares.values().stream().mapToInt(minutes -> minutes).sum();
    }

    private static Worked worked(long seed) {
        Random random = new Random(seed * 0x9E3779B97F4A7C15L);
        List<String> lines = IntStream.rangeClosed(1, 1 + random.nextInt(5))
                .mapToObj(number -> "L" + number)
                .toList();
        List<Stay> stays = new ArrayList<>();
        for (Step step : Step.values()) {
            if (random.nextInt(4) > 0) {
                stays.add(new Stay(step, step.kinds(), Optional.empty(), tasks(step, lines, random)));
            }
        }
        Map<OnStay, Integer> onStays = new LinkedHashMap<>();
        for (int left = random.nextInt(9); left > 0; left--) {
            onStays.put(onStay(stays, random), random.nextInt(3) == 0 ? random.nextInt(5) : random.nextInt(400));
        }
        return new Worked(seed, visit(lines, stays), onStays);
    }

    private static List<Task> tasks(Step step, List<String> lines, Random random) {
        List<Task> tasks = new ArrayList<>();
        for (int number = random.nextInt(3); number >= 0; number--) {
            // some serve a line that was taken off the visit
            List<String> serves = new ArrayList<>(random.nextInt(6) == 0 ? List.of("gone") : List.of());
            lines.stream().filter(line -> random.nextInt(3) == 0).forEach(serves::add);
            int handsOn = random.nextInt(4) == 0 ? 0 : 1 + random.nextInt(90);
            tasks.add(new Task(
                    step + "-" + number,
                    "work",
                    WorkKind.REPAIR,
                    Skill.SERVICE,
                    handsOn,
                    5,
                    List.of(),
                    List.of(),
                    serves,
                    "",
                    Progress.TO_DO));
        }
        return tasks;
    }

    /** On a task, on one that is not there any more, or on none. */
    private static OnStay onStay(List<Stay> stays, Random random) {
        if (stays.isEmpty() || random.nextInt(5) == 0) {
            Optional<String> task = random.nextBoolean() ? Optional.empty() : Optional.of("gone");
            return new OnStay("V1", Step.values()[random.nextInt(4)], task);
        }
        Stay stay = stays.get(random.nextInt(stays.size()));
        Task task = stay.tasks().get(random.nextInt(stay.tasks().size()));
        return new OnStay("V1", stay.step(), Optional.of(task.id()));
    }

    private static Visit visit(List<String> lines, List<Stay> stays) {
        Intake intake = new Intake(Instant.EPOCH, Mud.CLEAN, Depth.FULL, Condition.SOUND, "");
        return new Visit(
                "V1",
                "M1",
                OptionalInt.empty(),
                VisitState.IN_HAND,
                intake,
                lines.stream()
                        .map(line -> new Line(line, "work", "work", Payer.OWNER, List.of()))
                        .toList(),
                stays,
                List.of(),
                List.of(),
                Optional.empty(),
                Optional.empty());
    }
}
