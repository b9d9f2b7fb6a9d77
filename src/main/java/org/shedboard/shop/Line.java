package org.shedboard.shop;

import java.util.List;
import java.util.OptionalInt;

/**
 * A piece of work wanted on a visit and who pays for it.
 *
 * @param workId the catalogue's name of the work
 * @param agreedMinutes what the payer was told it would be charged as, where something was
 */
public record Line(String id, String workId, String name, Payer payer, List<Part> parts, OptionalInt agreedMinutes) {
    public Line {
        parts = List.copyOf(parts);
        if (agreedMinutes.orElse(0) < 0) {
            throw new IllegalArgumentException("line %s cannot be charged as %s".formatted(id, agreedMinutes));
        }
    }

    /** A line for which nothing was agreed. */
    public Line(String id, String workId, String name, Payer payer, List<Part> parts) {
        this(id, workId, name, payer, parts, OptionalInt.empty());
    }

    public Line withParts(List<Part> next) {
        return new Line(id, workId, name, payer, next, agreedMinutes);
    }

    public Line agreedAt(int minutes) {
        return new Line(id, workId, name, payer, parts, OptionalInt.of(minutes));
    }
}
