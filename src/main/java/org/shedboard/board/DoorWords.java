package org.shedboard.board;

import org.shedboard.day.DoorNote;
import org.shedboard.words.Words;

/** What is to be known at the door, said: on the screen and by the commands alike. */
public final class DoorWords {
    private DoorWords() {}

    public static String of(DoorNote note) {
        return Words.say("door." + note.kind(), note.values().toArray());
    }
}
