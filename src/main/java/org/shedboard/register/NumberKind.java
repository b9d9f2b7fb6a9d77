package org.shedboard.register;

/** What sort of identification number a text is, as far as its length and its ninth character tell. */
public enum NumberKind {
    /** Nothing is written down. */
    NONE,
    /** A vehicle number: 17 characters with a check digit in the ninth place. */
    VEHICLE,
    /** A product number of an earth-moving or farm machine: 17 characters with a check letter in the ninth place. */
    PRODUCT,
    /** A number of the maker's own. */
    SERIAL
}
