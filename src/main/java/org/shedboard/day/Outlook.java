package org.shedboard.day;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.shedboard.estimate.Estimate;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.chance.Chances;
import org.shedboard.pack.story.Difference;
import org.shedboard.pack.story.Reason;
import org.shedboard.pack.story.Why;
import org.shedboard.shop.Person;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;

/**
 * How the day looks from one moment: the posted plan moved along to now, and the chances of the promises in it.
 *
 * @param at the moment it is seen from
 * @param packing what the plan is made for
 * @param work the tasks of the plan by their names
 */
public record Outlook(Day day, Instant at, Packing packing, Plan plan, Chances chances, PlannedWork work) {
    /** Replays for the chances on the board: the sampling error of a chance stays under 1.6 points in a hundred. */
    private static final int DRAWS = 1000;

    private static final long SEED = 1;

    private Outlook(Day day, Instant at, Packing packing, Plan plan, Chances chances) {
        this(day, at, packing, plan, chances, PlannedWork.of(day, packing.packed(), plan));
    }

    public static Outlook of(Day day, Instant now) {
        Packing packing = Problems.packing(day, now);
        Problem problem = packing.packed();
        return of(
                day, now, packing, problem.posted().isPresent() ? Planning.settled(problem) : Planning.quick(problem));
    }

    static Outlook of(Day day, Instant now, Packing packing, Plan plan) {
        return new Outlook(day, now, packing, plan, Chances.of(packing.likely(), plan, DRAWS, SEED));
    }

    /** What the plan is made for. */
    public Problem problem() {
        return packing.packed();
    }

    /** The same with the likely minutes of every task, around which its days turn out. */
    public Problem likely() {
        return packing.likely();
    }

    /** What another plan of the same problem changes of this one. */
    public Difference differenceTo(Plan other) {
        return Difference.between(problem(), plan, other);
    }

    /** Whether another plan is worth telling anybody: it places more machines, or gains at least so many minutes' worth. */
    public boolean isWorth(Plan other, int minutes) {
        return other.unplaced().size() < plan.unplaced().size()
                || other.isBetterThan(plan) && plan.cost() - other.cost() >= (long) minutes * Problems.POINTS_A_MINUTE;
    }

    /** Whether another plan leaves every start of the next hour where it is, or keeps a promise more or places a machine more. */
    public boolean isCalm(Plan other) {
        Difference difference = differenceTo(other);
        boolean gains = other.unplaced().size() < plan.unplaced().size() || difference.promises() > 0;
        return gains || difference.retimed().noneMatch(move -> NextHour.isWithin(problem(), move.from()));
    }

    /** The same day by another plan; the chances are those of the plan it was made with. */
    public Outlook with(Plan other) {
        return with(day, other);
    }

    /** Another state of the same day, by another plan of the same problem. */
    Outlook with(Day changed, Plan other) {
        return new Outlook(changed, at, packing, other, chances);
    }

    /** Likely and safe minutes of what is left to do on a visit; empty when nothing is. */
    public Optional<Estimate.Range> rangeLeft(String visitId) {
        return Optional.ofNullable(packing.left().get(visitId));
    }

    /** Why the plan does not finish a visit; empty where it does, and where nobody knows. */
    public Optional<String> whyNotIn(String visitId) {
        return Optional.ofNullable(packing.stuck().why().get(visitId))
                .or(() -> plan.findUnplaced(visitId).map(Plan.Unplaced::why));
    }

    /** When the visit's last task is complete by the plan; empty when that is not in it. */
    public Optional<Instant> readyAt(String visitId) {
        if (whyNotIn(visitId).isPresent()) {
            return Optional.empty();
        }
        Optional<Problem.Job> packed = problem().jobs().stream()
                .filter(job -> job.id().equals(visitId))
                .findFirst();
        OptionalInt finish = packed.map(plan::finishOf).orElse(OptionalInt.empty());
        return finish.isPresent() ? Optional.of(day.instantOf(finish.getAsInt())) : Optional.empty();
    }

    /** The chance, in a hundred, that the visit is ready by a time; empty when it is not in the plan. */
    public OptionalInt chanceBy(String visitId, Instant time) {
        if (readyAt(visitId).isEmpty()) {
            return OptionalInt.empty();
        }
        return OptionalInt.of((int) Math.round(100 * chances.chance(visitId, day.minuteOf(time))));
    }

