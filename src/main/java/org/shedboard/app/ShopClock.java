package org.shedboard.app;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Optional;
import org.shedboard.store.Reader;

/** The one clock of a shop: the machine's, or for a demonstration its own time that runs on from its own morning. */
final class ShopClock {
    /** Seconds from the machine's time to the demonstration's; only a demonstration has this setting. */
    static final String AHEAD = "demonstration.secondsAhead";

    private ShopClock() {}

    static Clock of(Reader reader, ZoneId zone) {
        Clock machine = Clock.system(zone);
        return ahead(reader)
                .map(seconds -> Clock.offset(machine, Duration.ofSeconds(seconds)))
                .orElse(machine);
    }

    static boolean isDemonstration(Reader reader) {
        return ahead(reader).isPresent();
    }

    private static Optional<Long> ahead(Reader reader) {
        return reader.setting(AHEAD).map(Long::parseLong);
    }

    /** A clock that shows this moment now and runs on from it. */
    static Clock startingAt(Instant moment, ZoneId zone) {
        Clock machine = Clock.system(zone);
        return Clock.offset(machine, Duration.between(machine.instant(), moment));
    }
}
