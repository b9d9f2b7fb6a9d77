/**
 * The terminal: keys come in, cells go out. The program's loop opens one {@link org.shedboard.term.Display}, is told of
 * its events and shows grids on it. It decides nothing and knows nothing of the shop; only here do styles become
 * colours.
 */
package org.shedboard.term;
