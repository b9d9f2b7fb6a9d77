package org.shedboard.app.command;

import org.shedboard.day.Refusal;
import org.shedboard.words.Words;

/** What was asked for cannot be done; the message is the sentence for whoever asked. */
public final class CannotDo extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public CannotDo(String name, Object... values) {
        super(Words.say(name, values), null, false, false);
    }

    public CannotDo(Refusal refusal) {
        this(refusal.name(), refusal.values().toArray());
    }
}
