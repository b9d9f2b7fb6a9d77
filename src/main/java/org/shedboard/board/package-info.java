/**
 * The model of the full screen: what is shown, what is selected, what is being typed, and what a message such as a key
 * press makes of it. The screens read it, the program's loop feeds it. It knows nothing of cells, colours, files or
 * the clock.
 */
package org.shedboard.board;
