package org.shedboard.shop;

/** How deep the inspection goes; a deeper look includes all of the shallower one. */
public enum Depth {
    ONCE_OVER,
    STANDARD,
    FULL;

    /** Whether a look this deep covers what is due at that depth. */
    public boolean covers(Depth due) {
        return due.ordinal() <= ordinal();
    }
}
