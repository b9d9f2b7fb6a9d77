package org.shedboard.register;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What was read, done and said of machines over time.
 *
 * @param readings of their meters
 * @param serviced visits that are finished
 * @param rung owners who were rung about a service
 */
public record Logbook(List<Reading> readings, List<Serviced> serviced, List<Rung> rung) {
    public static final Logbook EMPTY = new Logbook(List.of(), List.of(), List.of());

    public Logbook {
        readings = List.copyOf(readings);
        serviced = List.copyOf(serviced);
        rung = List.copyOf(rung);
    }

    public Logbook plus(Reading reading) {
        return new Logbook(joined(readings, reading), serviced, rung);
    }

    public Logbook plus(Rung call) {
        return new Logbook(readings, serviced, joined(rung, call));
    }

    /** With all that is said of one machine said of another: they are the same. */
    Logbook moved(String from, String to) {
        return new Logbook(
                readings.stream()
                        .map(each -> each.machineId().equals(from) ? each.of(to) : each)
                        .toList(),
                serviced.stream()
                        .map(each -> each.machineId().equals(from) ? each.of(to) : each)
                        .toList(),
                rung.stream()
                        .map(each -> each.machineId().equals(from) ? each.of(to) : each)
                        .toList());
    }

    /** With this visit, in place of what was known of it. */
    public Logbook with(Serviced visit) {
        List<Serviced> next = new ArrayList<>(serviced);
        next.removeIf(each -> each.visitId().equals(visit.visitId()));
        next.add(visit);
        return new Logbook(readings, next, rung);
    }

    /**
     * With what is newer of some visits, readings and calls in place of what was known of them.
     *
     * @param visitIds those of which all that is known is in it, if it is only that they are not finished
     */
    public Logbook renewed(Set<String> visitIds, Logbook newer) {
        return new Logbook(
                renewed(readings, Reading::id, ids(newer.readings, Reading::id), newer.readings, Reading::at),
                renewed(serviced, Serviced::visitId, visitIds, newer.serviced, Serviced::finished),
                renewed(rung, Rung::id, ids(newer.rung, Rung::id), newer.rung, Rung::at));
    }

    private static <T> Set<String> ids(List<T> all, Function<T, String> id) {
        return all.stream().map(id).collect(Collectors.toSet());
    }

    private static <T> List<T> renewed(
            List<T> known, Function<T, String> id, Set<String> ids, List<T> newer, Function<T, Instant> at) {
        if (newer.isEmpty() && known.stream().map(id).noneMatch(ids::contains)) {
            return known;
        }
        List<T> next = new ArrayList<>(known);
        next.removeIf(each -> ids.contains(id.apply(each)));
        next.addAll(newer);
        next.sort(Comparator.comparing(at).thenComparing(id));
        return next;
    }

    /** A visit that was finished is not. */
    public Logbook without(String visitId) {
        List<Serviced> next = new ArrayList<>(serviced);
        next.removeIf(each -> each.visitId().equals(visitId));
        return new Logbook(readings, next, rung);
    }

    private static <T> List<T> joined(List<T> all, T one) {
        List<T> next = new ArrayList<>(all);
        next.add(one);
        return next;
    }

    public List<Reading> readingsOf(String machineId) {
        return readings.stream()
                .filter(reading -> reading.machineId().equals(machineId))
                .toList();
    }
}
