package org.shedboard.tally;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.shedboard.hours.LineShares;
import org.shedboard.hours.Tally;
import org.shedboard.shop.Line;
import org.shedboard.shop.Step;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;
import org.shedboard.tally.Overrun.Cause;

/**
 * Finds the finished visits that went most over what was estimated when they came, and tells why: each minute over goes to one cause,
 * in the order mud, lines added, lines on our own account, the work itself.
 */
final class Overruns {
    private static final int MOST = 10;

    private final Map<String, Tally.VisitHours> worked;
    private final List<Noted> noted;

    Overruns(Map<String, Tally.VisitHours> worked, List<Noted> noted) {
        this.worked = worked;
        this.noted = noted;
    }

    List<Overrun> of(List<Visit> finished) {
        return finished.stream()
                .filter(visit -> worked.containsKey(visit.id()))
                .map(this::overrun)
                .filter(overrun -> overrun.over() > 0)
                .sorted(Comparator.comparingInt(Overrun::over).reversed())
                .limit(MOST)
                .toList();
    }

    private Overrun overrun(Visit visit) {
        Tally.VisitHours took = worked.get(visit.id());
        LineShares shares = new LineShares(visit);
        Set<String> added = linesAdded(visit);
        Set<String> ours = visit.lines().stream()
                .filter(line -> !line.payer().isOutside() && !added.contains(line.id()))
                .map(Line::id)
                .collect(Collectors.toSet());
        Map<String, Integer> estimates = shares.ofEstimates(visit.tasks());
        int all = estimates.values().stream().mapToInt(Integer::intValue).sum();
        int estimated = all - sum(estimates, added);
        List<Cause> causes = new ArrayList<>();
        int left = took.worked() - estimated;
        left -= add(causes, mudKind(visit), Math.min(left, cleaningOver(visit, took, shares)));
        Map<String, Integer> work = shares.ofWork(took.onStays());
        left -= add(causes, Cause.Kind.ADD_ON, Math.min(left, sum(work, added)));
        left -= add(causes, Cause.Kind.REWORK, Math.min(left, sum(work, ours)));
        add(causes, Cause.Kind.WORK, left);
        causes.sort(Comparator.comparingInt(Cause::minutes).reversed());
        add(causes, Cause.Kind.WAITING, heldMinutes(visit));
        return new Overrun(visit, estimated, took.worked(), causes);
    }

    private static int add(List<Cause> causes, Cause.Kind kind, int minutes) {
        if (minutes <= 0) {
            return 0;
        }
        causes.add(new Cause(kind, minutes));
        return minutes;
    }

    private static int sum(Map<String, Integer> minutes, Set<String> lines) {
        return lines.stream().mapToInt(line -> minutes.getOrDefault(line, 0)).sum();
    }

    private static int cleaningOver(Visit visit, Tally.VisitHours took, LineShares shares) {
        int cleaned = shares.ofCleaning(took.onStays()).values().stream()
                .mapToInt(Integer::intValue)
                .sum();
        int foreseen = visit.stays().stream()
                .filter(stay -> stay.step() == Step.WASH)
                .flatMap(stay -> stay.tasks().stream())
                .mapToInt(Task::handsOn)
                .sum();
        return cleaned - foreseen;
    }

    private Cause.Kind mudKind(Visit visit) {
        return has(visit, Noted.Kind.MUD_CHANGED) ? Cause.Kind.MUD_CHANGED : Cause.Kind.MUD;
    }

    private boolean has(Visit visit, Noted.Kind kind) {
        return noted.stream()
                .anyMatch(each -> each.kind() == kind && each.visitId().equals(visit.id()));
    }

    private Set<String> linesAdded(Visit visit) {
        return noted.stream()
                .filter(each ->
                        each.kind() == Noted.Kind.WORK_ADDED && each.visitId().equals(visit.id()))
                .map(Noted::lineId)
                .collect(Collectors.toSet());
    }

    /** Minutes from each hold to the release that followed it. */
    private int heldMinutes(Visit visit) {
        List<Noted> own = noted.stream()
                .filter(each -> each.visitId().equals(visit.id()))
                .sorted(Comparator.comparing(Noted::at))
                .toList();
        long minutes = 0;
        Instant since = null;
        for (Noted each : own) {
            if (each.kind() == Noted.Kind.HELD && since == null) {
                since = each.at();
            } else if (each.kind() == Noted.Kind.RELEASED && since != null) {
                minutes += Duration.between(since, each.at()).toMinutes();
                since = null;
            }
        }
        return (int) minutes;
    }
}
