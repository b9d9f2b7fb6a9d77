package org.shedboard.learn;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collection;

/**
 * How often a learner has done this sort of work by a date. Getting faster goes by doublings, as in the unit model of the learning
 * curve: from the first time to the second as much as from the tenth to the twentieth.
 */
final class Practice {
    private final LocalDate[] dates;

    private Practice(LocalDate[] dates) {
        this.dates = dates;
    }

    static Practice of(Collection<LocalDate> dates) {
        return new Practice(dates.stream().sorted().toArray(LocalDate[]::new));
    }

    /** How often the number of times was doubled before this date; the first time counts none. */
    double doublings(LocalDate date) {
        int found = Arrays.binarySearch(dates, date);
        int times = found < 0 ? -found - 1 : first(found);
        return StrictMath.log(times + 1.0) / StrictMath.log(2);
    }

    private int first(int found) {
        int index = found;
        while (index > 0 && dates[index - 1].equals(dates[found])) {
            index--;
        }
        return index;
    }
}
