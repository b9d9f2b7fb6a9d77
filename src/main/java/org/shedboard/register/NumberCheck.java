package org.shedboard.register;

/** What came of checking an identification number. */
public enum NumberCheck {
    /** The check digit is the one that the other characters ask for. */
    RIGHT,
    /** It is another, or there is a letter that no such number has, so that there is none to ask for. */
    WRONG,
    /** There is something to check, but how is not published. */
    NOT_CHECKABLE,
    /** There is nothing to check. */
    NOT_ASKED
}
