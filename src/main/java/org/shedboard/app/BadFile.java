package org.shedboard.app;

import java.util.ArrayList;
import java.util.List;
import org.shedboard.pack.fault.Fault;
import org.shedboard.words.Words;

/** A file that cannot be used, with everything that is wrong with it. */
final class BadFile extends RuntimeException {
    private static final long serialVersionUID = 1L;
    static final int MOST_LINES = 500;
    private static final int LONGEST_LINE = 500;

    private final transient List<Fault> faults;

    BadFile(List<Fault> faults) {
        super("%s faults, the first: %s".formatted(faults.size(), faults.get(0)), null, false, false);
        this.faults = List.copyOf(faults);
    }

    List<Fault> faults() {
        return faults;
    }

    /** A line a fault, up to a number nobody reads; then how many more there are. */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        faults.stream().limit(MOST_LINES).map(fault -> brief(fault.toString())).forEach(lines::add);
        if (faults.size() > MOST_LINES) {
            lines.add(Words.say("command.more_faults", faults.size() - MOST_LINES));
        }
        return lines;
    }

    private static String brief(String line) {
        return line.length() <= LONGEST_LINE ? line : line.substring(0, LONGEST_LINE) + "…";
    }
}
