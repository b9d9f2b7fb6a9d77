package org.shedboard.tally;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shedboard.hours.Activity.OtherWork;
import org.shedboard.hours.Stretch.Use;
import org.shedboard.hours.Tally;
import org.shedboard.hours.Tally.PersonHours;
import org.shedboard.shop.Owner;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;
import org.shedboard.shop.WorkKind;

/**
 * A span of days looked back upon.
 *
 * @param byKind minutes on machines by kind of work; what no record tells apart comes under no kind
 * @param other minutes of other work by kind
 * @param owners what was done for each owner, the most worked for first
 * @param weeks the ratios week by week, in order
 * @param overruns the ten visits that went most over
 */
public record LookBack(
        SpanTally tally,
        Map<Optional<WorkKind>, Integer> byKind,
        Map<OtherWork.Kind, Integer> other,
        List<OwnerHours> owners,
        List<Week> weeks,
        List<Overrun> overruns) {
    /**
     * What was done for one owner.
     *
     * @param worked minutes worked on their machines in the span
     * @param chargeable minutes to be charged for those finished in it, whoever pays
     */
    public record OwnerHours(Owner owner, int visits, int worked, int chargeable) {}

    /** The ratios of one week, or of the part of it that is in the span. */
    public record Week(LocalDate monday, Ratio onMachinesOfAttended, Ratio estimatedOfOnMachines) {}

    public LookBack {
        byKind = new LinkedHashMap<>(byKind);
        other = new LinkedHashMap<>(other);
        owners = List.copyOf(owners);
        weeks = List.copyOf(weeks);
        overruns = List.copyOf(overruns);
    }

    /** @param noted what the journal tells of the visits of the ledger */
    public static LookBack of(Ledger ledger, List<Noted> noted) {
        SpanTally tally = SpanTally.of(ledger);
        Map<OtherWork.Kind, Integer> other = new EnumMap<>(OtherWork.Kind.class);
        Map<Optional<WorkKind>, Integer> kinds = new LinkedHashMap<>();
        for (PersonHours person : tally.hours().people()) {
            person.other().forEach((kind, minutes) -> other.merge(kind, minutes, Integer::sum));
            tally.byKind(person.onStays()).forEach((kind, minutes) -> kinds.merge(kind, minutes, Integer::sum));
        }
        return new LookBack(
                tally, mostFirst(kinds), mostFirst(other), owners(tally), weeks(tally), overruns(ledger, noted));
    }

    private static <K> Map<K, Integer> mostFirst(Map<K, Integer> minutes) {
        Map<K, Integer> sorted = new LinkedHashMap<>();
        minutes.entrySet().stream()
                .sorted(Map.Entry.<K, Integer>comparingByValue().reversed())
                .forEach(entry -> sorted.put(entry.getKey(), entry.getValue()));
        return sorted;
    }

    private static List<OwnerHours> owners(SpanTally tally) {
        Map<String, OwnerHours> owners = new LinkedHashMap<>();
        for (VisitTally visit : tally.visits()) {
            Owner owner = tally.ledger().books().ownerOf(visit.visit());
            owners.merge(
                    owner.id(),
                    new OwnerHours(owner, 1, visit.worked(), visit.chargeable()),
                    (one, more) -> new OwnerHours(
                            owner,
                            one.visits() + 1,
                            one.worked() + more.worked(),
                            one.chargeable() + more.chargeable()));
        }
        return owners.values().stream()
                .sorted(Comparator.comparingInt(OwnerHours::worked)
                        .reversed()
                        .thenComparing(hours -> hours.owner().name()))
                .toList();
    }

    private static List<Week> weeks(SpanTally tally) {
        Map<LocalDate, int[]> sums = new LinkedHashMap<>(); // attended, on machines, estimated
        tally.hours().days().stream()
                .sorted(Comparator.comparing(day -> day.date()))
                .forEach(day -> {
                    int[] week = sums.computeIfAbsent(mondayOf(day.date()), monday -> new int[3]);
                    week[0] += day.attended();
                    week[1] += day.minutes(use -> use == Use.ON_MACHINE);
                });
        for (VisitTally visit : tally.visits()) {
            for (Task task : visit.visit().tasks()) {
                task.progress()
                        .ended()
                        .filter(tally.ledger()::isWithin)
                        .map(tally.ledger()::dateOf)
                        .map(LookBack::mondayOf)
                        .filter(sums::containsKey)
                        .ifPresent(monday -> sums.get(monday)[2] += task.isDone() ? task.handsOn() : 0);
            }
        }
        List<Week> weeks = new ArrayList<>();
        sums.forEach((monday, week) ->
                weeks.add(new Week(monday, new Ratio(week[1], week[0]), new Ratio(week[2], week[1]))));
        return weeks;
    }

    private static LocalDate mondayOf(LocalDate date) {
        return date.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    }

    private static List<Overrun> overruns(Ledger ledger, List<Noted> noted) {
        List<Visit> finished = ledger.visits().stream()
                .filter(visit -> visit.finished().filter(ledger::isWithin).isPresent())
                .toList();
        Map<String, Tally.VisitHours> worked = new LinkedHashMap<>();
        ledger.book()
                .tally(ledger.firstDate(), ledger.until(), ledger.now())
                .visits()
                .forEach(visit -> worked.put(visit.visitId(), visit));
        return new Overruns(worked, noted).of(finished);
    }
}
