/**
 * Models fitted to what was measured, and how sure they are: least squares, learning from one value after the other, straight lines
 * that reach a limit, Student's t. Called by whoever has values to fit; knows nothing of machines, minutes or days.
 */
package org.shedboard.fit;
