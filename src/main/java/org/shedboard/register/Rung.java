package org.shedboard.register;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;

/**
 * An owner was rung about a service that is due.
 *
 * @param by id of whoever rang
 * @param again when to ring again, where they said so
 */
public record Rung(
        String id, String machineId, Instant at, String by, Said said, Optional<LocalDate> again, String note) {
    /** What they said. */
    public enum Said {
        /** It is coming. */
        BOOKED,
        /** Ring again on a date. */
        AGAIN,
        /** Not this time. */
        NOT_COMING
    }

    /** Who said they would come and was not seen for so long is rung again; the number is invented. */
    private static final Duration PATIENCE = Duration.ofDays(28);

    public Rung {
        if (again.isPresent() != (said == Said.AGAIN)) {
            throw new IllegalArgumentException("a date to ring again goes with %s".formatted(Said.AGAIN));
        }
    }

    Rung of(String otherMachineId) {
        return new Rung(id, otherMachineId, at, by, said, again, note);
    }

    /**
     * Whether it is settled for now, so that nobody rings.
     *
     * @param serviced when the machine was last serviced: what was said before that is over
     */
    boolean settles(Instant serviced, Instant now, ZoneId zone) {
        if (at.isBefore(serviced)) {
            return false;
        }
        return switch (said) {
            case BOOKED -> now.isBefore(at.plus(PATIENCE));
            case AGAIN -> LocalDate.ofInstant(now, zone).isBefore(again.orElseThrow());
            case NOT_COMING -> true;
        };
    }
}
