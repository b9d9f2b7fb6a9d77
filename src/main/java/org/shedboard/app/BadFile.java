package org.shedboard.app;

import java.util.List;
import org.shedboard.pack.Fault;

/** A file that cannot be used, with everything that is wrong with it. */
final class BadFile extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<Fault> faults;

    BadFile(List<Fault> faults) {
        super("%d faults, the first: %s".formatted(faults.size(), faults.get(0)), null, false, false);
        this.faults = List.copyOf(faults);
    }

    List<String> lines() {
        return faults.stream().map(Fault::toString).toList();
    }
}
