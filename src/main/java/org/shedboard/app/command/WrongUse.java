package org.shedboard.app.command;

import org.shedboard.words.Words;

/** A command line that cannot be understood; the message is the sentence for whoever typed it. */
public final class WrongUse extends RuntimeException {
    private static final long serialVersionUID = 1L;

    WrongUse(String name, Object... values) {
        super(Words.say(name, values), null, false, false);
    }
}
