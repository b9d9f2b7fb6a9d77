package org.shedboard.parts;

import java.util.Arrays;
import java.util.List;

/** A library that is in the runnable file. */
record Part(String group, String artifact, String version) {
    String name() {
        return group + ":" + artifact;
    }

    boolean isBefore(String other) {
        List<Integer> own = numbers(version);
        List<Integer> their = numbers(other);
        for (int i = 0; i < Math.max(own.size(), their.size()); i++) {
            int compared = Integer.compare(at(own, i), at(their, i));
            if (compared != 0) {
                return compared < 0;
            }
        }
        return false;
    }

    private static int at(List<Integer> numbers, int index) {
        return index < numbers.size() ? numbers.get(index) : 0;
    }

    private static List<Integer> numbers(String version) {
        return Arrays.stream(version.split("[.-]"))
                .filter(each -> each.matches("\\d{1,9}"))
                .map(Integer::valueOf)
                .toList();
    }
}
