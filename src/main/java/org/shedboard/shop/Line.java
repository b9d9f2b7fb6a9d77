package org.shedboard.shop;

import java.util.List;

/**
 * A piece of work wanted on a visit and who pays for it.
 *
 * @param workId the catalogue's name of the work
 */
public record Line(String id, String workId, String name, Payer payer, List<Part> parts) {
    public Line {
        parts = List.copyOf(parts);
    }
}
