package org.shedboard.register;

/** The parts on the shelf and on order. */
public record Shelf() {
    public static final Shelf EMPTY = new Shelf();
}
