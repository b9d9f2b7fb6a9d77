package org.shedboard.shop;

/** Whose machine it is and how to reach them. */
public record Owner(String id, String name, String phone) {
    /** The same owner when we were asked to forget them: only our own id is left, which says nothing of the person. */
    public Owner forgotten() {
        return new Owner(id, id, "");
    }

    public boolean isForgotten() {
        return equals(forgotten());
    }
}
