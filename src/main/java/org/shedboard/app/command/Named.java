package org.shedboard.app.command;

import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.shedboard.files.Fields;

/** Constants as they are written on command lines and in JSON: {@code not-reached}. */
final class Named {
    private Named() {}

    static <E extends Enum<E>> Optional<E> find(Class<E> type, String text) {
        return Stream.of(type.getEnumConstants())
                .filter(each -> Fields.nameOf(each).equalsIgnoreCase(text))
                .findFirst();
    }

    static String all(Class<? extends Enum<?>> type) {
        return Stream.of(type.getEnumConstants()).map(Fields::nameOf).collect(Collectors.joining(", "));
    }
}
