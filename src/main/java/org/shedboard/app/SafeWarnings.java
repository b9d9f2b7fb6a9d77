package org.shedboard.app;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.shedboard.store.Backups;
import org.shedboard.store.JournalRow;
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
    /** Hours are counted in minutes. */
    private static final Duration APART_MARGIN = Duration.ofMinutes(1);

    private SafeWarnings() {}

    static List<String> of(Store store, Instant now, ZoneId zone) {
        List<String> warnings = new ArrayList<>(ofClock(store, now, zone));
        LocalDate today = LocalDate.ofInstant(now, zone);
        store.secondPlace().flatMap(place -> secondPlace(place, today)).ifPresent(warnings::add);
        return warnings;
    }

    /** What is not as it should be with the clock alone. */
    static List<String> ofClock(Store store, Instant now, ZoneId zone) {
        return Stream.of(setBack(store, now, zone), apart(store.read(SafeWarnings::ahead)))
                .flatMap(Optional::stream)
                .toList();
    }

    /** How far this machine's clock is ahead of that of the one that has the records. */
    private static Duration ahead(Reader reader) {
        return Duration.between(reader.clockOfRecords(), Instant.now());
    }

    /** @param ahead negative where this machine's clock is behind */
    static Optional<String> apart(Duration ahead) {
        String name = ahead.isNegative() ? "warning.clock_behind" : "warning.clock_ahead";
        return Optional.of(ahead.abs())
                .filter(difference -> difference.compareTo(APART_MARGIN) > 0)
                .map(difference -> Words.say(name, difference.toMinutes()));
    }

    private static Optional<String> setBack(Store store, Instant now, ZoneId zone) {
        return store.read(Reader::lastChange)
                .map(JournalRow::at)
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
