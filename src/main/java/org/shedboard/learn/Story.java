package org.shedboard.learn;

import java.util.List;

/**
 * Where the likely minutes of one sort of work come from: the catalogue's, then what each trait adds or takes, in the order in which it
 * is told; together they are the likely minutes.
 */
public record Story(Sort sort, double catalogueMinutes, List<Share> shares) {
    /** What one trait of the circumstances makes of the minutes before it. */
    public record Share(Trait trait, double minutes) {}

    public Story {
        shares = List.copyOf(shares);
    }

    public double likelyMinutes() {
        return catalogueMinutes + shares.stream().mapToDouble(Share::minutes).sum();
    }
}
