package org.shedboard.learn;

import java.util.List;
import java.util.Optional;

/**
 * Finished work that has something in common, and how right what was said of it was.
 *
 * @param what it has in common
 * @param count pieces of it
 * @param score empty where there are too few pieces to say
 */
public record Scored<K>(K what, int count, Optional<Score> score) {
    /** With fewer pieces a share says more of chance than of the forecasts (invented). */
    public static final int LEAST = 10;

    static <K> Scored<K> of(K what, List<Said> said) {
        return new Scored<>(what, said.size(), score(said));
    }

    static Optional<Score> score(List<Said> said) {
        return said.size() < LEAST ? Optional.empty() : Optional.of(Score.of(said));
    }
}
