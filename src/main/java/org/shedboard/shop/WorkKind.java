package org.shedboard.shop;

/** What sort of work a task is: each sort has a spread of its own, and cleaning is tallied apart. */
public enum WorkKind {
    MOVE,
    CLEAN,
    INSPECT,
    REPAIR,
    SIGN_OFF
}
