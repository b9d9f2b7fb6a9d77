package org.shedboard.pack.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Span;

/** Rules 3 and 5, and rule 7 for places. */
final class StayRules {
    private final Problem problem;
    private final Plan plan;
    private final Listing listing;
    private final List<Breach> breaches;

    StayRules(Problem problem, Plan plan, Listing listing, List<Breach> breaches) {
        this.problem = problem;
        this.plan = plan;
        this.listing = listing;
        this.breaches = breaches;
    }

    void check() {
        List<Plan.StayPlace> judged = new ArrayList<>();
        for (Problem.Job job : listing.placed()) {
            for (int index = 0; index < job.stays().size(); index++) {
                checkListed(job, index, judged);
            }
        }
        plan.stays().stream().filter(stay -> !judged.contains(stay)).forEach(this::reportSpare);
        for (int one = 0; one < judged.size(); one++) {
            for (int other = one + 1; other < judged.size(); other++) {
                checkTogether(judged.get(one), judged.get(other));
            }
        }
    }

    private void say(Rule rule, String job, int stay, String what, Object... values) {
        breaches.add(new Breach(rule, job, stay, "", what.formatted(values)));
    }

    private void reportSpare(Plan.StayPlace stay) {
        say(Rule.LISTED, stay.job(), stay.stay(), "a stay that needs no place, or is not in the plan, is listed");
    }

    private void checkListed(Problem.Job job, int index, List<Plan.StayPlace> judged) {
        Problem.Stay stay = job.stays().get(index);
        if (stay.kinds().isEmpty()) {
            return;
        }
        List<Plan.StayPlace> found = plan.stays().stream()
                .filter(at -> at.job().equals(job.id()) && at.stay() == index)
                .toList();
        if (found.size() != 1) {
            say(Rule.LISTED, job.id(), index, "listed in %s places", found.size());
        }
        judged.addAll(found);
        for (Plan.StayPlace at : found) {
            checkTimes(job, index, at);
            checkPlace(job, stay, at);
        }
    }

    private void checkTimes(Problem.Job job, int index, Plan.StayPlace at) {
        List<Entry> entries = listing.of(job, index);
        int from =
                entries.stream().mapToInt(entry -> entry.time().start()).min().orElse(at.from());
        int to = entries.stream().mapToInt(Entry::complete).max().orElse(at.to());
        if (at.from() != from) {
            say(Rule.PLACE, at.job(), index, "is there from %s, but starts at %s", at.from(), from);
        }
        if (at.to() != to) {
            say(Rule.COMPLETION, at.job(), index, "is there to %s, but is complete at %s", at.to(), to);
        }
    }

    private void checkPlace(Problem.Job job, Problem.Stay stay, Plan.StayPlace at) {
        if (stay.place().isPresent() && !stay.place().get().equals(at.place())) {
            say(
                    Rule.KEPT,
                    job.id(),
                    at.stay(),
                    "belongs in %s, not in %s",
                    stay.place().get(),
                    at.place());
        }
        Optional<Problem.Place> place = problem.places().stream()
                .filter(one -> one.id().equals(at.place()))
                .findFirst();
        if (place.isEmpty()) {
            say(Rule.PLACE, job.id(), at.stay(), "there is no place %s", at.place());
            return;
        }
        if (stay.hasBegun()) {
            checkWorkInClosed(job, at, place.get());
            return;
        }
        if (!stay.kinds().contains(place.get().kind())) {
            say(
                    Rule.PLACE,
                    job.id(),
                    at.stay(),
                    "%s is a %s",
                    at.place(),
                    place.get().kind());
        }
        if (place.get().ratedKg() < job.massKg()) {
            say(Rule.PLACE, job.id(), at.stay(), "%s kg in %s", job.massKg(), at.place());
        }
        for (Span closed : place.get().closed()) {
            if (closed.minutes() > 0 && closed.from() < at.to() && at.from() < closed.to()) {
                say(
                        Rule.PLACE,
                        job.id(),
                        at.stay(),
                        "%s is closed from %s to %s",
                        at.place(),
                        closed.from(),
                        closed.to());
            }
        }
    }

    /** A machine that is already there may stand through, without work on it. */
    private void checkWorkInClosed(Problem.Job job, Plan.StayPlace at, Problem.Place place) {
        for (Entry entry : listing.of(job, at.stay())) {
            for (String person : entry.time().people()) {
                for (Windows.Stretch work : entry.workOf(person, problem.now())) {
                    checkStretch(entry, work, place);
                }
            }
        }
    }

    private void checkStretch(Entry entry, Windows.Stretch work, Problem.Place place) {
        for (Span closed : place.closed()) {
            if (closed.minutes() > 0 && work.from() < closed.to() && closed.from() < work.to()) {
                breaches.add(entry.breach(Rule.PLACE, "is worked on while %s is closed", place.id()));
            }
        }
    }

    private void checkTogether(Plan.StayPlace one, Plan.StayPlace other) {
        int from = Math.max(problem.now(), Math.max(one.from(), other.from()));
        if (one.place().equals(other.place()) && from < Math.min(one.to(), other.to())) {
            say(Rule.PLACE, one.job(), one.stay(), "%s also holds %s at %s", one.place(), other.job(), from);
        }
    }
}
