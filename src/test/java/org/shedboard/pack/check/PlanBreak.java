package org.shedboard.pack.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Supplier;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Span;
import org.shedboard.pack.fault.ProblemCheck;

/** One way to break one rule, and the rule that must then be named. */
enum PlanBreak {
    A_TASK_IS_MISSING(
            Rule.LISTED,
            (day, broken) -> day.tasks()
                    .forEach(at -> broken.of(at, day.bent().without(at.time).refitted()))),
    A_TASK_IS_LISTED_TWICE(
            Rule.LISTED,
            (day, broken) -> day.tasks().forEach(at -> broken.of(at, day.bent().plus(at.time)))),
    A_TASK_NOBODY_KNOWS_IS_LISTED(
            Rule.LISTED,
            (day, broken) -> day.tasks().forEach(at -> {
                Plan.TaskTime unknown = named(at.time, at.time.job(), "unheard-of");
                broken.of(
                        at.time.job(), at.time.stay(), "unheard-of", day.bent().plus(unknown));
            })),
    A_JOB_NOBODY_KNOWS_IS_LISTED(
            Rule.LISTED,
            (day, broken) -> day.tasks().forEach(at -> {
                Plan.TaskTime unknown = named(at.time, "unheard-of", at.time.task());
                broken.of(
                        "unheard-of", at.time.stay(), at.time.task(), day.bent().plus(unknown));
            })),
    A_JOB_NOBODY_KNOWS_IS_LEFT_OUT(
            Rule.LISTED,
            (day, broken) -> broken.of("unheard-of", -1, "", day.bent().plus(new Plan.Unplaced("unheard-of", "")))),
    A_PLACED_JOB_IS_ALSO_LEFT_OUT(
            Rule.LISTED,
            (day, broken) ->
                    day.tasks().forEach(at -> broken.of(at, day.bent().plus(new Plan.Unplaced(at.time.job(), ""))))),
    A_JOB_IS_NEITHER_PLACED_NOR_LEFT_OUT(
            Rule.LISTED,
            (day, broken) -> day.tasks().forEach(at -> broken.of(at, day.bent().without(at.time.job())))),
    A_STAY_IS_MISSING(
            Rule.LISTED,
            (day, broken) -> day.stays().forEach(at -> broken.of(at, day.bent().without(at.place)))),
    A_STAY_IS_LISTED_TWICE(
            Rule.LISTED,
            (day, broken) -> day.stays().forEach(at -> broken.of(at, day.bent().plus(at.place)))),
    A_STAY_WITHOUT_A_PLACE_HAS_ONE(
            Rule.LISTED,
            (day, broken) -> day.tasks().forEach(at -> {
                if (at.stay.kinds().isEmpty()) {
                    String place = day.problem.places().get(0).id();
                    Plan.StayPlace spare =
                            new Plan.StayPlace(at.time.job(), at.time.stay(), place, at.time.start(), at.time.end());
                    broken.of(at.time.job(), at.time.stay(), "", day.bent().plus(spare));
                }
            })),

    THE_COST_IS_ONE_TOO_LOW(
            Rule.COST, (day, broken) -> broken.costing(day.bent().costing(day.plan.cost() - 1))),
    THE_COST_IS_ONE_TOO_HIGH(
            Rule.COST, (day, broken) -> broken.costing(day.bent().costing(day.plan.cost() + 1))),

    SOMEONE_DOES_BOTH_OF_WHAT_NOT_BY_PARTS(
            Rule.NOT_BY,
            (day, broken) -> day.open().forEach(at -> {
                for (DayPlan.At other : day.tasks()) {
                    boolean isNamed =
                            other.job == at.job && at.task.notBy().contains(other.task.id()) && other.task != at.task;
                    boolean hasCrew =
                            at.time.person().isPresent() && other.time.person().isPresent();
                    if (isNamed && hasCrew) {
                        List<String> people = new ArrayList<>(at.time.with());
                        people.remove(other.time.person().get());
                        people.add(0, other.time.person().get());
                        broken.of(at, day.bent().by(at.time, at.task, people).refitted());
                    }
                }
            })),

