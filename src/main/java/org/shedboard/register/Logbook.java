package org.shedboard.register;

import java.util.ArrayList;
import java.util.List;

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
