package org.shedboard.pack.lab;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToIntFunction;
import org.shedboard.pack.Problem;

/** All tasks of a problem with what each waits for, and the minutes between which each must lie. */
final class Network {
    final Problem problem;
    final Map<String, WorkCalendar> calendars = new LinkedHashMap<>();
    final List<Work> all = new ArrayList<>();

    Network(Problem problem) {
        this.problem = problem;
        problem.people().forEach(person -> calendars.put(person.id(), new WorkCalendar(person, problem.horizon())));
        problem.jobs().forEach(this::add);
        all.forEach(this::settle);
        setEarliest();
        setLatest(job -> problem.horizon());
    }

    List<Work> of(Problem.Job job) {
        return all.stream().filter(work -> work.job == job).toList();
    }

    List<Work> of(Problem.Job job, int stay) {
        return all.stream()
                .filter(work -> work.job == job && work.stayIndex == stay)
                .toList();
    }

    private void add(Problem.Job job) {
        for (int stay = 0; stay < job.stays().size(); stay++) {
            List<Work> here = new ArrayList<>();
            for (Problem.Task task : job.stays().get(stay).tasks()) {
                here.add(new Work(job, stay, task));
            }
            for (int index = 0; index < here.size(); index++) {
                for (int waited : job.stays().get(stay).waitsFor(index)) {
                    here.get(index).before.add(here.get(waited));
                }
                here.get(index).before.addAll(stay == 0 ? List.of() : of(job, stay - 1));
            }
            all.addAll(here);
        }
    }

    private void settle(Work work) {
        Problem.Task task = work.task;
        if (task.done().isPresent()) {
            work.settledEnd = task.done().get().end();
        } else if (work.isGoing()) {
            Problem.Started started = task.started().orElseThrow();
            work.settledEnd = calendars.get(started.person().orElseThrow()).end(problem.now(), started.left());
            if (work.settledEnd < 0) {
                throw new IllegalArgumentException(work.job.id() + " has begun and cannot be finished");
            }
        } else if (task.handsOn() > 0) {
            problem.people().stream()
                    .filter(person -> mayDo(work, person))
                    .forEach(person -> work.able.put(person.id(), minutes(task, person)));
            Problem.Stay stay = work.job.stays().get(work.stayIndex);
            if (stay.hasBegun()) {
                problem.places().stream()
                        .filter(place -> stay.place().equals(Optional.of(place.id())))
                        .forEach(place -> work.closed.addAll(place.closed()));
            }
        }
    }

    private static boolean mayDo(Work work, Problem.Person person) {
        boolean free = work.isInterrupted() || work.task.people() > 1;
        boolean pinnedAway = !free && !work.task.person().orElse(person.id()).equals(person.id());
        return person.skills().contains(work.task.skill()) && !pinnedAway;
    }

    private static int minutes(Problem.Task task, Problem.Person person) {
        return task.started().map(Problem.Started::left).orElse(task.minutesBy(person.id()));
    }

    private void setEarliest() {
        all.forEach(work -> work.earliest = -1);
        all.forEach(this::earliest);
    }

    private int earliest(Work work) {
        if (work.earliest < 0) {
            int least = Math.max(problem.now(), Math.max(work.job.arrives(), work.task.notBefore()));
            for (Work before : work.before) {
                least = Math.max(least, earliestComplete(before));
            }
            work.earliest = least;
        }
        return work.earliest;
    }

    /** No plan has it complete earlier; the horizon, when no plan has it at all. */
    int earliestComplete(Work work) {
        if (work.isSettled()) {
            return work.settledEnd + work.task.unattended();
        }
        int start = Math.min(earliest(work), problem.horizon());
        int end = work.able.entrySet().stream()
                .mapToInt(able -> calendars.get(able.getKey()).end(start, able.getValue()))
                .filter(minute -> minute >= 0)
                .min()
                .orElse(work.task.handsOn() == 0 ? start : problem.horizon());
        return Math.min(problem.horizon(), end + work.task.unattended());
    }

    /** @param finish the minute after which no plan worth looking at finishes the job */
    void setLatest(ToIntFunction<Problem.Job> finish) {
        all.forEach(work -> work.latestComplete = finish.applyAsInt(work.job));
        boolean more = true;
        while (more) {
            more = false;
            for (Work work : all) {
                for (Work before : work.before) {
                    int latest = latestStart(work);
                    if (!work.isSettled() && latest < before.latestComplete) {
                        before.latestComplete = latest;
                        more = true;
                    }
                }
            }
        }
    }

    private int latestStart(Work work) {
        int end = work.latestEnd();
        if (work.task.handsOn() == 0) {
            return end;
        }
        int least =
                work.able.values().stream().mapToInt(Integer::intValue).min().orElse(0);
        return end - least;
    }
}
