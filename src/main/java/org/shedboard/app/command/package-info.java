/**
 * The commands: what a command line asks for, read into acts and questions, and what is said in answer, as lines or as JSON.
 * The program's start calls it with the day as it is; it knows nothing of records, terminals or clocks.
 */
package org.shedboard.app.command;
