package org.shedboard.store;

import java.time.Instant;

/**
 * When a change was made, by whom and where.
 *
 * @param who id of the person, or what they are called
 * @param terminal name of the screen it was made at
 */
public record Stamp(Instant at, String who, String terminal) {}
