package org.shedboard.app.command;

import java.nio.file.Path;
import java.util.Optional;
import org.shedboard.day.Act;

/** What a command comes to on the day it is given: something to say or print, or an act to carry out. */
public sealed interface Reply {
    /** Only said. */
    record Tell(Answer answer) implements Reply {}

    /** A file for another program, such as a table, a page or a calendar: printed to its last character as it is. */
    record Print(String text) implements Reply {}

    /** A file for people, written where they said. */
    record Write(Path file, String text, Answer answer) implements Reply {}

    /**
     * Carried out, then told with {@link Told}.
     *
     * @param by id of the person who does it, where one is named
     */
    record Carry(Act act, Optional<String> by) implements Reply {
        static Carry of(Act act) {
            return new Carry(act, Optional.empty());
        }
    }
}
