package org.shedboard.pack.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.shedboard.pack.PackedPlans;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.RandomProblems;

/** Other people and places for a task, held against the checker; all numbers are invented. */
class InsteadTest {
    private static final int PROBLEMS = 25 * Integer.getInteger("proof.scale", 1);

    private static void eachPerson(BiConsumer<HandShift, Instead> look) {
        each((problem, plan) -> {
            Why why = Why.of(problem, plan);
            for (Plan.TaskTime time : plan.tasks()) {
                for (Instead other : why.otherPeople(time.job(), time.stay(), time.task())) {
                    look.accept(shifted(problem, by(plan, time, other.id()), time), other);
                }
            }
        });
    }

    private static void eachPlace(BiConsumer<HandShift, Instead> look) {
        each((problem, plan) -> {
            Why why = Why.of(problem, plan);
            for (Plan.TaskTime time : plan.tasks()) {
                for (Instead other : why.otherPlaces(time.job(), time.stay(), time.task())) {
                    look.accept(shifted(problem, in(plan, time, other.id()), time), other);
                }
            }
        });
    }

    private static void each(BiConsumer<Problem, Plan> look) {
        for (int seed = 0; seed < PROBLEMS; seed++) {
            Problem problem = RandomProblems.of(seed);
            look.accept(problem, PackedPlans.pack(problem, seed, 100));
        }
    }

    private static HandShift shifted(Problem problem, Plan plan, Plan.TaskTime time) {
        return new HandShift(problem, plan, time.job(), time.stay(), time.task());
    }

    private static Plan by(Plan plan, Plan.TaskTime time, String person) {
        List<Plan.TaskTime> tasks = plan.tasks().stream()
                .map(each -> each.equals(time)
                        ? new Plan.TaskTime(
                                time.job(),
                                time.stay(),
                                time.task(),
                                Optional.of(person),
                                List.of(),
                                time.start(),
                                time.end())
                        : each)
                .toList();
        return new Plan(0, 0, plan.unplaced(), plan.stays(), tasks, 0, 0, 0);
    }

    private static Plan in(Plan plan, Plan.TaskTime time, String place) {
        List<Plan.StayPlace> stays = plan.stays().stream()
                .map(each -> each.job().equals(time.job()) && each.stay() == time.stay()
                        ? new Plan.StayPlace(each.job(), each.stay(), place, each.from(), each.to())
                        : each)
                .toList();
        return new Plan(0, 0, plan.unplaced(), stays, plan.tasks(), 0, 0, 0);
    }

    /** What is promised can be; what is said to be against it is. */
    private static void judge(HandShift shift, Instead other, int[] counts) {
        int start = shift.time().start();
        if (other.bar().isPresent()) {
            assertFalse(shift.isLegalAt(start), () -> shift + " " + other);
            counts[0]++;
            return;
        }
        if (other.earliest().isPresent()) {
            assertTrue(shift.isLegalAt(other.earliest().getAsInt()), () -> shift + " " + other);
            counts[1] += other.earliest().getAsInt() < start ? 1 : 0;
        }
        if (!other.against().isEmpty()) {
            assertFalse(shift.isLegalAt(start), () -> shift + " " + other);
            counts[2]++;
        }
    }

    @Test
    void whoever_is_said_to_be_able_to_start_a_task_can_and_whoever_is_not_cannot() {
        int[] counts = new int[3];
        eachPerson((shift, other) -> judge(shift, other, counts));
        assertTrue(
                counts[0] > PROBLEMS && counts[1] > PROBLEMS / 5 && counts[2] > PROBLEMS,
                () -> List.of(counts[0], counts[1], counts[2]).toString());
    }

    @Test
    void wherever_a_task_is_said_to_be_able_to_start_it_can_and_elsewhere_not() {
        int[] counts = new int[3];
        eachPlace((shift, other) -> judge(shift, other, counts));
        assertTrue(
                counts[1] > 0 && counts[2] > PROBLEMS / 5,
                () -> List.of(counts[0], counts[1], counts[2]).toString());
    }

    @Test
    void a_chain_begins_with_the_task_names_its_own_reasons_and_goes_back_in_time() {
        int[] longest = new int[1];
        each((problem, plan) -> {
            Why why = Why.of(problem, plan);
            for (Plan.TaskTime time : plan.tasks()) {
                List<Link> chain = why.chain(time.job(), time.stay(), time.task(), 4);
                assertEquals(
                        why.of(time.job(), time.stay(), time.task()),
                        chain.get(0).reasons());
                for (int index = 1; index < chain.size(); index++) {
                    int before = index - 1;
                    assertTrue(chain.get(index).start() <= chain.get(before).start(), chain::toString);
                }
                assertTrue(chain.size() <= 4 && chain.stream().distinct().count() == chain.size());
                longest[0] = Math.max(longest[0], chain.size());
            }
        });
        assertEquals(4, longest[0]);
    }

    @Test
    void every_bar_occurs() {
        Map<Instead.Bar, Integer> bars = new EnumMap<>(Instead.Bar.class);
        eachPerson((shift, other) -> other.bar().ifPresent(bar -> bars.merge(bar, 1, Integer::sum)));
        eachPlace((shift, other) -> other.bar().ifPresent(bar -> bars.merge(bar, 1, Integer::sum)));
        assertEquals(
                List.of(Instead.Bar.values()), bars.keySet().stream().collect(Collectors.toList()), bars::toString);
    }
}
