package org.shedboard.pack.story;

import java.util.ArrayList;
import java.util.List;
import org.shedboard.pack.Span;
import org.shedboard.pack.numbers.Engagements;
import org.shedboard.pack.numbers.FlatProblem;
import org.shedboard.pack.numbers.Hours;
import org.shedboard.pack.numbers.PlanReading;

/** What forbids one task of a plan to start at another minute, with everything else of the plan as it is. Part of {@link Why}. */
final class StartCheck {
    private final FlatProblem flat;
    private final PlanReading plan;
    private final Engagements engagements;
    private final int task;
    private final int stay;
    private final int place;
    private final boolean interrupted;

    StartCheck(FlatProblem flat, PlanReading plan, Engagements engagements, int task) {
        this.flat = flat;
        this.plan = plan;
        this.engagements = engagements;
        this.task = task;
        stay = flat.stayOfTask[task];
        place = plan.placeOfStay[stay];
        interrupted = flat.state[task] == FlatProblem.INTERRUPTED;
    }

    /** Before this minute it is forbidden by something that never ends sooner. */
    int noEarlierThan() {
        int minute = Math.max(flat.earliest[task], flat.at[task]);
        for (int waited : flat.before[task]) {
            minute = Math.max(minute, completion(waited));
        }
        return followsStay() ? Math.max(minute, engagements.to(stay - 1)) : minute;
    }

    private boolean followsStay() {
        return stay > flat.firstStay[flat.jobOfStay[stay]] && !interrupted;
    }

    private int completion(int other) {
        return plan.end[other] + flat.unattended[other];
    }

    /** All that forbids it; before now, where nothing else is judged, only that. */
    List<Reason> against(int minute) {
        if (minute < flat.problem.now()) {
            return List.of(new Reason.Now(flat.problem.now()));
        }
        List<Reason> reasons = new ArrayList<>();
        int arrives = flat.job(flat.jobOfTask[task]).arrives();
        addIf(minute, new Reason.Arrival(arrives), arrives, reasons);
        int part = flat.task[task].notBefore();
        addIf(minute, new Reason.Part(part), part, reasons);
        addIf(minute, new Reason.Pinned(flat.at[task]), flat.at[task], reasons);
        for (int waited : flat.before[task]) {
            int complete = completion(waited);
            addIf(minute, new Reason.Task(flat.task[waited].id(), complete), complete, reasons);
        }
        if (followsStay()) {
            int over = engagements.to(stay - 1);
            addIf(minute, new Reason.StayBefore(indexOf(stay - 1), over), over, reasons);
        }
        addPeople(minute, reasons);
        if (place >= 0 && !flat.stayHasBegun[stay]) {
            addPlace(minute, reasons);
        }
        return reasons;
    }

    private static void addIf(int minute, Reason reason, int until, List<Reason> reasons) {
        if (minute < until) {
            reasons.add(reason);
        }
    }

    private int indexOf(int other) {
        return other - flat.firstStay[flat.jobOfStay[other]];
    }

    private void addPeople(int minute, List<Reason> reasons) {
        for (int person : plan.who[task]) {
            Hours hours = flat.hours[person];
            int from = hours.worked(minute);
            int to = from + flat.minutes[task][person];
            if (hours.wall(from) != minute) {
                int since = from == 0 ? 0 : hours.end(from);
                reasons.add(new Reason.Off(nameOf(person), since, hours.wall(from)));
            } else {
                addWork(person, from, to, reasons);
            }
        }
    }

    private void addWork(int person, int from, int to, List<Reason> reasons) {
        for (Engagements.Work work : engagements.ofPerson(person)) {
            if (work.task() != task && from < work.to() && work.from() < to) {
                reasons.add(busy(person, work));
            }
        }
        if (place >= 0 && flat.stayHasBegun[stay]) {
            addClosed(flat.hours[person], from, to, reasons);
        }
    }

    private String nameOf(int person) {
        return flat.problem.people().get(person).id();
    }

    private Reason busy(int person, Engagements.Work work) {
        int other = flat.stayOfTask[work.task()];
        return new Reason.Busy(
                nameOf(person),
                flat.job(flat.jobOfStay[other]).id(),
                indexOf(other),
                flat.task[work.task()].id(),
                flat.hours[person].end(work.to()));
    }

    /** A machine that is there already may stand through a closed time, without work on it. */
    private void addClosed(Hours hours, int from, int to, List<Reason> reasons) {
        for (Span span : flat.closed[place]) {
            int shut = hours.worked(span.from());
            int open = hours.worked(span.to());
            if (shut < open && from < open && shut < to) {
                reasons.add(new Reason.PlaceClosed(placeName(), span.to()));
            }
        }
    }

    private String placeName() {
        return flat.problem.places().get(place).id();
    }

    private void addPlace(int minute, List<Reason> reasons) {
        Span there = Span.of(Math.min(minute, othersFrom()), stayTo(minute));
        for (Span span : flat.closed[place]) {
            if (span.overlaps(there)) {
                reasons.add(new Reason.PlaceClosed(placeName(), span.to()));
            }
        }
        for (int other : engagements.staysIn(place)) {
            int from = Math.max(flat.problem.now(), engagements.from(other));
            if (other != stay && from < there.to() && there.from() < engagements.to(other)) {
                String job = flat.job(flat.jobOfStay[other]).id();
                reasons.add(new Reason.PlaceTaken(placeName(), job, indexOf(other), engagements.to(other)));
            }
        }
    }

    private int othersFrom() {
        int from = Hours.FAR;
        for (int other = flat.firstTask[stay]; other < flat.firstTask[stay + 1]; other++) {
            from = other == task ? from : Math.min(from, plan.start[other]);
        }
        return from;
    }

    private int stayTo(int minute) {
        int end = minute;
        for (int person : plan.who[task]) {
            Hours hours = flat.hours[person];
            end = Math.max(end, hours.end(hours.worked(minute) + flat.minutes[task][person]));
        }
        int to = end + flat.unattended[task];
        for (int other = flat.firstTask[stay]; other < flat.firstTask[stay + 1]; other++) {
            to = other == task ? to : Math.max(to, completion(other));
        }
        return to;
    }
}
