package org.shedboard.register;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/** How well entries suit several words: first by the word that suits worst, then by all together. */
final class Ranking {
    private final Grade[] worst;
    private final int[] sum;

    Ranking(int entries) {
        this.worst = new Grade[entries];
        this.sum = new int[entries];
        Arrays.fill(worst, Grade.EXACT);
    }

    void add(Grade[] grades) {
        for (int i = 0; i < grades.length; i++) {
            worst[i] = worst[i].worse(grades[i]);
            sum[i] += grades[i].ordinal();
        }
    }

    Grade worstOf(int index) {
        return worst[index];
    }

    /** The indices that every word suits, the best first, and among equals those favoured before the others. */
    List<Integer> order(IntPredicate isFavoured) {
        return IntStream.range(0, worst.length)
                .filter(index -> worst[index] != Grade.NONE)
                .boxed()
                .sorted(Comparator.comparing((Integer index) -> worst[index])
                        .thenComparingInt(index -> sum[index])
                        .thenComparing(index -> !isFavoured.test(index)))
                .toList();
    }
}
