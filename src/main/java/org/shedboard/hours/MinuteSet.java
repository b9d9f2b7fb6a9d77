package org.shedboard.hours;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A set of minutes, as runs in order that neither overlap nor touch; minutes count from 1970, in UTC. */
public record MinuteSet(List<Run> runs) {
    public static final MinuteSet NONE = new MinuteSet(List.of());

    /** Minutes in a row: from inclusive, to exclusive. */
    public record Run(long from, long to) {
        public long minutes() {
            return to - from;
        }
    }

    public MinuteSet {
        runs = List.copyOf(runs);
    }

    /** The minutes from one to another; none where the second is not later. */
    public static MinuteSet of(long from, long to) {
        return from < to ? new MinuteSet(List.of(new Run(from, to))) : NONE;
    }

    /** The minutes that are in any of these runs, which may come in any order, overlap and be empty. */
    public static MinuteSet union(List<Run> any) {
        List<Run> sorted = any.stream()
                .filter(run -> run.from() < run.to())
                .sorted(Comparator.comparingLong(Run::from))
                .toList();
        List<Run> joined = new ArrayList<>();
        for (Run run : sorted) {
            Run last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
            if (last != null && run.from() <= last.to()) {
                joined.set(joined.size() - 1, new Run(last.from(), Math.max(last.to(), run.to())));
            } else {
                joined.add(run);
            }
        }
        return new MinuteSet(joined);
    }

    public MinuteSet plus(MinuteSet other) {
        if (runs.isEmpty() || other.runs.isEmpty()) {
            return runs.isEmpty() ? other : this;
        }
        List<Run> all = new ArrayList<>(runs);
        all.addAll(other.runs);
        return union(all);
    }

    public MinuteSet and(MinuteSet other) {
        List<Run> common = new ArrayList<>();
        int mine = 0;
        int theirs = 0;
        while (mine < runs.size() && theirs < other.runs.size()) {
            Run one = runs.get(mine);
            Run two = other.runs.get(theirs);
            long from = Math.max(one.from(), two.from());
            long to = Math.min(one.to(), two.to());
            if (from < to) {
                common.add(new Run(from, to));
            }
            if (one.to() < two.to()) {
                mine++;
            } else {
                theirs++;
            }
        }
        return new MinuteSet(common);
    }

    public MinuteSet minus(MinuteSet other) {
        if (runs.isEmpty() || other.runs.isEmpty()) {
            return this;
        }
        List<Run> left = new ArrayList<>();
        int theirs = 0;
        for (Run run : runs) {
            long from = run.from();
            while (theirs < other.runs.size() && other.runs.get(theirs).to() <= from) {
                theirs++;
            }
            for (int i = theirs; i < other.runs.size() && other.runs.get(i).from() < run.to(); i++) {
                Run cut = other.runs.get(i);
                if (cut.from() > from) {
                    left.add(new Run(from, cut.from()));
                }
                from = Math.max(from, cut.to());
            }
            if (from < run.to()) {
                left.add(new Run(from, run.to()));
            }
        }
        return new MinuteSet(left);
    }

    public boolean isEmpty() {
        return runs.isEmpty();
    }

    public long minutes() {
        return runs.stream().mapToLong(Run::minutes).sum();
    }
}
