package org.shedboard.day;

import java.time.Instant;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.shedboard.estimate.Estimate;
import org.shedboard.forecast.Foresight;
import org.shedboard.forecast.VisitForecast;
import org.shedboard.pack.Costs;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Span;
import org.shedboard.pack.search.Packer;
import org.shedboard.shop.Person;
import org.shedboard.shop.Place;
import org.shedboard.shop.PlaceKind;
import org.shedboard.shop.Progress;
import org.shedboard.shop.Skill;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;

/**
 * Writes a day as a packing problem. Minute 0 is the day's midnight; a job is a visit that is not done; what the day knows of
 * yesterday lies at minute 0.
 */
final class Problems {
    /**
     * Points of cost for one minute that one machine is ready earlier. Staying put is worth something too, since people have begun to
     * lay out tools, but only a little: a task moved by a minute counts a thirtieth of it, somebody else on a task ten minutes.
     * Invented figures, to be learnt from use.
     */
    static final int POINTS_A_MINUTE = 30;

    private static final Costs COSTS = new Costs(
            Costs.STANDARD.late() * POINTS_A_MINUTE,
            Costs.STANDARD.overtime() * POINTS_A_MINUTE,
            Costs.STANDARD.flow() * POINTS_A_MINUTE,
            Costs.STANDARD.handover() * POINTS_A_MINUTE,
            0,
            1,
            10L * POINTS_A_MINUTE);

    /** A machine that comes in four weeks is still quoted by a plan, with a week to be done in. */
    private static final int FURTHEST_DAYS = 35;

    private final Day day;
    private final Instant now;
    private final Roster roster;
    private final SetAside parts;
    private final Map<String, VisitForecast> forecasts = new HashMap<>();
    private Pins pins;

    private Problems(Day day, Instant now, Roster roster) {
        this.pins = Pins.of(day, now);
        this.day = day;
        this.now = now;
        this.parts = SetAside.of(day, now);
        this.roster = roster.withPartsBy(parts.allBy());
    }

    /** The problem of this day at this moment, with the plan now posted. */
    static Problem of(Day day, Instant now) {
        return new Problems(day, now, new Roster(day)).yielded().packed();
    }

    /**
     * The problem with one pin more than the day before it has.
     *
     * @param visits ids of the visits on which it insists
     */
    record Insisting(Problem problem, Set<String> visits) {}

    /** What held before the pin still has to hold, and what had yielded does not; the new pin holds, whether it can or not. */
    static Insisting insisting(Day before, Day day, Instant now, String visitId) {
        Pins held = new Problems(before, now, new Roster(before)).yielded().pins;
        Problems problems = new Problems(day, now, new Roster(day));
        problems.pins = held.on(day).insisting(visitId);
        return new Insisting(problems.packed(), problems.pins.visits());
    }

    /** The problem a plan is made for, and the one it is replayed in. */
    static Packing packing(Day day, Instant now) {
        return new Problems(day, now, new Roster(day)).yielded().packing();
    }

    /** The same, looking so far ahead that this visit can be planned in it, though no further than {@link #FURTHEST_DAYS}. */
    static Packing packing(Day day, Instant now, Visit visit) {
        return new Problems(day, now, Roster.reaching(day, day.minuteOf(earliest(visit)), FURTHEST_DAYS))
                .yielded()
                .packing();
    }

    private Problem packed() {
        Problem whole = problem(day.books().foresight().packedPercent());
        return Stuck.in(whole).without(whole);
    }

    /**
     * What the day has overtaken is not insisted on any more: pins that the posted plan cannot be moved along with yield, since a
     * machine must never fall out of the plan for them. Each is then looked at by itself, so that no other yields for it.
     */
    private Problems yielded() {
        Set<String> pinned = pins.visits();
        if (!holds()) {
            pins = pins.yielding(pinned).yielding(pinned);
            pinned.forEach(this::insistAgain);
        }
        return this;
    }

    private void insistAgain(String visitId) {
        Pins without = pins;
        Pins whole = without.insisting(visitId);
        pins = whole;
        if (!holds()) {
            pins = whole.yielding(Set.of(visitId));
        }
        if (!holds()) {
            pins = without;
        }
    }

    /** Whether the posted plan can be moved along with all that is insisted on. */
    private boolean holds() {
        Set<String> pinned = pins.visits();
        return pinned.isEmpty()
                || Packer.keep(packed())
                        .filter(plan -> pinned.stream()
                                .allMatch(id -> plan.findUnplaced(id).isEmpty()))
                        .isPresent();
    }

    private Packing packing() {
        int percent = day.books().foresight().packedPercent();
        Problem whole = problem(percent);
        Stuck stuck = Stuck.in(whole);
        Problem packed = stuck.without(whole);
        Problem likely = percent == Foresight.LEAST_PERCENT ? packed : stuck.without(problem(Foresight.LEAST_PERCENT));
        return new Packing(packed, likely, stuck, left());
    }

