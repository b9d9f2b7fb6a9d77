package org.shedboard.day;

import java.util.List;
import java.util.Optional;

/** What comes of an act: the next day and what to save, or a refusal and nothing. */
public sealed interface Outcome {
    /**
     * The act is carried out.
     *
     * @param subject id of the visit it was about, where it was about one
     * @param trace by which it can be taken back
     */
    record Done(Day day, List<Change> changes, Optional<String> subject, Trace trace) implements Outcome {
        public Done {
            changes = List.copyOf(changes);
        }
    }

    /** The act cannot be. */
    record Refused(Refusal refusal) implements Outcome {}
}
