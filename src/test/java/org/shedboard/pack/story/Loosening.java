package org.shedboard.pack.story;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Span;
import org.shedboard.pack.Unpinned;

/** Takes reasons out of the world of one task: the machine comes earlier, there is somebody else or another place, and so on. */
final class Loosening {
    private Loosening() {}

    static HandShift without(HandShift shift, List<Reason> reasons) {
        HandShift loose = shift;
        for (Reason reason : reasons) {
            loose = reason instanceof Reason.StayBefore ? loose : without(loose, reason);
        }
        boolean split = reasons.stream().anyMatch(Reason.StayBefore.class::isInstance);
        return split ? withoutStaysBefore(loose) : loose;
    }

    private static HandShift without(HandShift shift, Reason reason) {
        if (reason instanceof Reason.Arrival) {
            return changed(shift, job -> job.withArrives(0));
        } else if (reason instanceof Reason.Part) {
            return changedTask(shift, task -> task.withNotBefore(0));
        } else if (reason instanceof Reason.Pinned) {
            return changedTask(shift, Unpinned::of);
        } else if (reason instanceof Reason.Task waits) {
            return withoutWaiting(shift, waits.task());
        } else if (reason instanceof Reason.PlaceTaken) {
            return elsewhere(shift);
        } else if (reason instanceof Reason.PlaceClosed closed) {
            return open(shift, closed.place());
        } else if (reason instanceof Reason.Busy busy) {
            return byAnother(shift, busy.person(), Optional.empty());
        } else if (reason instanceof Reason.Off off) {
            return byAnother(shift, off.person(), Optional.of(Span.of(off.from(), off.until())));
        }
        throw new IllegalArgumentException("nothing can be done about " + reason);
    }

    private static HandShift changed(HandShift shift, UnaryOperator<Problem.Job> change) {
        Problem problem = shift.problem();
        List<Problem.Job> jobs = problem.jobs().stream()
                .map(job -> job.id().equals(shift.job()) ? change.apply(job) : job)
                .toList();
        return new HandShift(problem.withJobs(jobs), shift.plan(), shift.job(), shift.stay(), shift.task());
    }

    private static HandShift changedStay(HandShift shift, UnaryOperator<Problem.Stay> change) {
        return changed(shift, job -> {
            List<Problem.Stay> stays = new ArrayList<>(job.stays());
            stays.set(shift.stay(), change.apply(stays.get(shift.stay())));
            return job.withStays(stays);
        });
    }

    private static HandShift changedTask(HandShift shift, UnaryOperator<Problem.Task> change) {
        return changedStay(
                shift,
                stay -> stay.withTasks(stay.tasks().stream()
                        .map(task -> task.id().equals(shift.task()) ? change.apply(task) : task)
                        .toList()));
    }

    private static HandShift withoutWaiting(HandShift shift, String other) {
        Problem.Stay stay = shift.jobValues().stays().get(shift.stay());
        String[] rest = stay.waitsFor(stay.indexOf(shift.task())).stream()
                .map(index -> stay.tasks().get(index).id())
                .filter(id -> !id.equals(other))
                .toArray(String[]::new);
        return changedTask(shift, task -> task.withAfter(rest));
    }

    private static HandShift elsewhere(HandShift shift) {
        Plan.StayPlace at = shift.plan().findStay(shift.job(), shift.stay()).orElseThrow();
        List<Problem.Place> places = new ArrayList<>(shift.problem().places());
        Problem.Place place = places.stream()
                .filter(each -> each.id().equals(at.place()))
                .findFirst()
                .orElseThrow();
        String spare = place.id() + "-spare";
        places.add(new Problem.Place(spare, place.kind(), place.ratedKg(), place.closed()));
        List<Plan.StayPlace> stays = shift.plan().stays().stream()
                .map(each ->
                        each.equals(at) ? new Plan.StayPlace(at.job(), at.stay(), spare, at.from(), at.to()) : each)
                .toList();
        HandShift moved = with(
                shift, shift.problem().withPlaces(places), stays, shift.plan().tasks());
        return changedStay(moved, stay -> stay.place().isPresent() ? stay.withPlace(spare) : stay);
    }

