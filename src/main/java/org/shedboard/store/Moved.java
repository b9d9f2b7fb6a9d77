package org.shedboard.store;

/**
 * A table that was taken over into another database and is there what it was.
 *
 * @param digest the same for the same rows, whatever database they are in
 */
public record Moved(String table, long rows, String digest) {}
