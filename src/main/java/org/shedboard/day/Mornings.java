package org.shedboard.day;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Set;
import org.shedboard.shop.Person;
import org.shedboard.shop.Shop;

/** When the shop's working days begin. */
public final class Mornings {
    private static final LocalTime USUAL = LocalTime.of(7, 0);

    private Mornings() {}

    /** When the first of its people comes on a date. */
    public static Instant of(Shop shop, LocalDate date) {
        LocalTime start = shop.people().stream()
                .map(Person::startsAt)
                .min(LocalTime::compareTo)
                .orElse(USUAL);
        return date.atTime(start).atZone(shop.zone()).toInstant();
    }

    /** The date so many working days on. */
    public static LocalDate dateAfter(Shop shop, LocalDate date, int workdays) {
        LocalDate day = date;
        for (int left = workdays; left > 0; left--) {
            day = nextWorkday(shop.workdays(), day);
        }
        return day;
    }

    private static LocalDate nextWorkday(Set<DayOfWeek> workdays, LocalDate date) {
        LocalDate day = date.plusDays(1);
        while (!workdays.isEmpty() && !workdays.contains(day.getDayOfWeek())) {
            day = day.plusDays(1);
        }
        return day;
    }
}
