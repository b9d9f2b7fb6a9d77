package org.shedboard.store;

import java.time.Instant;

/**
 * One change as the journal tells it.
 *
 * @param id grows with every change, with gaps
 * @param before what was there of the things that changed, a line each; empty where they are new
 * @param after what is there now, a line each; empty where they are gone
 */
public record JournalRow(long id, Instant at, String who, String terminal, String what, String before, String after) {}