    SOMEONE_WITHOUT_THE_SKILL_DOES_IT(
            Rule.CREW,
            (day, broken) -> day.open().forEach(at -> {
                for (Problem.Person person : day.problem.people()) {
                    if (at.time.person().isPresent() && !person.skills().contains(at.task.skill())) {
                        List<String> people = new ArrayList<>(at.time.people());
                        people.set(people.size() - 1, person.id());
                        broken.of(at, day.bent().by(at.time, at.task, people).refitted());
                    }
                }
            })),
    SOMEONE_NOBODY_KNOWS_DOES_IT(
            Rule.CREW,
            (day, broken) -> day.open().forEach(at -> {
                if (at.time.person().isPresent()) {
                    broken.of(at, day.bent().by(at.time, at.task, List.of("unheard-of")));
                }
            })),
    ONE_TOO_FEW_DO_IT(
            Rule.CREW,
            (day, broken) -> day.open().forEach(at -> {
                if (at.time.person().isPresent()) {
                    List<String> fewer =
                            at.time.people().subList(1, at.time.people().size());
                    broken.of(at, day.bent().by(at.time, at.task, fewer));
                }
            })),
    ONE_TOO_MANY_DO_IT(
            Rule.CREW,
            (day, broken) -> day.tasks().forEach(at -> {
                List<String> more = new ArrayList<>(at.time.people());
                day.problem.people().stream()
                        .map(Problem.Person::id)
                        .filter(id -> !more.contains(id))
                        .findFirst()
                        .ifPresent(more::add);
                if (at.task.done().isEmpty() && more.size() > at.time.people().size()) {
                    broken.of(at, day.bent().by(at.time, at.task, more));
                }
            })),
    THE_SAME_PERSON_DOES_IT_TWICE_OVER(
            Rule.CREW,
            (day, broken) -> day.tasks().forEach(at -> {
                if (at.task.done().isEmpty() && at.time.person().isPresent()) {
                    String who = at.time.person().get();
                    broken.of(at, day.bent().by(at.time, at.task, List.of(who, who)));
                }
            })),
    ITS_END_IS_NOT_THE_LAST_ONES(
            Rule.CREW,
            (day, broken) -> day.tasks().forEach(at -> {
                if (at.task.done().isEmpty() && at.task.started().isEmpty() || at.isGoing()) {
                    broken.of(
                            at,
                            day.bent()
                                    .with(at.time, ending(at.time, at.time.end() + 1))
                                    .refitted());
                    broken.of(
                            at,
                            day.bent()
                                    .with(at.time, ending(at.time, at.time.end() - 1))
                                    .refitted());
                }
            })),
    IT_ENDS_IN_A_BREAK(
            Rule.CREW,
            (day, broken) -> day.open()
                    .forEach(at -> day.breakAfter(at)
                            .ifPresent(minute -> broken.of(
                                    at,
                                    day.bent()
                                            .with(at.time, ending(at.time, minute + 1))
                                            .refitted())))),

    IT_STARTS_IN_A_BREAK(
            Rule.HOURS,
            (day, broken) -> day.open()
                    .forEach(at -> day.breakAfter(at)
                            .ifPresent(minute -> broken.of(
                                    at,
                                    day.bent().moved(at.time, at.task, minute).refitted())))),
    SOMEONE_IS_BUSY_WITH_ANOTHER_TASK(
            Rule.HOURS,
            (day, broken) -> day.open().forEach(at -> {
                for (DayPlan.At other : day.open()) {
                    boolean isSamePerson =
                            at.time.person().isPresent() && at.time.person().equals(other.time.person());
                    if (isSamePerson && at != other) {
                        broken.ofEither(
                                at,
                                other,
                                day.bent()
                                        .moved(at.time, at.task, other.time.start())
                                        .refitted());
                    }
                }
            })),
    SOMEONE_IS_TAKEN_FROM_WHAT_THEY_GO_ON_WITH(
            Rule.HOURS,
            (day, broken) -> day.open().forEach(at -> {
                for (DayPlan.At going : day.tasks()) {
                    if (going.isGoing() && at.time.person().equals(going.time.person())) {
                        broken.ofEither(
                                at,
                                going,
                                day.bent()
                                        .moved(at.time, at.task, day.problem.now())
                                        .refitted());
                    }
                }
            })),
    THE_HOURS_DO_NOT_SUFFICE(
            Rule.HOURS,
            (day, broken) -> day.open()
                    .forEach(at -> at.time.person().ifPresent(who -> {
                        List<Windows.Stretch> all = day.bent().hours.get(who).work(0, ProblemCheck.LARGEST);
                        int minute = all.isEmpty() ? 0 : all.get(all.size() - 1).to() - 1;
                        if (at.task.minutesBy(who) > 1) {
                            broken.of(
                                    at,
                                    day.bent().moved(at.time, at.task, minute).refitted());
                        }
                    }))),

