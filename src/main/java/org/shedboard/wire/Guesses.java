package org.shedboard.wire;

import java.net.InetAddress;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;

/** How long whoever said a wrong password has to wait for the answer: twice as long each time, for each address by itself. */
final class Guesses {
    private static final Duration FIRST = Duration.ofMillis(250);
    private static final int DOUBLED_AT_MOST = 5;
    /** Who guesses from more addresses than this is forgotten at the first of them; the password withstands that too. */
    private static final int ADDRESSES = 1000;

    private final Map<InetAddress, Integer> wrong = new LinkedHashMap<>();

    /** Notes a wrong password from there. */
    synchronized Duration wrongFrom(InetAddress address) {
        int before = wrong.getOrDefault(address, 0);
        if (before == 0 && wrong.size() >= ADDRESSES) {
            wrong.remove(wrong.keySet().iterator().next());
        }
        wrong.put(address, before + 1);
        return FIRST.multipliedBy(1L << Math.min(before, DOUBLED_AT_MOST));
    }

    synchronized void rightFrom(InetAddress address) {
        wrong.remove(address);
    }
}
