package org.shedboard.register;

import java.util.List;
import java.util.Optional;

/** Why a reading is asked about before it is believed. */
public enum MeterDoubt {
    /** It is lower than the one before. */
    BACKWARDS,
    /** The machine would have run more than a day has. */
    IMPOSSIBLE,
    /** It ran several times what it usually runs. */
    LEAP,
    /** The machine has so far been read in the other unit alone. */
    OTHER_UNIT;

    /** More than so many times the most it usually runs is worth a question; the number is invented. */
    private static final double LEAPS = 3;
    /** So many busy days are no leap, however little it is used otherwise: hay is made while the sun shines. Invented too. */
    private static final double BUSY_DAYS = 3;

    /**
     * What is doubtful about a reading.
     *
     * @param earlier the readings of its machine so far, in any unit
     * @param usual what machines like it run in the reading's unit, where it has too few readings of its own
     */
    public static Optional<MeterDoubt> of(List<Reading> earlier, Reading reading, Optional<UsePerDay> usual) {
        List<Reading> same = earlier.stream()
                .filter(each -> each.unit() == reading.unit() && !each.at().isAfter(reading.at()))
                .toList();
        Optional<Meter> meter = Meter.of(same);
        if (meter.isEmpty()) {
            return earlier.isEmpty() ? Optional.empty() : Optional.of(OTHER_UNIT);
        }
        Reading last = meter.get().last();
        if (reading.value() < last.value()) {
            return Optional.of(BACKWARDS);
        }
        if (!Meter.goTogether(last, reading)) {
            return Optional.of(IMPOSSIBLE);
        }
        return meter.get()
                .use()
                .or(() -> usual)
                .filter(use -> leaps(last, reading, use))
                .map(use -> LEAP);
    }

    private static boolean leaps(Reading last, Reading reading, UsePerDay use) {
        double most = LEAPS * use.high() * (reading.day() - last.day());
        double busy = BUSY_DAYS * reading.unit().busyPerDay();
        return reading.value() - last.value() > Math.max(most, busy);
    }
}
