package org.shedboard.day;

import java.util.Arrays;
import java.util.List;

/**
 * Something that whoever takes a machine in ought to know before a time is said.
 *
 * @param values what belongs into its sentence, as a person reads it
 */
public record DoorNote(Kind kind, List<String> values) {
    /** What it is about, the most urgent first. */
    public enum Kind {
        SERVICE_BY_METER,
        SERVICE_BY_DATE,
        PART_NOT_ORDERED,
        PART_ON_ORDER,
        PART_TO_CHECK,
        DAY_SHUT,
        PLACES_FULL,
        PEOPLE_FULL,
        EVERYBODY_FULL,
        ROOM_ON,
        NO_ROOM,
        YEAR_UNKNOWN
    }

    public DoorNote {
        values = List.copyOf(values);
    }

    static DoorNote of(Kind kind, Object... values) {
        return new DoorNote(kind, Arrays.stream(values).map(String::valueOf).toList());
    }
}