    A_MACHINE_LEAVES_BEFORE_IT_IS_COMPLETE(
            Rule.COMPLETION,
            (day, broken) -> day.stays()
                    .forEach(at -> broken.of(
                            at, day.bent().with(at.place, spanning(at.place, at.place.from(), at.place.to() - 1))))),
    A_MACHINE_STAYS_ON(
            Rule.COMPLETION,
            (day, broken) -> day.stays()
                    .forEach(at -> broken.of(
                            at, day.bent().with(at.place, spanning(at.place, at.place.from(), at.place.to() + 1))))),

    IT_STARTS_BEFORE_NOW(
            Rule.EARLIEST,
            (day, broken) -> day.open().forEach(at -> {
                if (day.problem.now() > 0) {
                    broken.of(
                            at,
                            day.bent()
                                    .moved(at.time, at.task, day.problem.now() - 1)
                                    .refitted());
                }
            })),
    IT_STARTS_BEFORE_ITS_MACHINE_IS_THERE(
            Rule.EARLIEST,
            (day, broken) -> day.open().forEach(at -> {
                if (at.job.arrives() > 0) {
                    broken.of(
                            at,
                            day.bent()
                                    .moved(at.time, at.task, at.job.arrives() - 1)
                                    .refitted());
                }
            })),
    IT_STARTS_BEFORE_IT_MAY(
            Rule.EARLIEST,
            (day, broken) -> day.open().forEach(at -> {
                if (at.task.notBefore() > 0) {
                    broken.of(
                            at,
                            day.bent()
                                    .moved(at.time, at.task, at.task.notBefore() - 1)
                                    .refitted());
                }
            })),
    IT_STARTS_BEFORE_WHAT_IT_WAITS_FOR_IS_COMPLETE(
            Rule.EARLIEST,
            (day, broken) -> day.open().forEach(at -> {
                for (int waited : at.stay.waitsFor(at.stay.indexOf(at.task.id()))) {
                    DayPlan.At before = day.at(
                            at.job, at.time.stay(), at.stay.tasks().get(waited).id());
                    int tooEarly = before.time.end() + before.task.unattended() - 1;
                    broken.of(at, day.bent().moved(at.time, at.task, tooEarly).refitted());
                }
            })),

    IT_IS_IN_A_PLACE_OF_ANOTHER_KIND(
            Rule.PLACE,
            (day, broken) -> day.openStays().forEach(at -> {
                for (Problem.Place place : day.problem.places()) {
                    if (!at.stay.kinds().contains(place.kind())) {
                        broken.of(at, day.bent().with(at.place, in(at.place, place.id())));
                    }
                }
            })),
    IT_IS_TOO_HEAVY_FOR_ITS_PLACE(
            Rule.PLACE,
            (day, broken) -> day.openStays().forEach(at -> {
                for (Problem.Place place : day.problem.places()) {
                    if (place.ratedKg() < at.job.massKg()) {
                        broken.of(at, day.bent().with(at.place, in(at.place, place.id())));
                    }
                }
            })),
    IT_IS_IN_A_PLACE_NOBODY_KNOWS(
            Rule.PLACE,
            (day, broken) ->
                    day.stays().forEach(at -> broken.of(at, day.bent().with(at.place, in(at.place, "unheard-of"))))),
    TWO_MACHINES_ARE_IN_ONE_PLACE(
            Rule.PLACE,
            (day, broken) -> day.openStays().forEach(at -> {
                for (DayPlan.StayAt other : day.stays()) {
                    Span common = day.commonMinutes(at, other);
                    if (other.job != at.job
                            && common.minutes() > 0
                            && !other.place.place().equals(at.place.place())) {
                        broken.ofEither(at, other, day.bent().with(at.place, in(at.place, other.place.place())));
                    }
                }
            })),
    IT_IS_IN_A_CLOSED_PLACE(
            Rule.PLACE,
            (day, broken) -> day.openStays().forEach(at -> {
                for (Problem.Place place : day.problem.places()) {
                    boolean isShut = place.closed().stream()
                            .anyMatch(span ->
                                    span.minutes() > 0 && span.overlaps(Span.of(at.place.from(), at.place.to())));
                    if (isShut) {
                        broken.of(at, day.bent().with(at.place, in(at.place, place.id())));
                    }
                }
            })),
    IT_COMES_BEFORE_ITS_FIRST_TASK(
            Rule.PLACE,
            (day, broken) -> day.stays()
                    .forEach(at -> broken.of(
                            at, day.bent().with(at.place, spanning(at.place, at.place.from() - 1, at.place.to()))))),
    IT_COMES_AFTER_ITS_FIRST_TASK(
            Rule.PLACE,
            (day, broken) -> day.stays()
                    .forEach(at -> broken.of(
                            at, day.bent().with(at.place, spanning(at.place, at.place.from() + 1, at.place.to()))))),

