package org.shedboard.day;

import java.time.Instant;
import java.time.LocalDate;
import org.shedboard.estimate.Catalogue;
import org.shedboard.files.Seed;

/** The demonstration day at the moment it opens, read from the seed once. */
final class Demonstration {
    static final Catalogue CATALOGUE = Seed.catalogue();
    static final Setup SETUP = Seed.shop(CATALOGUE);
    static final Beginning BEGINNING = Beginning.of(CATALOGUE, SETUP, LocalDate.EPOCH);

    private Demonstration() {}

    static Day day() {
        return BEGINNING.day();
    }

    static Instant opens() {
        Morning morning = SETUP.morning().orElseThrow();
        return morning.date().atTime(morning.opensAt()).atZone(day().zone()).toInstant();
    }
}
