package org.shedboard.tally;

import java.util.OptionalInt;
import org.shedboard.shop.Line;

/**
 * One line of a visit.
 *
 * @param estimated catalogue minutes of the tasks that ended in the span
 * @param worked minutes worked in the span
 * @param cleaning minutes of cleaning among them
 * @param chargeable minutes to be charged for the whole line, rounded once; only in the span in which the visit was finished, and
 *     only where somebody else pays
 */
public record LineTally(Line line, int estimated, int worked, int cleaning, OptionalInt chargeable) {}