    /** The chance, in a hundred, that the visit's promise is kept. */
    public OptionalInt chanceOfPromise(Visit visit) {
        return visit.promise()
                .map(promise -> chanceBy(visit.id(), promise.at()))
                .orElse(OptionalInt.empty());
    }

    /** The planned runs of work in one place, in order. */
    public List<Plan.StayPlace> staysIn(String placeId) {
        return plan.stays().stream()
                .filter(stay -> stay.place().equals(placeId))
                .sorted(Comparator.comparingInt(Plan.StayPlace::from))
                .toList();
    }

    /** The planned tasks of one person that are not done, in order. */
    public List<Plan.TaskTime> tasksOf(String personId) {
        return plan.tasks().stream()
                .filter(time -> time.person().filter(personId::equals).isPresent())
                .filter(time -> !taskOf(time).isDone())
                .sorted(Comparator.comparingInt(this::handsFrom))
                .toList();
    }

    /** Minutes, breaks left out, that a running task has taken beyond those it had; nothing or less while it is in time. */
    public int minutesOver(Task running) {
        Person person = day.shop().expectPerson(running.progress().person().orElseThrow());
        Instant since = running.progress().since().orElse(at);
        return new Roster(day).shiftMinutes(person, since, at)
                - running.progress().left();
    }

    /** The minute from which a task has hands on it; a paused one, which began long ago, when it goes on. */
    public int handsFrom(Plan.TaskTime time) {
        return work.expect(time).handsFrom();
    }

    public Task taskOf(Plan.TaskTime time) {
        return work.expect(time).task();
    }

    /** The planned time of a visit's task. */
    public Optional<Plan.TaskTime> timeOf(String visitId, String taskId) {
        return work.find(visitId, taskId).map(PlannedWork.Planned::time);
    }

    /** The date on which the plan uses a part: today for a task somebody is on; empty where its task is not in the plan. */
    Optional<LocalDate> dateOf(Need need) {
        return need.task().progress().isRunning()
                ? Optional.of(day.date())
                : timeOf(need.visit().id(), need.task().id())
                        .map(time -> LocalDate.ofInstant(day.instantOf(handsFrom(time)), day.zone()));
    }

    /** The first minute from now at which nothing is planned in a place; empty when that is beyond the plan. */
    public OptionalInt freeFrom(String placeId) {
        int minute = problem().now();
        for (Plan.StayPlace stay : staysIn(placeId)) {
            if (stay.from() > minute) {
                break;
            }
            minute = Math.max(minute, stay.to());
        }
        return minute < problem().horizon() ? OptionalInt.of(minute) : OptionalInt.empty();
    }

    /** Open visits in the order in which the plan works on them; what is not in the plan comes last. */
    public List<Visit> queue() {
        Map<String, Integer> next = nextMinutes();
        return day.visits().stream()
                .filter(visit -> visit.state().isOpen())
                .sorted(Comparator.comparingInt((Visit visit) -> next.getOrDefault(visit.id(), Integer.MAX_VALUE))
                        .thenComparing(Visit::id))
                .toList();
    }

    /** The visit's task to start next: the earliest in the plan of those that nobody is on. */
    public Optional<Task> nextTaskOf(Visit visit) {
        return visit.tasks().stream()
                .filter(task -> !task.isDone() && !task.progress().isRunning())
                .min(Comparator.comparingInt(task ->
                        timeOf(visit.id(), task.id()).map(Plan.TaskTime::start).orElse(Integer.MAX_VALUE)));
    }

    /** Why the plan does not have a visit's task earlier; empty when it is not in the plan. */
    public List<Reason> whyThen(String visitId, String taskId) {
        return timeOf(visitId, taskId)
                .map(time -> Why.of(problem(), plan).of(visitId, time.stay(), taskId))
                .orElse(List.of());
    }

    /** When hands are on each visit of the plan next; gone through once, since this is asked at every key. */
    private Map<String, Integer> nextMinutes() {
        Map<String, Integer> next = new HashMap<>();
        for (Plan.TaskTime time : plan.tasks()) {
            if (!taskOf(time).isDone()) {
                next.merge(time.job(), handsFrom(time), Math::min);
            }
        }
        return next;
    }
}
