package org.shedboard.estimate;

import java.util.List;
import java.util.Optional;

/**
 * Which item a part of one machine is: one, or several among which somebody has to look.
 *
 * @param candidates each item once, in the order of the catalogue; none where the shelf does not know the part
 * @param doubt why there are several
 */
public record Resolution(List<Variant> candidates, Optional<Doubt> doubt) {
    /** Why it is not plain which item it is. */
    public enum Doubt {
        YEAR_UNKNOWN,
        /** Makers change in the middle of a model year, so the last year of one item and the first of the next may have either. */
        YEAR_ON_EDGE,
        YEAR_OUTSIDE,
        NUMBER_UNREAD
    }

    public Resolution {
        candidates = List.copyOf(candidates);
        if (doubt.isPresent() != candidates.size() > 1) {
            throw new IllegalArgumentException("%s does not go with %s".formatted(doubt, candidates));
        }
    }

    static Resolution of(List<Variant> candidates, Doubt doubt) {
        return new Resolution(candidates, candidates.size() > 1 ? Optional.of(doubt) : Optional.empty());
    }

    /** The item where there is no doubt about it. */
    public Optional<String> itemId() {
        return candidates.size() == 1 ? Optional.of(candidates.get(0).itemId()) : Optional.empty();
    }

    public boolean isOpen() {
        return doubt.isPresent();
    }

    public List<String> itemIds() {
        return candidates.stream().map(Variant::itemId).toList();
    }
}
