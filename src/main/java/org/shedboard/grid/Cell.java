package org.shedboard.grid;

/** One cell of a screen, counted from its upper left corner. */
public record Cell(int column, int row) {}
