package org.shedboard.ahead;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Gives minutes of work to minutes of people one by one: a largest matching by augmenting paths. */
final class Matching {
    private final List<String> seats = new ArrayList<>();
    private final List<Set<String>> wanted = new ArrayList<>();
    private final int[] taken;

    private Matching(Map<String, Integer> open, List<? extends Claim<?>> claims) {
        open.forEach((who, minutes) -> {
            for (int i = 0; i < minutes; i++) {
                seats.add(who);
            }
        });
        claims.forEach(claim -> {
            for (int i = 0; i < claim.minutes(); i++) {
                wanted.add(claim.by());
            }
        });
        taken = new int[seats.size()];
        Arrays.fill(taken, -1);
    }

    /** The most minutes that can be done. */
    static int most(Map<String, Integer> open, List<? extends Claim<?>> claims) {
        Matching matching = new Matching(open, claims);
        int done = 0;
        for (int minute = 0; minute < matching.wanted.size(); minute++) {
            done += matching.seat(minute, new boolean[matching.seats.size()]) ? 1 : 0;
        }
        return done;
    }

    private boolean seat(int minute, boolean[] tried) {
        for (int seat = 0; seat < tried.length; seat++) {
            if (tried[seat] || !wanted.get(minute).contains(seats.get(seat))) {
                continue;
            }
            tried[seat] = true;
            if (taken[seat] < 0 || seat(taken[seat], tried)) {
                taken[seat] = minute;
                return true;
            }
        }
        return false;
    }
}
