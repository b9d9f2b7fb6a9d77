/**
 * Who worked on what from when to when, and the tally of it. The day's acts write clock entries; the tally is a pure sum over
 * them. Knows nothing of plans, databases or screens.
 */
package org.shedboard.hours;
