package org.shedboard.app.command;

import java.util.List;
import org.shedboard.board.DoorWords;
import org.shedboard.day.Act;
import org.shedboard.day.DoorNotes;

/** What is to be known of a machine at the door, a line for each. */
final class AtTheDoor {
    private AtTheDoor() {}

    /** None where the act takes no machine in. */
    static List<String> of(Seen seen, Act act) {
        return act instanceof Act.TakeIn takeIn
                ? DoorNotes.of(seen.day(), takeIn, seen.now()).stream()
                        .map(DoorWords::of)
                        .toList()
                : List.of();
    }
}
