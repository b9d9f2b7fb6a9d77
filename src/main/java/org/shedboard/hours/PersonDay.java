package org.shedboard.hours;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Predicate;

/**
 * One person's hours on one day.
 *
 * @param stretches all their time in the shop, in order, no minute of it twice and none left out
 * @param rounding minutes that rounding gave for pay; negative where it took some
 */
public record PersonDay(String personId, LocalDate date, List<Stretch> stretches, int rounding) {
    public PersonDay {
        stretches = List.copyOf(stretches);
    }

    public int attended() {
        return minutes(Stretch.Use::isAttended);
    }

    public int minutes(Predicate<Stretch.Use> which) {
        return stretches.stream()
                .filter(stretch -> which.test(stretch.use()))
                .mapToInt(Stretch::minutes)
                .sum();
    }
}
