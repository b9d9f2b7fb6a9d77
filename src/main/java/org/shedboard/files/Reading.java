package org.shedboard.files;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** What came out of a file: its value, or all that is wrong with it; never both, never a part. */
public record Reading<T>(Optional<T> value, List<Fault> faults) {
    public Reading {
        faults = List.copyOf(faults);
        if (value.isPresent() != faults.isEmpty()) {
            throw new IllegalArgumentException(
                    "a reading has a value or faults, not %s and %s".formatted(value, faults));
        }
    }

    /** The value, made only when no fault was noted. */
    static <T> Reading<T> of(List<Fault> faults, Supplier<T> value) {
        return new Reading<>(faults.isEmpty() ? Optional.of(value.get()) : Optional.empty(), faults);
    }

    /** The value of a file that is known to be sound. */
    public T expectValue() {
        return value.orElseThrow(() ->
                new IllegalStateException(faults.stream().map(Fault::toString).collect(Collectors.joining("\n"))));
    }
}
