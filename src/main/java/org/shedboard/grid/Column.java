package org.shedboard.grid;

/** A column of a table: its heading, how many screen columns it takes (0: a share of what is left), and its side. */
public record Column(String heading, int width, Side side) {
    /** Where in its column a text stands. */
    public enum Side {
        LEFT,
        RIGHT
    }

    /** A column of words. */
    public static Column left(String heading, int width) {
        return new Column(heading, width, Side.LEFT);
    }

    /** A column of numbers. */
    public static Column right(String heading, int width) {
        return new Column(heading, width, Side.RIGHT);
    }
}
