package org.shedboard.day;

import org.shedboard.pack.Problem;

/**
 * A day to pack.
 *
 * @param packed with the minutes that plans give each task, which the shop may set longer than the likely ones
 * @param likely the same with the likely minutes, around which days turn out: plans are replayed in it
 */
record Packing(Problem packed, Problem likely) {}