    /** @param percent the minutes of a task are those that so many in a hundred such tasks stay within */
    private Problem problem(int percent) {
        List<Problem.Job> jobs = day.visits().stream()
                .filter(this::isToPlan)
                .map(visit -> job(visit, percent))
                .toList();
        return new Problem(
                minute(now),
                roster.days() * Roster.MINUTES_A_DAY,
                COSTS,
                day.shop().places().stream().map(this::place).toList(),
                day.shop().people().stream().map(each -> person(each, percent)).toList(),
                jobs,
                day.posted().map(posted -> rebased(posted, jobs)),
                Optional.of(day.origin().toString()));
    }

    /** What comes after the plan ends is not in it yet: each day of its own brings it nearer. */
    private boolean isToPlan(Visit visit) {
        return visit.state().isOpen()
                && !visit.stays().stream().allMatch(Stay::isDone)
                && !isBeyond(day, visit, roster.days() * Roster.MINUTES_A_DAY);
    }

    /** Whether the visit comes, or may go on, only after the last minute of a plan. */
    static boolean isBeyond(Day day, Visit visit, int horizon) {
        return day.minuteOf(earliest(visit)) >= horizon;
    }

    /** When work on it can begin. */
    private static Instant earliest(Visit visit) {
        return visit.hold()
                .map(hold -> visit.hasBegun() ? visit.intake().arrives() : hold.until())
                .orElse(visit.intake().arrives());
    }

    private Problem.Place place(Place place) {
        boolean open = !place.isHoist()
                || day.opening()
                        .filter(opening -> opening.isChecked(place.id()))
                        .isPresent();
        List<Span> closed = open ? List.of() : List.of(new Span(0, Roster.MINUTES_A_DAY));
        int rated = place.isHoist() ? place.ratedKg() : Problem.NO_LIMIT;
        return new Problem.Place(place.id(), kind(place.kind()), rated, closed);
    }

    private Problem.Person person(Person person, int percent) {
        Set<String> skills = person.skills().stream()
                .sorted()
                .map(Problems::skill)
                .collect(Collectors.toCollection(LinkedHashSet::new));
        skills.addAll(pins.lentSkillsOf(person));
        double spread = day.books().experience().learned().person();
        List<Span> shifts = roster.shiftsOf(person);
        List<Span> overtime = pins.overtimeOf(
                person,
                shifts,
                roster.overtimeOf(person),
                (visit, task, who) -> minutesOf(visit, percent).of(task, who));
        return new Problem.Person(person.id(), skills, shifts, overtime, spread);
    }

    private Problem.Job job(Visit visit, int percent) {
        Minutes minutes = minutesOf(visit, percent);
        OptionalInt promise =
                visit.promise().map(said -> OptionalInt.of(minute(said.at()))).orElse(OptionalInt.empty());
        return new Problem.Job(
                visit.id(),
                1,
                day.machineOf(visit).massKg(),
                minute(earliest(visit)),
                promise,
                day.books().experience().learned().machine(),
                visit.stays().stream().map(stay -> stay(visit, stay, minutes)).toList());
    }

    private Minutes minutesOf(Visit visit, int percent) {
        return new Minutes(forecastOf(visit), percent);
    }

    private VisitForecast forecastOf(Visit visit) {
        return forecasts.computeIfAbsent(visit.id(), id -> day.forecastOf(visit));
    }

    private Map<String, Estimate.Range> left() {
        Map<String, Estimate.Range> ranges = new LinkedHashMap<>();
        for (Visit visit : day.visits()) {
            List<Task> left =
                    visit.tasks().stream().filter(task -> !task.isDone()).toList();
            if (visit.state().isOpen() && !left.isEmpty()) {
                ranges.put(visit.id(), forecastOf(visit).rangeOf(left));
            }
        }
        return ranges;
    }

    private Problem.Stay stay(Visit visit, Stay stay, Minutes minutes) {
        List<String> kinds = stay.kinds().stream().map(Problems::kind).toList();
        return new Problem.Stay(
                kinds,
                stay.placeId().or(() -> pins.placeOf(visit, stay)),
                stay.tasks().stream()
                        .map(task -> overBy(task(visit, task, minutes), leftAt(visit, stay)))
                        .toList());
    }

    /** The minute from which work has begun in a later stay; the machine has left this one then. */
    private OptionalInt leftAt(Visit visit, Stay stay) {
        return visit.stays().stream()
                .skip(visit.stays().indexOf(stay) + 1L)
                .flatMap(later -> later.tasks().stream())
                .flatMap(task -> task.progress().began().stream())
                .mapToInt(this::minute)
                .min();
    }

    /** Whoever went on did not wait until it had drained: what was still to go of unattended minutes then is over. */
    private static Problem.Task overBy(Problem.Task task, OptionalInt left) {
        if (left.isEmpty() || task.done().isEmpty()) {
            return task;
        }
        int least = task.handsOn() == 0 ? 1 : 0; // a task lasts at least a minute
        int waited = Math.max(least, left.getAsInt() - task.done().get().end());
        return task.withUnattended(Math.min(task.unattended(), waited));
    }

