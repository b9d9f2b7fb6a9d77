package org.shedboard.pack.chance;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.shedboard.pack.PackedPlans;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.RandomProblems;
import org.shedboard.pack.Span;
import org.shedboard.pack.Unsure;
import org.shedboard.pack.check.Breach;
import org.shedboard.pack.check.PlanCheck;
import org.shedboard.pack.check.Rule;
import org.shedboard.pack.fault.ProblemCheck;
import org.shedboard.pack.numbers.FlatProblem;

/** What a replay may do and what not. All numbers are invented. */
class ReplayTest {
    private static final int PROBLEMS = 150 * Integer.getInteger("proof.scale", 1);
    private static final int DAYS = 4;
    private static final Problem.Person PAT = Problem.Person.of("Pat", Set.of("service"), Span.of(0, 1000));
    private static final Problem.Person KIM = Problem.Person.of("Kim", Set.of("service"), Span.of(0, 1000));

    private static void eachReplay(Consumer<PlayedDay> look) {
        for (int seed = 0; seed < PROBLEMS; seed++) {
            Problem fresh = Unsure.of(RandomProblems.of(seed));
            Plan plan = PackedPlans.pack(fresh, seed, 50);
            play(fresh, plan, look);
            Problem later = RandomProblems.later(fresh, plan, 30 + seed % 200, seed);
            if (ProblemCheck.faults(later).isEmpty()) {
                play(later, PackedPlans.follow(later), look);
            }
        }
    }

    private static void play(Problem problem, Plan plan, Consumer<PlayedDay> look) {
        PlayedDay played = PlayedDay.of(problem, plan);
        for (int day = 0; day < DAYS; day++) {
            played.replay().run(day);
            look.accept(played);
        }
    }

    private static List<Plan.Unplaced> unplaced(PlayedDay played) {
        return played.flat().problem.jobs().stream()
                .filter(job -> !played.reading()
                        .isPlaced[
                        played.flat()
                                .firstTaskOfJob(played.flat().problem.jobs().indexOf(job))])
                .map(job -> new Plan.Unplaced(job.id(), "left out"))
                .toList();
    }

    @Test
    void a_replay_obeys_every_rule_with_the_minutes_it_drew() {
        int[] replays = new int[1];
        eachReplay(played -> {
            if (!played.isTellable()) {
                return;
            }
            Plan plan = played.plan(unplaced(played));
            PlanCheck check = PlanCheck.of(played.asDrawn(), plan);
            assertEquals(
                    List.of(),
                    check.breaches().stream()
                            .filter(breach -> breach.rule() != Rule.COST && !goesOnIntoClosedTime(played, breach))
                            .toList(),
                    () -> played.flat().problem + "\n" + plan);
            replays[0] += plan.tasks().size() > 3 ? 1 : 0;
        });
        assertTrue(replays[0] > PROBLEMS * DAYS, "only " + replays[0] + " replays have anything in them");
    }

    /** Who is on a task goes on with it from now; where that takes longer than the place is open, no rule can be kept. */
    private static boolean goesOnIntoClosedTime(PlayedDay played, Breach breach) {
        return breach.rule() == Rule.PLACE
                && played.flat().problem.jobs().stream()
                        .filter(job -> job.id().equals(breach.job()) && breach.stay() >= 0)
                        .flatMap(job -> job.stays().get(breach.stay()).tasks().stream())
                        .filter(task -> task.id().equals(breach.task()))
                        .anyMatch(task ->
                                task.started().flatMap(Problem.Started::person).isPresent());
    }

    @Test
    void a_replay_keeps_each_persons_and_each_places_order() {
        eachReplay(played -> {
            Plan plan = played.plan(unplaced(played));
            for (Problem.Place place : played.flat().problem.places()) {
                List<Plan.StayPlace> there = plan.stays().stream()
                        .filter(stay -> stay.place().equals(place.id()))
                        .sorted(Comparator.comparingInt(Plan.StayPlace::to))
                        .toList();
                assertInOrder(there.stream()
                        .mapToInt(stay -> plannedStart(played, stay.job(), stay.stay()))
                        .toArray());
            }
            for (int person = 0; person < played.flat().people; person++) {
                assertInOrder(startsOf(played, person));
            }
        });
    }

    /** The planned starts of the person's tasks, in the order in which the replay has them. */
    private static int[] startsOf(PlayedDay played, int person) {
        List<int[]> starts = new ArrayList<>();
        for (int turn = 0; turn < played.reading().order.length; turn++) {
            int task = played.reading().order[turn];
            boolean own = Arrays.stream(played.reading().who[task]).anyMatch(one -> one == person);
            if (own && played.flat().state[task] != FlatProblem.DONE) {
                starts.add(new int[] {played.replay().startOf(turn), played.reading().start[task]});
            }
        }
        starts.sort(Comparator.comparingInt(pair -> pair[0]));
        return starts.stream().mapToInt(pair -> pair[1]).toArray();
    }

    private static int plannedStart(PlayedDay played, String job, int stay) {
        int number = 0;
        while (!played.flat().job(number).id().equals(job)) {
            number++;
        }
        int first = played.flat().firstStay[number] + stay;
        int start = Integer.MAX_VALUE;
        for (int task = played.flat().firstTask[first]; task < played.flat().firstTask[first + 1]; task++) {
            start = Math.min(start, played.reading().start[task]);
        }
        return start;
    }

    private static void assertInOrder(int[] minutes) {
        for (int index = 1; index < minutes.length; index++) {
            assertTrue(minutes[index - 1] <= minutes[index], () -> Arrays.toString(minutes));
        }
    }

