package org.shedboard.files;

/** What an act of a morning does, as its file names it. */
enum Deed {
    OPEN_DAY,
    TAKE_IN,
    ARRIVE,
    SAY_PROMISE,
    START,
    PAUSE,
    FINISH,
    TICK,
    HOLD,
    RELEASE,
    HAND_OVER,
    ADD_WORK,
    DO_OTHER,
    STOP,
    BE_HERE,
    CHECK_HOIST,
    COLLECT,
    CALL_OFF,
    ORDER,
    CLOSE_DAY
}
