package org.shedboard.estimate;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** A number of minutes shared out anew in whole minutes, so that they are together just so many and none is left without. */
final class Portions {
    private final double[] due;
    private final int[] given;

    private Portions(List<Integer> before, int total) {
        double all = before.stream().mapToInt(Integer::intValue).sum();
        due = before.stream().mapToDouble(minutes -> minutes * total / all).toArray();
        given = IntStream.range(0, due.length)
                .map(i -> Math.max(1, (int) due[i]))
                .toArray();
    }

    /**
     * What is left over by rounding goes to those that lack most.
     *
     * @param before by which they are shared out, each at least 1
     * @param total at least one for each
     */
    static List<Integer> of(List<Integer> before, int total) {
        if (total < before.size()) {
            throw new IllegalArgumentException(
                    "%s minutes are not enough for %s points".formatted(total, before.size()));
        }
        Portions portions = new Portions(before, total);
        for (int left = total - portions.sum(); left > 0; left--) {
            portions.given[portions.mostLacking()]++;
        }
        for (int over = portions.sum() - total; over > 0; over--) {
            portions.given[portions.mostOver()]--;
        }
        return IntStream.of(portions.given).boxed().collect(Collectors.toList());
    }

    private int sum() {
        return IntStream.of(given).sum();
    }

    private int mostLacking() {
        int most = 0;
        for (int i = 1; i < due.length; i++) {
            most = due[i] - given[i] > due[most] - given[most] ? i : most;
        }
        return most;
    }

    private int mostOver() {
        int most = -1;
        for (int i = 0; i < due.length; i++) {
            if (given[i] > 1 && (most < 0 || given[i] - due[i] > given[most] - due[most])) {
                most = i;
            }
        }
        return most;
    }
}
