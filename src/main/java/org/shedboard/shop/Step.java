package org.shedboard.shop;

import java.util.List;

/** The part of a visit that a task belongs to, in the order in which a visit goes through them. */
public enum Step {
    WASH(List.of(PlaceKind.WASH)),
    UNDERSIDE(List.of(PlaceKind.HOIST)),
    TOPSIDE(List.of(PlaceKind.FLOOR, PlaceKind.HOIST)),
    DRIVE(List.of());

    private final List<PlaceKind> kinds;

    Step(List<PlaceKind> kinds) {
        this.kinds = kinds;
    }

    /** Kinds of place this step is usually done in; none for work that takes no place. */
    public List<PlaceKind> kinds() {
        return kinds;
    }
}
