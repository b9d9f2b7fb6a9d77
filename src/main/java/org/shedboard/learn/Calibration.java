package org.shedboard.learn;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How often finished work stayed within what it was said to stay within, at each tenth.
 *
 * @param shares for one in ten to nine in ten, the smallest first; empty where nothing was forecast
 * @param tenths how many pieces ended in each tenth of what was forecast of them, the quickest first: as many in each where forecasts
 *     are right
 */
public record Calibration(List<Share> shares, List<Integer> tenths) {
    private static final int TENTHS = 10;

    /**
     * A share of work.
     *
     * @param said to stay within some minutes
     * @param seen to have stayed within them
     */
    public record Share(double said, double seen) {}

    public Calibration {
        shares = List.copyOf(shares);
        tenths = List.copyOf(tenths);
    }

    static Calibration of(List<Said> said) {
        List<Share> shares = new ArrayList<>();
        for (int tenth = 1; tenth < TENTHS && !said.isEmpty(); tenth++) {
            shares.add(share(said, (double) tenth / TENTHS));
        }
        int[] tenths = new int[TENTHS];
        said.forEach(each -> tenths[Math.min(TENTHS - 1, (int) (TENTHS * each.place()))]++);
        return new Calibration(shares, Arrays.stream(tenths).boxed().toList());
    }

    private static Share share(List<Said> said, double within) {
        long seen = said.stream()
                .filter(each -> each.lesson().actualMinutes() <= each.learned().quantile(within))
                .count();
        return new Share(within, (double) seen / said.size());
    }
}
