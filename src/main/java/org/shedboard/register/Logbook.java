package org.shedboard.register;

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

    public List<Reading> readingsOf(String machineId) {
        return readings.stream()
                .filter(reading -> reading.machineId().equals(machineId))
                .toList();
    }
}
