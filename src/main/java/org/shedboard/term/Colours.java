package org.shedboard.term;

/** How many colours a terminal has that we may use. */
public enum Colours {
    /** Its own two, with bold, inverse and underline. */
    TWO,
    /** The usual sixteen, whose values people change as they like. */
    SIXTEEN,
    /** Those of 256 that have fixed values. */
    FIXED,
    /** Any. */
    TRUE
}
