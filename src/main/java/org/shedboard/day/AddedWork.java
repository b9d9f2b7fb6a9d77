package org.shedboard.day;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.shedboard.shop.Line;
import org.shedboard.shop.Visit;

/**
 * Which lines of a visit were added after it was agreed on. Everything is numbered from one count as it comes, and a visit right after
 * the lines it comes with: a line with a higher number than its visit came later.
 */
final class AddedWork {
    private AddedWork() {}

    /** Ids of lines; none where the ids were given by somebody else. */
    static Set<String> linesOf(Visit visit) {
        Optional<Long> own = number(visit.id());
        return visit.lines().stream()
                .map(Line::id)
                .filter(id -> own.isPresent() && number(id).orElse(own.get()) > own.get())
                .collect(Collectors.toSet());
    }

    private static Optional<Long> number(String id) {
        return id.matches("[A-Z][0-9]{1,18}") ? Optional.of(Long.parseLong(id.substring(1))) : Optional.empty();
    }
}
