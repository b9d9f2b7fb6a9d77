/**
 * Reads and writes files: the catalogue, a shop and its past visits, day files, plan files, what other programs made, and tables
 * and calendars for other programs. The commands call it with the text of a file; it answers with the core's values or with every
 * fault it found, each with its place, and never with a part. It decides nothing and knows no screen.
 */
package org.shedboard.files;
