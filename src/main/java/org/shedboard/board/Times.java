package org.shedboard.board;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.TemporalAdjusters;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads times as people type them: {@code 1430}, {@code 14:30}, {@code 2:30p}, {@code 9}, {@code +45} (minutes from now), each
 * after a weekday where it is not today: {@code fri 10}.
 */
public final class Times {
    private static final Pattern CLOCK =
            Pattern.compile("(\\d{1,2})(?:[:.]?(\\d{2}))?\\s*(?:([ap])m?)?", Pattern.CASE_INSENSITIVE);
    private static final Pattern AHEAD = Pattern.compile("\\+(\\d{1,4})");
    private static final Pattern WEEKDAY = Pattern.compile("([a-z]{2,9})\\s+(.+)", Pattern.CASE_INSENSITIVE);

    private Times() {}

    /** The moment meant by what was typed; empty when it cannot be read. */
    public static Optional<Instant> parse(String typed, Instant now, ZoneId zone) {
        String text = typed.strip().toLowerCase(Locale.ROOT);
        Matcher ahead = AHEAD.matcher(text);
        if (ahead.matches()) {
            return Optional.of(now.plusSeconds(60L * Integer.parseInt(ahead.group(1))));
        }
        LocalDate today = LocalDate.ofInstant(now, zone);
        Matcher weekday = WEEKDAY.matcher(text);
        if (weekday.matches()) {
            return dayOf(weekday.group(1), today)
                    .flatMap(date -> time(weekday.group(2)).map(time -> at(date, time, zone)));
        }
        return time(text).map(time -> at(today, time, zone));
    }

    /** A time of day; empty when it cannot be read. */
    public static Optional<LocalTime> time(String typed) {
        Matcher clock = CLOCK.matcher(typed.strip());
        if (!clock.matches()) {
            return Optional.empty();
        }
        int hour = Integer.parseInt(clock.group(1));
        int minute = clock.group(2) == null ? 0 : Integer.parseInt(clock.group(2));
        if (clock.group(3) != null) {
            if (hour < 1 || hour > 12) {
                return Optional.empty();
            }
            hour = hour % 12 + (clock.group(3).equalsIgnoreCase("p") ? 12 : 0);
        }
        return hour < 24 && minute < 60 ? Optional.of(LocalTime.of(hour, minute)) : Optional.empty();
    }

    private static Optional<LocalDate> dayOf(String name, LocalDate today) {
        for (DayOfWeek day : DayOfWeek.values()) {
            if (day.name().toLowerCase(Locale.ROOT).startsWith(name)) {
                return Optional.of(today.with(TemporalAdjusters.next(day)));
            }
        }
        return "tomorrow".startsWith(name) && name.length() > 2 ? Optional.of(today.plusDays(1)) : Optional.empty();
    }

    private static Instant at(LocalDate date, LocalTime time, ZoneId zone) {
        return ZonedDateTime.of(date, time, zone).toInstant();
    }
}