    private Problem.Task task(Visit visit, Task task, Minutes minutes) {
        Problem.Task plain = new Problem.Task(
                task.id(),
                skill(task.skill()),
                minutes.of(task),
                task.unattended(),
                Optional.of(task.after()),
                handsOnBy(task, minutes),
                1,
                notBy(visit, task),
                partsFrom(visit, task),
                Optional.empty(),
                OptionalInt.empty(),
                minutes.forecast().spreadOf(task),
                Optional.empty(),
                Optional.empty());
        Problem.Task pinned = pins.task(visit, task, plain);
        return visit.state() == VisitState.HELD ? held(visit, task, pinned, minutes) : begun(task, pinned, minutes);
    }

    /** What has begun has its parts; what has not waits for those that are not here. */
    private int partsFrom(Visit visit, Task task) {
        return task.hasBegun()
                ? 0
                : Math.max(0, parts.notBefore(visit.id(), task.id()).orElse(0));
    }

    private Problem.Task begun(Task task, Problem.Task plain, Minutes minutes) {
        Progress progress = task.progress();
        int from = minute(progress.began().orElse(now));
        return switch (progress.status()) {
            case TO_DO -> plain;
            case DONE ->
                plain.withDone(new Problem.Done(
                        task.handsOn() == 0 ? Optional.empty() : progress.person(),
                        from,
                        Math.max(from, minute(progress.ended().orElse(now)))));
            case RUNNING, PAUSED ->
                plain.withStarted(new Problem.Started(
                        progress.person(), from, minutes.within(task, Spell.minutesLeft(day, task, now))));
        };
    }

    /** Nothing of a held visit goes on before its hold is expected to end; meanwhile it keeps the place it stands in. */
    private Problem.Task held(Visit visit, Task task, Problem.Task plain, Minutes minutes) {
        Problem.Task waiting = begun(task, plain, minutes);
        return task.isDone()
                ? waiting
                : waiting.withNotBefore(Math.max(
                        waiting.notBefore(), minute(visit.hold().orElseThrow().until())));
    }

    private Map<String, Integer> handsOnBy(Task task, Minutes minutes) {
        Map<String, Integer> byPerson = new LinkedHashMap<>();
        int usual = minutes.of(task);
        for (Person person : day.shop().people()) {
            if (task.isFor(person) && minutes.of(task, person) != usual) {
                byPerson.put(person.id(), minutes.of(task, person));
            }
        }
        return byPerson;
    }

    /** What a problem gives the tasks of one visit. */
    private record Minutes(VisitForecast forecast, int percent) {
        int of(Task task) {
            return within(task, forecast.minutes(task));
        }

        int of(Task task, Person person) {
            return within(task, forecast.minutes(task, person));
        }

        int within(Task task, int likely) {
            return percent == Foresight.LEAST_PERCENT ? likely : forecast.within(task, likely, percent);
        }
    }

    /** Tasks whose doer may not do this one; none where that would leave nobody at all. */
    private List<String> notBy(Visit visit, Task task) {
        if (task.isDone() || !OwnWork.canBeKept(day, visit, task)) {
            return List.of();
        }
        return task.notBy().stream()
                .filter(other -> visit.findTask(other).isPresent())
                .toList();
    }

    /** The posted plan on this day's minutes, less the visits that are no longer planned. */
    private Plan rebased(Posted posted, List<Problem.Job> jobs) {
        int shift = day.minuteOf(posted.origin());
        Set<String> planned = jobs.stream().map(Problem.Job::id).collect(Collectors.toSet());
        Plan plan = posted.plan();
        return new Plan(
                0,
                0,
                List.of(),
                plan.stays().stream()
                        .filter(stay -> planned.contains(stay.job()))
                        .map(stay -> new Plan.StayPlace(
                                stay.job(),
                                stay.stay(),
                                stay.place(),
                                moved(stay.from(), shift),
                                moved(stay.to(), shift)))
                        .toList(),
                plan.tasks().stream()
                        .filter(task -> planned.contains(task.job()))
                        .map(task -> new Plan.TaskTime(
                                task.job(),
                                task.stay(),
                                task.task(),
                                task.person(),
                                task.with(),
                                moved(task.start(), shift),
                                moved(task.end(), shift)))
                        .toList(),
                plan.seed(),
                plan.tries(),
                plan.millis());
    }

    private static int moved(int minute, int shift) {
        return Math.max(0, minute + shift);
    }

    private int minute(Instant at) {
        return Math.max(0, day.minuteOf(at));
    }

    static String kind(PlaceKind kind) {
        return kind.name().toLowerCase(Locale.ROOT);
    }

    static String skill(Skill skill) {
        return skill.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