    private static HandShift open(HandShift shift, String place) {
        String now =
                shift.plan().findStay(shift.job(), shift.stay()).orElseThrow().place();
        List<Problem.Place> places = shift.problem().places().stream()
                .map(each -> each.id().equals(place) || each.id().equals(now) ? each.withClosed() : each)
                .toList();
        return with(
                shift,
                shift.problem().withPlaces(places),
                shift.plan().stays(),
                shift.plan().tasks());
    }

    /** Somebody with the same skills, pace and hours, and some more hours, does it instead. */
    private static HandShift byAnother(HandShift shift, String person, Optional<Span> more) {
        String spare = person.endsWith("-spare") ? person : person + "-spare";
        String now = shift.time().people().contains(spare) ? spare : person;
        List<Problem.Person> people = new ArrayList<>(shift.problem().people());
        Problem.Person own = people.stream()
                .filter(each -> each.id().equals(now))
                .findFirst()
                .orElseThrow();
        List<Span> overtime = new ArrayList<>(own.overtime());
        more.ifPresent(overtime::add);
        people.removeIf(each -> each.id().equals(spare));
        people.add(new Problem.Person(spare, own.skills(), own.shifts(), overtime, 0));
        int minutes = shift.values().minutesBy(now);
        List<Plan.TaskTime> times = shift.plan().tasks().stream()
                .map(each -> each.equals(shift.time()) ? by(each, now, spare) : each)
                .toList();
        HandShift changed =
                with(shift, shift.problem().withPeople(people), shift.plan().stays(), times);
        return changedTask(changed, task -> {
            Map<String, Integer> by = new LinkedHashMap<>(task.handsOnBy());
            by.put(spare, minutes);
            Problem.Task quick = task.withHandsOnBy(by);
            return task.person().filter(now::equals).isPresent() ? quick.withPerson(spare) : quick;
        });
    }

    private static Plan.TaskTime by(Plan.TaskTime time, String person, String spare) {
        List<String> people = time.people().stream()
                .map(each -> each.equals(person) ? spare : each)
                .toList();
        return new Plan.TaskTime(
                time.job(),
                time.stay(),
                time.task(),
                people.stream().findFirst(),
                people.subList(1, people.size()),
                time.start(),
                time.end());
    }

    /** The stays before become a machine of their own. */
    private static HandShift withoutStaysBefore(HandShift shift) {
        String own = shift.job();
        int first = shift.stay();
        List<Problem.Job> jobs = new ArrayList<>();
        for (Problem.Job job : shift.problem().jobs()) {
            if (job.id().equals(own)) {
                jobs.add(new Problem.Job(
                        own + "-before",
                        job.weight(),
                        job.massKg(),
                        job.arrives(),
                        job.promise(),
                        0,
                        job.stays().subList(0, first)));
                jobs.add(job.withStays(job.stays().subList(first, job.stays().size())));
            } else {
                jobs.add(job);
            }
        }
        List<Plan.StayPlace> stays = shift.plan().stays().stream()
                .map(each -> !each.job().equals(own)
                        ? each
                        : new Plan.StayPlace(
                                jobOf(own, each.stay(), first),
                                stayOf(each.stay(), first),
                                each.place(),
                                each.from(),
                                each.to()))
                .toList();
        List<Plan.TaskTime> times = shift.plan().tasks().stream()
                .map(each -> !each.job().equals(own)
                        ? each
                        : new Plan.TaskTime(
                                jobOf(own, each.stay(), first),
                                stayOf(each.stay(), first),
                                each.task(),
                                each.person(),
                                each.with(),
                                each.start(),
                                each.end()))
                .toList();
        HandShift split = with(shift, shift.problem().withJobs(jobs), stays, times);
        return new HandShift(split.problem(), split.plan(), own, 0, shift.task());
    }

    private static String jobOf(String job, int stay, int first) {
        return stay < first ? job + "-before" : job;
    }

    private static int stayOf(int stay, int first) {
        return stay < first ? stay : stay - first;
    }

    private static HandShift with(
            HandShift shift, Problem problem, List<Plan.StayPlace> stays, List<Plan.TaskTime> tasks) {
        Plan plan = new Plan(0, 0, shift.plan().unplaced(), stays, tasks, 0, 0, 0);
        return new HandShift(problem, plan, shift.job(), shift.stay(), shift.task());
    }
}
