package org.shedboard.shop;

/** What was found at an inspection point. */
public enum Mark {
    GOOD,
    WATCH,
    FIX,
    NOT_REACHED
}
