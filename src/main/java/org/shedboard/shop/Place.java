package org.shedboard.shop;

/**
 * Where a machine can stand to be worked on.
 *
 * @param ratedKg what a hoist may lift; {@link #NO_LIMIT} for a place that stands on the ground
 */
public record Place(String id, String name, PlaceKind kind, int ratedKg) {
    public static final int NO_LIMIT = Integer.MAX_VALUE;

    public Place {
        if (ratedKg <= 0) {
            throw new IllegalArgumentException("place %s cannot be rated %s kg".formatted(id, ratedKg));
        }
    }

    public boolean isHoist() {
        return kind == PlaceKind.HOIST;
    }

    public boolean carries(int massKg) {
        return massKg <= ratedKg;
    }
}
