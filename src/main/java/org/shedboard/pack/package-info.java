/**
 * The world of the day file: one packing problem, the plans for it, what they cost, and the search that makes them. The day and
 * the shell call it with values and get values back. It knows nothing of the shop's records, the screen, files or the clock.
 */
package org.shedboard.pack;
