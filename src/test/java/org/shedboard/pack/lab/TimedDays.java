package org.shedboard.pack.lab;

import java.util.Arrays;
import java.util.List;

/** The days that times are taken on: of the days to judge on, those nearest to 6, 20 and 40 machines; the last has most. */
final class TimedDays {
    private static final int[] MACHINES = {6, 20, 40};

    private TimedDays() {}

    static List<DayFolder.Day> of(Laboratory lab) {
        return Arrays.stream(MACHINES).mapToObj(lab.days::nearest).toList();
    }
}
