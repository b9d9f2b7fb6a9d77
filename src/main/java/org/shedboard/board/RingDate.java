package org.shedboard.board;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A date to come as it is typed: {@code +7} for in seven days, {@code 26 5} for the next 26th of May, {@code 2026-05-26} with its year. */
public final class RingDate {
    private static final Pattern DAYS = Pattern.compile("\\+(\\d{1,3})");
    private static final Pattern DAY_AND_MONTH = Pattern.compile("(\\d{1,2})[ ./](\\d{1,2})\\.?");

    private static final Pattern WITH_YEAR = Pattern.compile("(\\d{4})-(\\d{2})-(\\d{2})");

    private RingDate() {}

    /** Empty where it is no date, or none after today. */
    public static Optional<LocalDate> parse(String typed, LocalDate today) {
        String text = typed.strip();
        return inDays(text, today)
                .or(() -> ofYear(text))
                .or(() -> next(text, today))
                .filter(each -> each.isAfter(today));
    }

    private static Optional<LocalDate> inDays(String text, LocalDate today) {
        Matcher typed = DAYS.matcher(text);
        return typed.matches() ? Optional.of(today.plusDays(Integer.parseInt(typed.group(1)))) : Optional.empty();
    }

    private static Optional<LocalDate> ofYear(String text) {
        Matcher typed = WITH_YEAR.matcher(text);
        return typed.matches()
                ? date(
                        Integer.parseInt(typed.group(1)),
                        Integer.parseInt(typed.group(2)),
                        Integer.parseInt(typed.group(3)))
                : Optional.empty();
    }

    private static Optional<LocalDate> next(String text, LocalDate today) {
        Matcher typed = DAY_AND_MONTH.matcher(text);
        if (!typed.matches()) {
            return Optional.empty();
        }
        int day = Integer.parseInt(typed.group(1));
        int month = Integer.parseInt(typed.group(2));
        return date(today.getYear(), month, day)
                .filter(each -> each.isAfter(today))
                .or(() -> date(today.getYear() + 1, month, day));
    }

    private static Optional<LocalDate> date(int year, int month, int day) {
        try {
            return Optional.of(LocalDate.of(year, month, day));
        } catch (DateTimeException noSuchDay) {
            return Optional.empty();
        }
    }
}
