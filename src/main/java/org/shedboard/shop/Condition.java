package org.shedboard.shop;

/** What the machine can do by itself on arrival. */
public record Condition(boolean runs, boolean rolls, boolean steers, boolean stops) {
    public static final Condition SOUND = new Condition(true, true, true, true);

    /** Whether it may be driven into a place; otherwise it is pushed or winched. */
    public boolean drives() {
        return runs && rolls && steers && stops;
    }
}
