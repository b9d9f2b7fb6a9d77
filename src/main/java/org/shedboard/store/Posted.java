package org.shedboard.store;

import java.time.Instant;
import org.shedboard.pack.Plan;

/**
 * The plan that everybody works to.
 *
 * @param origin the moment its minutes count from
 */
public record Posted(Plan plan, Instant origin) {}