    private static Problem.Job job(String id, Problem.Task... tasks) {
        return Problem.Job.of(id, Problem.Stay.of("bay", tasks));
    }

    private static int[] finishes(Problem problem, Plan plan, String job) {
        return Chances.of(problem, plan, 1000, 1).finishes(job);
    }

    @Test
    void a_stay_that_would_run_into_a_closed_time_begins_after_it() {
        Problem.Place bay = Problem.Place.of("Bay", "bay").withClosed(Span.of(120, 200));
        Problem.Job quad = job("Quad", Problem.Task.of("do", "service", 100).withSpread(0.5));
        Problem problem = Problem.of(0, 1000, List.of(bay), List.of(PAT), List.of(quad));
        int[] finishes = finishes(problem, PackedPlans.first(problem), "Quad");
        int before = 0;
        for (int finish : finishes) {
            assertTrue(finish <= 120 || finish > 320, "ready at " + finish);
            before += finish <= 120 ? 1 : 0;
        }
        // ln(120.5 / 100) / 0.5 = 0.373; the normal distribution has 64.5 % below it
        assertEquals(0.645, before / 1000.0, 4 * Math.sqrt(0.645 * 0.355 / 1000));
    }

    @Test
    void what_the_plan_has_after_a_closed_time_stays_after_it_however_short_it_turns_out() {
        Problem.Place bay = Problem.Place.of("Bay", "bay").withClosed(Span.of(120, 200));
        Problem.Job quad = job("Quad", Problem.Task.of("do", "service", 130).withSpread(0.5));
        Problem problem = Problem.of(0, 1000, List.of(bay), List.of(PAT), List.of(quad));
        int[] finishes = finishes(problem, PackedPlans.first(problem), "Quad");
        assertTrue(finishes[0] > 200 && finishes[0] < 320, "ready at " + finishes[0]);
    }

    @Test
    void a_machine_that_stands_through_a_closed_time_is_not_worked_on_in_it() {
        Problem.Place bay = Problem.Place.of("Bay", "bay").withClosed(Span.of(120, 200));
        Problem.Task drained =
                Problem.Task.of("drain", "service", 10).withDone(new Problem.Done(Optional.of("Pat"), 0, 10));
        Problem.Task fill = Problem.Task.of("fill", "service", 100).withSpread(0.5);
        Problem.Stay stay = Problem.Stay.of("bay", drained, fill).withPlace("Bay");
        Problem problem = Problem.of(20, 1000, List.of(bay), List.of(PAT), List.of(Problem.Job.of("Quad", stay)));
        for (int finish : finishes(problem, PackedPlans.first(problem), "Quad")) {
            assertTrue(finish <= 120 || finish > 300, "ready at " + finish);
        }
    }

    @Test
    void two_start_together_when_the_later_of_them_is_free() {
        Problem.Job both = job("Both", Problem.Task.of("lift", "service", 10).withPeople(2))
                .withArrives(150);
        Problem.Task alone = Problem.Task.of("do", "service", 100).withSpread(0.5);
        Problem.Job mine = Problem.Job.of("Mine", Problem.Stay.nowhere(alone.withPerson("Pat")));
        Problem.Job yours = Problem.Job.of("Yours", Problem.Stay.nowhere(alone.withPerson("Kim")));
        Problem problem = Problem.of(
                0, 1000, List.of(Problem.Place.of("Bay", "bay")), List.of(PAT, KIM), List.of(both, mine, yours));
        Plan plan = PackedPlans.first(problem);
        PlayedDay played = PlayedDay.of(problem, plan);
        for (int day = 0; day < 200; day++) {
            played.replay().run(day);
            int free = Math.max(played.replay().finishOf(1), played.replay().finishOf(2));
            assertEquals(Math.max(150, free) + 10, played.replay().finishOf(0));
        }
    }

    @Test
    void a_task_pinned_to_a_minute_starts_then_or_as_soon_after_as_it_can() {
        Problem.Task first = Problem.Task.of("do", "service", 100).withSpread(0.5);
        Problem.Job pinned = Problem.Job.of(
                "Pinned",
                Problem.Stay.nowhere(
                        first, Problem.Task.of("show", "service", 5).withAt(130)));
        Problem problem = Problem.of(0, 1000, List.of(), List.of(PAT), List.of(pinned));
        int[] finishes = finishes(problem, PackedPlans.first(problem), "Pinned");
        assertEquals(135, finishes[0]);
        assertTrue(finishes[999] > 135);
    }

    @Test
    void a_day_can_be_drawn_again_and_with_one_stay_at_its_middle_minutes() {
        Problem.Task task = Problem.Task.of("do", "service", 100).withSpread(0.5);
        Problem problem = Problem.of(
                0,
                5000,
                List.of(),
                List.of(PAT.withSharedSpread(0.2), KIM),
                List.of(
                        Problem.Job.of("One", Problem.Stay.nowhere(task.withPerson("Pat"))),
                        Problem.Job.of("Two", Problem.Stay.nowhere(task.withPerson("Kim")))));
        PlayedDay played = PlayedDay.of(problem, PackedPlans.first(problem));
        int[] drawn = new int[20];
        int[] held = new int[20];
        for (int day = 0; day < 20; day++) {
            played.replay().run(day);
            drawn[day] = played.replay().finishOf(1);
            played.replay().runHolding(day, 0);
            held[day] = played.replay().finishOf(1);
            assertEquals(100, played.replay().finishOf(0));
        }
        assertArrayEquals(drawn, held);
    }
}
