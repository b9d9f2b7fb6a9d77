package org.shedboard.day;

import java.time.Instant;
import org.shedboard.pack.Plan;

/**
 * The plan that everybody works to.
 *
 * @param origin the moment that is minute 0 of the plan
 */
public record Posted(Plan plan, Instant origin) {}
