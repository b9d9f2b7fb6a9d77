package org.shedboard.look;

/**
 * How cells of one style are drawn.
 *
 * @param ink of the glyphs
 * @param paper what they stand on
 */
public record Look(Colour ink, Colour paper, boolean isBold) {}
