/**
 * A problem and a plan as arrays of numbers, a person's hours as working minutes, the points for each piece of a plan, and the chance that
 * all draws come from. Whoever computes with plans starts here: the bound, the search, the replays, the story of a plan. It
 * decides nothing and knows none of them.
 */
package org.shedboard.pack.numbers;
