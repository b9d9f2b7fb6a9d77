/**
 * One pure view a screen: from the board and a size to a grid of cells. The session shows what it gives; it fetches nothing,
 * remembers nothing and never throws for lack of room.
 */
package org.shedboard.screen;
