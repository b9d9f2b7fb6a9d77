package org.shedboard.term;

import com.googlecode.lanterna.TextCharacter;

/** A cell whose width is ours to say: the library takes some wide characters for narrow ones and the other way round. */
final class MeasuredCharacter extends TextCharacter {
    private static final long serialVersionUID = 1;

    private final boolean wide;

    /** The library advises against copying, but its ways to make a cell make no subclass. */
    @SuppressWarnings("deprecation")
    MeasuredCharacter(TextCharacter cell, boolean wide) {
        super(cell);
        this.wide = wide;
    }

    @Override
    public boolean isDoubleWidth() {
        return wide;
    }
}
