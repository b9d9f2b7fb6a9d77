package org.shedboard.app;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shedboard.store.Backups;
import org.shedboard.store.Reader;
import org.shedboard.store.Store;
import org.shedboard.words.When;
import org.shedboard.words.Words;

/** What is not as it should be with the backups and the clock. */
final class SafeWarnings {
    /** A copy in the second place that is older is no second place. */
    private static final int SECOND_PLACE_DAYS = 2;
    /** Two terminals of one machine may save within the same second; a clock that was set back differs by more. */
    private static final Duration CLOCK_MARGIN = Duration.ofMinutes(2);

    private SafeWarnings() {}

    static List<String> of(Store store, Instant now, ZoneId zone) {
        List<String> warnings = new ArrayList<>();
        clock(store, now, zone).ifPresent(warnings::add);
        LocalDate today = LocalDate.ofInstant(now, zone);
        store.secondPlace().flatMap(place -> secondPlace(place, today)).ifPresent(warnings::add);
        return warnings;
    }

    private static Optional<String> clock(Store store, Instant now, ZoneId zone) {
        return store.read(Reader::lastChangeAt)
                .filter(last -> last.isAfter(now.plus(CLOCK_MARGIN)))
                .map(last -> Words.say("warning.clock", said(now, zone), said(last, zone)));
    }

    private static String said(Instant moment, ZoneId zone) {
        return When.WEEKDAY_CLOCK.say(moment.atZone(zone));
    }

    private static Optional<String> secondPlace(Path place, LocalDate today) {
        Optional<LocalDate> newest = Backups.in(place).newestDate();
        if (newest.isEmpty()) {
            return Optional.of(Words.say("warning.second_place_empty", place));
        }
        return newest.filter(date -> date.isBefore(today.minusDays(SECOND_PLACE_DAYS)))
                .map(date -> Words.say("warning.second_place_old", place, When.WEEKDAY_DATE.say(date)));
    }
}
