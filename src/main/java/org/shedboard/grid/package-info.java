/**
 * A rectangle of styled cells, and what is needed to draw one: regions, text width, frames, tables and big letters.
 * The screens draw on a {@link org.shedboard.grid.Canvas} and hand out the {@link org.shedboard.grid.Grid} that comes
 * of it; the terminal paints it. It knows no colours, no terminal and nothing of the shop.
 */
package org.shedboard.grid;
