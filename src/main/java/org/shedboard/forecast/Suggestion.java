package org.shedboard.forecast;

import org.shedboard.estimate.Figure;
import org.shedboard.learn.Doubt;

/**
 * A figure of the catalogue that the shop's finished work contradicts, and the minutes it had better have.
 *
 * @param now its minutes in the catalogue
 * @param evidence what speaks against them
 */
public record Suggestion(Figure figure, int now, int proposed, Doubt evidence) {
    public Suggestion {
        if (now == proposed) {
            throw new IllegalArgumentException("nothing is suggested by leaving %s at %s".formatted(figure.id(), now));
        }
    }
}
