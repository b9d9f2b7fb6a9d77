/**
 * The tally of a day or of a span of days: the hours of its people, what each visit and line took and who pays for it, how the hoists
 * were used, which promises were kept, and what stands open when the day is to be closed. Made from values that the shell has read;
 * the screen, the commands and the files show it.
 */
package org.shedboard.tally;