    A_STAY_STARTS_BEFORE_THE_ONE_BEFORE_IS_COMPLETE(
            Rule.STAY_ORDER,
            (day, broken) -> day.open().forEach(at -> {
                if (at.time.stay() > 0) {
                    int complete = day.completeOf(at.job, at.time.stay() - 1);
                    broken.of(
                            at, day.bent().moved(at.time, at.task, complete - 1).refitted());
                }
            })),

    SOMEONE_ELSE_THAN_THE_PINNED_DOES_IT(
            Rule.KEPT,
            (day, broken) -> day.open().forEach(at -> {
                for (Problem.Person person : day.problem.people()) {
                    boolean isAway =
                            at.task.person().isPresent() && !at.time.people().contains(person.id());
                    if (isAway && at.task.handsOn() > 0) {
                        List<String> people = new ArrayList<>(at.time.people());
                        people.set(people.indexOf(at.task.person().get()), person.id());
                        broken.of(at, day.bent().by(at.time, at.task, people).refitted());
                    }
                }
            })),
    IT_STARTS_BESIDE_ITS_PINNED_MINUTE(
            Rule.KEPT,
            (day, broken) -> day.open()
                    .forEach(at -> at.task
                            .at()
                            .ifPresent(minute -> broken.of(
                                    at,
                                    day.bent()
                                            .moved(at.time, at.task, minute + 1)
                                            .refitted())))),
    IT_IS_IN_ANOTHER_PLACE_THAN_THE_PINNED(
            Rule.KEPT,
            (day, broken) -> day.stays().forEach(at -> {
                for (Problem.Place place : day.problem.places()) {
                    if (at.stay.place().isPresent() && !at.stay.place().get().equals(place.id())) {
                        broken.of(at, day.bent().with(at.place, in(at.place, place.id())));
                    }
                }
            })),
    WHAT_IS_DONE_HAS_ANOTHER_START(
            Rule.KEPT,
            (day, broken) -> day.tasks().forEach(at -> {
                if (at.task.hasBegun()) {
                    broken.of(
                            at,
                            day.bent()
                                    .with(at.time, starting(at.time, at.time.start() + 1))
                                    .refitted());
                }
            })),
    WHAT_IS_DONE_HAS_ANOTHER_END(
            Rule.KEPT,
            (day, broken) -> day.tasks().forEach(at -> {
                if (at.task.done().isPresent()) {
                    broken.of(
                            at,
                            day.bent()
                                    .with(at.time, ending(at.time, at.time.end() + 1))
                                    .refitted());
                }
            })),
    WHAT_HAS_BEGUN_HAS_ANOTHER_PERSON(
            Rule.KEPT,
            (day, broken) -> day.tasks().forEach(at -> {
                for (Problem.Person person : day.problem.people()) {
                    boolean isOther = !at.time.person().equals(Optional.of(person.id()));
                    if (isOther && (at.task.done().isPresent() || at.isGoing())) {
                        broken.of(at, day.bent().by(at.time, at.task, List.of(person.id())));
                    }
                }
            })),

