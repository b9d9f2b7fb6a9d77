package org.shedboard.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.shedboard.pack.fault.Fault;

/** What came out of a file: its value, or all that is wrong with it; never both, never a part. */
public record Reading<T>(Optional<T> value, List<Fault> faults) {
    public Reading {
        faults = List.copyOf(faults);
        if (value.isPresent() != faults.isEmpty()) {
            throw new IllegalArgumentException(
                    "a reading has a value or faults, not %s and %s".formatted(value, faults));
        }
    }

    /** What is read from a file's outermost object, given only when nothing at all was wrong. */
    static <T> Reading<T> of(String text, Function<Fields, T> read) {
        List<Fault> faults = new ArrayList<>();
        Optional<T> value = Fields.parse(text, faults).map(fields -> {
            T all = read.apply(fields);
            fields.end();
            return all;
        });
        return new Reading<>(faults.isEmpty() ? value : Optional.empty(), faults);
    }

    /** The value of a file that is known to be sound. */
    public T expectValue() {
        return value.orElseThrow(() ->
                new IllegalStateException(faults.stream().map(Fault::toString).collect(Collectors.joining("\n"))));
    }
}
