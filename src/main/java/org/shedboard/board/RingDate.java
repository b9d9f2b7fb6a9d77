package org.shedboard.board;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A date to come as it is typed: {@code +7} for in seven days, {@code 26 5} for the next 26th of May. */
public final class RingDate {
    private static final Pattern DAYS = Pattern.compile("\\+(\\d{1,3})");
    private static final Pattern DAY_AND_MONTH = Pattern.compile("(\\d{1,2})[ ./](\\d{1,2})\\.?");

    private RingDate() {}

    /** Empty where it is no date, or none after today. */
    public static Optional<LocalDate> parse(String typed, LocalDate today) {
        Matcher days = DAYS.matcher(typed.strip());
        Matcher date = DAY_AND_MONTH.matcher(typed.strip());
        Optional<LocalDate> read = days.matches()
                ? Optional.of(today.plusDays(Integer.parseInt(days.group(1))))
                : date.matches() ? next(date, today) : Optional.empty();
        return read.filter(each -> each.isAfter(today));
    }

    private static Optional<LocalDate> next(Matcher typed, LocalDate today) {
        int day = Integer.parseInt(typed.group(1));
        int month = Integer.parseInt(typed.group(2));
        try {
            LocalDate thisYear = LocalDate.of(today.getYear(), month, day);
            return Optional.of(thisYear.isAfter(today) ? thisYear : LocalDate.of(today.getYear() + 1, month, day));
        } catch (DateTimeException noSuchDay) {
            return Optional.empty();
        }
    }
}
