package org.shedboard.pack.story;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Span;
import org.shedboard.pack.check.PlanCheck;
import org.shedboard.pack.check.Rule;

/** Moves one task of a plan by hand, minute by minute through its people's windows, and asks the checker whether that is allowed. */
record HandShift(Problem problem, Plan plan, String job, int stay, String task) {
    Problem.Task values() {
        Problem.Stay in = jobValues().stays().get(stay);
        return in.tasks().get(in.indexOf(task));
    }

    Problem.Job jobValues() {
        return problem.jobs().stream()
                .filter(each -> each.id().equals(job))
                .findFirst()
                .orElseThrow();
    }

    Plan.TaskTime time() {
        return plan.findTask(job, stay, task).orElseThrow();
    }

    boolean isInterrupted() {
        return values().started().isPresent();
    }

    boolean isLegalAt(int minute) {
        int end = minute;
        for (String person : time().people()) {
            int minutes = values().started().map(Problem.Started::left).orElse(values().minutesBy(person));
            Optional<Integer> own = endOf(person, minute, minutes);
            if (own.isEmpty()) {
                return false;
            }
            end = Math.max(end, own.get());
        }
        return PlanCheck.of(problem, at(minute, end)).breaches().stream()
                .allMatch(breach -> breach.rule() == Rule.COST);
    }

    /** Empty where the person is not in at that minute, or not long enough any more. */
    private Optional<Integer> endOf(String id, int from, int minutes) {
        Problem.Person person = problem.people().stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow();
        List<Span> windows = Stream.concat(person.shifts().stream(), person.overtime().stream())
                .toList();
        int left = minutes;
        for (int minute = from; minute < problem.horizon(); minute++) {
            int now = minute;
            boolean in = windows.stream().anyMatch(window -> window.contains(now));
            if (!in && minute == from) {
                return Optional.empty();
            }
            left -= in ? 1 : 0;
            if (left == 0) {
                return Optional.of(minute + 1);
            }
        }
        return Optional.empty();
    }

    private Plan at(int minute, int end) {
        List<Plan.TaskTime> times = new ArrayList<>();
        for (Plan.TaskTime each : plan.tasks()) {
            boolean own = each.equals(time());
            int start = isInterrupted() ? each.start() : minute;
            times.add(own ? new Plan.TaskTime(job, stay, task, each.person(), each.with(), start, end) : each);
        }
        List<Plan.StayPlace> stays = new ArrayList<>();
        for (Plan.StayPlace each : plan.stays()) {
            stays.add(each.job().equals(job) && each.stay() == stay ? reckoned(each, times) : each);
        }
        return new Plan(0, 0, plan.unplaced(), stays, times, 0, 0, 0);
    }

    private Plan.StayPlace reckoned(Plan.StayPlace at, List<Plan.TaskTime> times) {
        List<Plan.TaskTime> own = times.stream()
                .filter(each -> each.job().equals(job) && each.stay() == stay)
                .toList();
        int from = own.stream().mapToInt(Plan.TaskTime::start).min().orElseThrow();
        Problem.Stay in = jobValues().stays().get(stay);
        int to = own.stream()
                .map(each ->
                        each.end() + in.tasks().get(in.indexOf(each.task())).unattended())
                .max(Comparator.naturalOrder())
                .orElseThrow();
        return new Plan.StayPlace(job, stay, at.place(), from, to);
    }
}
