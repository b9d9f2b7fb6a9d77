package org.shedboard.grid;

/**
 * What a cell means; the terminal decides how that looks. Nothing is told by style alone: words or glyphs say the same.
 */
public enum Style {
    /** Ordinary text. */
    NORMAL('.'),
    /** Text that may be passed over: labels, hints, units. */
    QUIET('q'),
    /** The name of a screen or a panel. */
    TITLE('T'),
    /** What the eye shall find first. */
    STRONG('S'),
    /** The chosen row, card or entry. */
    SELECTED('s'),
    /** A promise that is not kept, or will not be. */
    LATE('L'),
    /** Something that can hurt a person or must not leave the shop. */
    DANGER('D'),
    /** Done, found good, in time. */
    GOOD('g'),
    /** Minutes in which a person has hands on the machine. */
    HANDS_ON('H'),
    /** Minutes in which a machine drains, soaks or cools by itself. */
    UNATTENDED('u'),
    /** A visit that waits for parts, an owner's word or another look. */
    HELD('h'),
    /** A place or person with nothing to do. */
    FREE('f'),
    /** A place or time that cannot be used. */
    CLOSED('c'),
    /** The present minute. */
    NOW('N'),
    /** Borders and rules. */
    FRAME('-'),
    /** A key that can be pressed. */
    KEY('k'),
    /** A key that can not be pressed now. */
    KEY_OFF('o'),
    /** A caution to read before the work. */
    CAUTION('C'),
    /** A place to type in. */
    FIELD('F'),
    /** Where the next letter goes. */
    CURSOR('_'),
    /** A break in a person's day. */
    BREAK('b'),
    /** A promise, and the time it was made for. */
    PROMISE('P');

    private final char code;

    Style(char code) {
        this.code = code;
    }

    /** The letter that stands for it in a stored screen. */
    public char code() {
        return code;
    }
}
