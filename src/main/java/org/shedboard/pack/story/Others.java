package org.shedboard.pack.story;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.shedboard.pack.Problem;
import org.shedboard.pack.numbers.Engagements;
import org.shedboard.pack.numbers.FlatProblem;
import org.shedboard.pack.numbers.Hours;
import org.shedboard.pack.numbers.PlanReading;

/** Tries other people and other places for one task of a plan. Part of {@link Why}. */
final class Others {
    private final FlatProblem flat;
    private final PlanReading plan;
    private final Engagements engagements;
    private final int task;
    private final int stay;

    Others(FlatProblem flat, PlanReading plan, Engagements engagements, int task) {
        this.flat = flat;
        this.plan = plan;
        this.engagements = engagements;
        this.task = task;
        stay = flat.stayOfTask[task];
    }

    /** Everybody who is not on it; nobody stands in for one of several. */
    List<Instead> people() {
        boolean isBegun = flat.state[task] == FlatProblem.DONE || flat.state[task] == FlatProblem.GOING;
        if (isBegun || plan.who[task].length != 1) {
            return List.of();
        }
        return IntStream.range(0, flat.people)
                .filter(person -> person != plan.who[task][0])
                .mapToObj(this::person)
                .toList();
    }

    private Instead person(int person) {
        String id = flat.problem.people().get(person).id();
        return barOf(person)
                .map(bar -> Instead.never(id, bar))
                .orElseGet(() -> tried(id, new int[] {person}, plan.placeOfStay[stay]));
    }

    private Optional<Instead.Bar> barOf(int person) {
        if (!flat.isAble[task * flat.people + person]) {
            return Optional.of(Instead.Bar.SKILL);
        }
        if (flat.pinnedTo[task] >= 0 && flat.pinnedTo[task] != person) {
            return Optional.of(Instead.Bar.PINNED);
        }
        boolean isApart = Arrays.stream(flat.apart[task])
                .anyMatch(other -> Arrays.stream(plan.who[other]).anyMatch(who -> who == person));
        return isApart ? Optional.of(Instead.Bar.APART) : Optional.empty();
    }

    /** The other places of its kind; a stay that has begun goes nowhere else. */
    List<Instead> places() {
        int place = plan.placeOfStay[stay];
        if (place < 0 || flat.stayHasBegun[stay]) {
            return List.of();
        }
        List<String> kinds = flat.stay(stay).kinds();
        List<Instead> others = new ArrayList<>();
        for (int other = 0; other < flat.places; other++) {
            Problem.Place each = flat.problem.places().get(other);
            if (other != place && kinds.contains(each.kind())) {
                others.add(place(other, each));
            }
        }
        return others;
    }

    private Instead place(int number, Problem.Place place) {
        if (flat.job(flat.jobOfTask[task]).massKg() > place.ratedKg()) {
            return Instead.never(place.id(), Instead.Bar.RATED);
        }
        boolean isOpen = Arrays.stream(flat.placesOfStay[stay]).anyMatch(each -> each == number);
        return isOpen ? tried(place.id(), plan.who[task], number) : Instead.never(place.id(), Instead.Bar.PINNED);
    }

    private Instead tried(String id, int[] who, int place) {
        int[][] people = plan.who.clone();
        people[task] = who;
        int[] places = plan.placeOfStay.clone();
        places[stay] = place;
        StartCheck check = new StartCheck(flat, plan.with(people, plan.start, places, plan.order), engagements, task);
        return new Instead(id, Optional.empty(), earliest(check, who), check.against(plan.start[task]));
    }

    private OptionalInt earliest(StartCheck check, int[] who) {
        return IntStream.rangeClosed(Math.max(flat.problem.now(), check.noEarlierThan()), plan.start[task])
                .filter(minute -> endOf(who, minute) <= plan.end[task])
                .filter(minute -> check.against(minute).isEmpty())
                .findFirst();
    }

    private int endOf(int[] who, int minute) {
        return Arrays.stream(who)
                .map(person -> {
                    Hours hours = flat.hours[person];
                    return hours.end(hours.worked(minute) + flat.minutes[task][person]);
                })
                .max()
                .orElse(minute);
    }
}
