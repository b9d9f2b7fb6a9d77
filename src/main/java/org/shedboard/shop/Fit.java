package org.shedboard.shop;

/** Whether something that is said of some machines concerns one of them. */
public enum Fit {
    YES,
    /** Its year or number is not known, or cannot be read: somebody must look. */
    MAYBE,
    NO
}
