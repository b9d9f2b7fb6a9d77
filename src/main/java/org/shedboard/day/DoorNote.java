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
        LAST_NOT_TO_RIDE,
        LAST_DECLINED,
        LAST_FIX,
        LAST_WATCH,
        LAST_NOT_REACHED,
        WASH_DOWN_FIRST,
        YEAR_UNKNOWN,
        YEARS_POSSIBLE,
        YEAR_NOT_OF_NUMBER,
        SERVICE_BY_READING,
        SERVICE_BY_METER,
        SERVICE_BY_DATE,
        DAY_SHUT,
        PLACES_FULL,
        PEOPLE_FULL,
        EVERYBODY_FULL,
        ROOM_ON,
        NO_ROOM,
        PART_NOT_ORDERED,
        PART_ON_ORDER,
        PART_TO_CHECK,
        NOTICE,
        NOTICE_MAYBE,
        CHECK_DIGIT_WRONG,
        NUMBER_LETTER,
        NUMBER_NO_YEAR,
        NUMBER_LENGTH
    }

    public DoorNote {
        values = List.copyOf(values);
    }

    static DoorNote of(Kind kind, Object... values) {
        return new DoorNote(kind, Arrays.stream(values).map(String::valueOf).toList());
    }
}
