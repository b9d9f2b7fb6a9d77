package org.shedboard.app.command;

import java.time.Instant;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.shedboard.day.Day;
import org.shedboard.files.Fields;
import org.shedboard.files.WrittenTime;

/** A JSON object being put together: keys keep their order, and what is absent is there as null. */
final class Tree {
    private final Map<String, Object> fields = new LinkedHashMap<>();

    Tree put(String key, Object value) {
        fields.put(key, value);
        return this;
    }

    Tree put(String key, Enum<?> value) {
        return put(key, (Object) Fields.nameOf(value));
    }

    Tree put(String key, Optional<?> value) {
        return put(key, (Object) value.orElse(null));
    }

    Tree put(String key, OptionalInt value) {
        return put(key, value.isPresent() ? (Object) value.getAsInt() : null);
    }

    Map<String, Object> fields() {
        return fields;
    }

    /** A moment with the offset of the shop's zone. */
    static String time(Day day, Instant at) {
        return time(day.zone(), at);
    }

    static String time(ZoneId zone, Instant at) {
        return WrittenTime.of(zone, at);
    }
}
