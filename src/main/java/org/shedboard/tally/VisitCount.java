package org.shedboard.tally;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.shedboard.hours.Activity.OnStay;
import org.shedboard.hours.LineShares;
import org.shedboard.hours.Tally;
import org.shedboard.hours.TimeBook;
import org.shedboard.shop.Line;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;

/** Counts what the visits of a ledger took, and what is charged for them. */
final class VisitCount {
    private static final Tally.VisitHours NOTHING = new Tally.VisitHours("", Map.of(), Map.of(), 0);

    private final Ledger ledger;
    private final Map<String, Tally.VisitHours> inSpan;
    private final Map<String, Tally.VisitHours> inAll;

    VisitCount(Ledger ledger, Tally hours, TimeBook book) {
        this.ledger = ledger;
        this.inSpan = byVisit(hours);
        LocalDate first = ledger.firstDate();
        this.inAll = first.isBefore(ledger.from()) ? byVisit(book.tally(first, ledger.until(), ledger.now())) : inSpan;
    }

    private static Map<String, Tally.VisitHours> byVisit(Tally hours) {
        Map<String, Tally.VisitHours> visits = new LinkedHashMap<>();
        hours.visits().forEach(visit -> visits.put(visit.visitId(), visit));
        return visits;
    }

    List<VisitTally> visits() {
        return ledger.visits().stream()
                .filter(visit -> inSpan.containsKey(visit.id()) || isFinishedHere(visit))
                .map(this::visit)
                .toList();
    }

    private boolean isFinishedHere(Visit visit) {
        return visit.finished().filter(ledger::isWithin).isPresent();
    }

    private VisitTally visit(Visit visit) {
        Tally.VisitHours took = inSpan.getOrDefault(visit.id(), NOTHING);
        List<Task> ended =
                visit.tasks().stream().filter(task -> endedHere(task)).toList();
        return new VisitTally(
                visit,
                handsOn(ended),
                took.worked(),
                cleaning(took.onStays()),
                mostFirst(took.people()),
                took.lent(),
                lines(visit, took.onStays(), ended),
                earlier(visit));
    }

    private boolean endedHere(Task task) {
        return task.isDone() && task.progress().ended().filter(ledger::isWithin).isPresent();
    }

    private static int handsOn(List<Task> tasks) {
        return tasks.stream().mapToInt(Task::handsOn).sum();
    }

    private static int cleaning(Map<OnStay, Integer> onStays) {
        return onStays.entrySet().stream()
                .filter(entry -> LineShares.isCleaning(entry.getKey()))
                .mapToInt(Map.Entry::getValue)
                .sum();
    }

    private static Map<String, Integer> mostFirst(Map<String, Integer> people) {
        List<Map.Entry<String, Integer>> entries = new ArrayList<>(people.entrySet());
        entries.sort(Collections.reverseOrder(Map.Entry.comparingByValue()));
        Map<String, Integer> sorted = new LinkedHashMap<>();
        entries.forEach(entry -> sorted.put(entry.getKey(), entry.getValue()));
        return sorted;
    }

    private List<LineTally> lines(Visit visit, Map<OnStay, Integer> onStays, List<Task> ended) {
        LineShares shares = new LineShares(visit);
        Map<String, Integer> estimated = shares.ofEstimates(ended);
        Map<String, Integer> worked = shares.ofWork(onStays);
        Map<String, Integer> cleaning = shares.ofCleaning(onStays);
        return visit.lines().stream()
                .map(line -> new LineTally(
                        line,
                        estimated.get(line.id()),
                        worked.get(line.id()),
                        cleaning.get(line.id()),
                        chargeable(visit, line, shares)))
                .toList();
    }

    private OptionalInt chargeable(Visit visit, Line line, LineShares shares) {
        if (!isFinishedHere(visit) || !line.payer().isOutside()) {
            return OptionalInt.empty();
        }
        int worked =
                shares.ofWork(inAll.getOrDefault(visit.id(), NOTHING).onStays()).get(line.id());
        int estimated = shares.ofEstimates(visit.tasks()).get(line.id());
        return OptionalInt.of(ledger.books().hoursRules().chargeable(line, worked, estimated));
    }

    /** The newest visit of the same machine that was over before this one came. */
    private Optional<Visit> earlier(Visit visit) {
        if (visit.lines().stream().allMatch(line -> line.payer().isOutside())) {
            return Optional.empty();
        }
        Instant came = visit.intake().arrives();
        return ledger.before().stream()
                .filter(other -> other.machineId().equals(visit.machineId())
                        && !other.id().equals(visit.id()))
                .filter(other ->
                        other.finished().filter(done -> !done.isAfter(came)).isPresent())
                .max(Comparator.comparing(other -> other.finished().orElseThrow()));
    }
}
