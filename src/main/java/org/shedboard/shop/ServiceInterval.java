package org.shedboard.shop;

import java.util.List;
import java.util.OptionalInt;

/**
 * How often a service is to be done, whichever comes first, and which smaller services it brings with it.
 *
 * @param includes ids of the works that count as done with it
 */
public record ServiceInterval(OptionalInt hours, OptionalInt kilometres, OptionalInt months, List<String> includes) {
    public ServiceInterval {
        includes = List.copyOf(includes);
        if (hours.isEmpty() && kilometres.isEmpty() && months.isEmpty()) {
            throw new IllegalArgumentException("an interval needs hours, kilometres or months");
        }
        if (!isSomething(hours) || !isSomething(kilometres) || !isSomething(months)) {
            throw new IllegalArgumentException("an interval of nothing never ends");
        }
    }

    private static boolean isSomething(OptionalInt length) {
        return length.isEmpty() || length.getAsInt() > 0;
    }
}
