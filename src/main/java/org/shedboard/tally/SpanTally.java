package org.shedboard.tally;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.shedboard.hours.Activity.OnStay;
import org.shedboard.hours.Tally;
import org.shedboard.hours.TimeBook;
import org.shedboard.shop.Step;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;
import org.shedboard.shop.WorkKind;

/**
 * The tally of the days of a ledger.
 *
 * @param hours the hours of its people
 * @param visits each visit somebody worked on in the span, and each that was finished in it
 */
public record SpanTally(
        Ledger ledger, Tally hours, List<VisitTally> visits, List<HoistHours> hoists, Promises promises) {
    public SpanTally {
        visits = List.copyOf(visits);
        hoists = List.copyOf(hoists);
    }

    public static SpanTally of(Ledger ledger) {
        TimeBook book = ledger.book();
        Tally hours = book.tally(ledger.from(), ledger.until(), ledger.now());
        return new SpanTally(
                ledger,
                hours,
                new VisitCount(ledger, hours, book).visits(),
                HoistHours.of(ledger),
                Promises.of(ledger));
    }

    public int estimated() {
        return visits.stream().mapToInt(VisitTally::estimated).sum();
    }

    public int chargeable() {
        return visits.stream().mapToInt(VisitTally::chargeable).sum();
    }

    /** How much of the time people were here they worked on machines. */
    public Ratio onMachinesOfAttended() {
        return new Ratio(hours.onMachines(), hours.attended());
    }

    /** How much of the time on machines the catalogue had foreseen. */
    public Ratio estimatedOfOnMachines() {
        return new Ratio(estimated(), hours.onMachines());
    }

    public boolean isClosed() {
        return ledger.openings().stream().allMatch(opening -> opening.closed().isPresent());
    }

    /** Minutes on machines by kind of work; what no record tells apart comes under no kind. */
    public Map<Optional<WorkKind>, Integer> byKind(Map<OnStay, Integer> onStays) {
        Map<String, Visit> byId = visitsById();
        Map<Optional<WorkKind>, Integer> kinds = new LinkedHashMap<>();
        onStays.forEach((on, minutes) -> kinds.merge(kindOf(byId, on), minutes, Integer::sum));
        return kinds;
    }

    private Map<String, Visit> visitsById() {
        return ledger.visits().stream().collect(Collectors.toMap(Visit::id, Function.identity()));
    }

    private static Optional<WorkKind> kindOf(Map<String, Visit> visits, OnStay on) {
        Optional<WorkKind> told = Optional.ofNullable(visits.get(on.visitId()))
                .flatMap(visit -> on.taskId().flatMap(visit::findTask))
                .map(Task::kind);
        return told.or(() -> on.step() == Step.WASH ? Optional.of(WorkKind.CLEAN) : Optional.empty());
    }
}