    IT_ENDS_BEYOND_THE_HORIZON(
            Rule.HORIZON,
            (day, broken) -> day.open()
                    .forEach(at -> broken.of(
                            at,
                            day.bent()
                                    .moved(at.time, at.task, day.problem.horizon() + 1)
                                    .refitted()))),
    A_JOB_THAT_HAS_BEGUN_IS_LEFT_OUT(
            Rule.HORIZON,
            (day, broken) -> day.tasks().forEach(at -> {
                if (at.job.hasBegun()) {
                    String job = at.job.id();
                    broken.of(job, -1, "", day.bent().without(job).plus(new Plan.Unplaced(job, "")));
                }
            }));

    final Rule rule;
    private final BiConsumer<DayPlan, Collector> way;

    PlanBreak(Rule rule, BiConsumer<DayPlan, Collector> way) {
        this.rule = rule;
        this.way = way;
    }

    /**
     * A broken plan, made when asked for, and where the breach must be named.
     *
     * @param other a second place that will do as well, where two lines break the rule together
     */
    record Broken(Supplier<Plan> plan, Where where, Where other) {
        boolean isNamedBy(PlanCheck check, Rule rule) {
            return check.breaches().stream()
                    .filter(breach -> breach.rule() == rule)
                    .anyMatch(breach -> where.isMetBy(breach) || other.isMetBy(breach));
        }
    }

    /** A task, a stay where {@code task} is empty, a job where {@code stay} is -1. */
    record Where(String job, int stay, String task) {
        boolean isMetBy(Breach breach) {
            boolean isTask = breach.stay() == stay && breach.task().equals(task);
            boolean isWholeJob = stay < 0 && breach.stay() < 0;
            return breach.job().equals(job) && (isTask || isWholeJob);
        }
    }

    /** Takes the broken plans as they come. */
    static final class Collector {
        final List<Broken> all = new ArrayList<>();

        void of(DayPlan.At at, BentPlan bent) {
            of(at.time.job(), at.time.stay(), at.time.task(), bent);
        }

        void of(DayPlan.StayAt at, BentPlan bent) {
            of(at.place.job(), at.place.stay(), "", bent);
        }

        void of(String job, int stay, String task, BentPlan bent) {
            Where where = new Where(job, stay, task);
            all.add(new Broken(bent::priced, where, where));
        }

        void costing(Plan plan) {
            Where where = new Where("", -1, "");
            all.add(new Broken(() -> plan, where, where));
        }

        void ofEither(DayPlan.At one, DayPlan.At other, BentPlan bent) {
            Where first = new Where(one.time.job(), one.time.stay(), one.time.task());
            all.add(new Broken(bent::priced, first, new Where(other.time.job(), other.time.stay(), other.time.task())));
        }

        void ofEither(DayPlan.StayAt one, DayPlan.StayAt other, BentPlan bent) {
            Where first = new Where(one.place.job(), one.place.stay(), "");
            all.add(new Broken(bent::priced, first, new Where(other.place.job(), other.place.stay(), "")));
        }
    }

    /** Every plan that this way can make of the day's. */
    List<Broken> of(DayPlan day) {
        Collector collector = new Collector();
        way.accept(day, collector);
        return collector.all;
    }

    private static Plan.TaskTime named(Plan.TaskTime time, String job, String task) {
        return new Plan.TaskTime(job, time.stay(), task, time.person(), time.with(), time.start(), time.end());
    }

    private static Plan.TaskTime starting(Plan.TaskTime time, int start) {
        return new Plan.TaskTime(time.job(), time.stay(), time.task(), time.person(), time.with(), start, time.end());
    }

    private static Plan.TaskTime ending(Plan.TaskTime time, int end) {
        return new Plan.TaskTime(time.job(), time.stay(), time.task(), time.person(), time.with(), time.start(), end);
    }

    private static Plan.StayPlace in(Plan.StayPlace at, String place) {
        return new Plan.StayPlace(at.job(), at.stay(), place, at.from(), at.to());
    }

    private static Plan.StayPlace spanning(Plan.StayPlace at, int from, int to) {
        return new Plan.StayPlace(at.job(), at.stay(), at.place(), from, to);
    }
}
