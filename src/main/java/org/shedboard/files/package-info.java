/**
 * Reads and writes files: the catalogue, a shop and its past visits, day files, plan files, what other programs made; and the tally
 * as tables for other programs and as a sheet to print, and promised
 * times as a calendar. The commands call it with the text of a file; it answers with the core's values
 * or with every fault it found, each with its place, and never with a part; or with a value, of which it makes a file. It decides nothing
 * and knows no screen.
 */
package org.shedboard.files;
