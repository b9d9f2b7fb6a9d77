/**
 * What work takes: the catalogue of machine classes, inspection points and work, and the arithmetic that puts a visit's stays
 * together from it, with likely and safe minutes and the breakdown line by line. Take-in, quotes and found work call it; it
 * knows nothing of people's names, plans or the clock.
 */
package org.shedboard.estimate;
