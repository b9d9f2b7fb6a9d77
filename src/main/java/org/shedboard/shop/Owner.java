package org.shedboard.shop;

/**
 * Whose machine it is and how to reach them.
 *
 * @param washDownFirst whether machines of this property are washed down, and that is signed, before they come into any bay
 */
public record Owner(String id, String name, String phone, boolean washDownFirst) {
    /** An owner whose machines come in as they are. */
    public Owner(String id, String name, String phone) {
        this(id, name, phone, false);
    }

    public Owner withWashDownFirst(boolean isFirst) {
        return new Owner(id, name, phone, isFirst);
    }

    /** The same owner when we were asked to forget them: only our own id is left, which says nothing of the person. */
    public Owner forgotten() {
        return new Owner(id, id, "");
    }

    public boolean isForgotten() {
        return name.equals(id) && phone.isEmpty();
    }
}
