package org.shedboard.pack.story;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;

/**
 * What another plan of the same problem changes: job by job what moves, and what that gains.
 *
 * @param jobs those for which anything changes, in the problem's order
 * @param makespanGain points gained by the latest finish of all, which belong to no job
 */
public record Difference(List<Changed> jobs, long makespanGain) {
    public Difference {
        jobs = List.copyOf(jobs);
    }

    /** From the one plan to the other. */
    public static Difference between(Problem problem, Plan from, Plan to) {
        return new DifferenceCount(problem, from, to).count();
    }

    /**
     * One job that the other plan changes.
     *
     * @param before when it is finished in the one plan; empty when it is not in it
     * @param after when it is finished in the other
     * @param gain points gained by it, all costs of its tasks and stays together; a job that is left out costs nothing
     */
    public record Changed(
            String job, List<Move> moves, OptionalInt before, OptionalInt after, Promise promise, long gain) {
        public Changed {
            moves = List.copyOf(moves);
        }

        /** Whether it is finished earlier, or at all where it was not. */
        public boolean isEarlier() {
            return after.isPresent() && (before.isEmpty() || after.getAsInt() < before.getAsInt());
        }

        /** Whether it is finished later, or not any more. */
        public boolean isLater() {
            return before.isPresent() && (after.isEmpty() || after.getAsInt() > before.getAsInt());
        }
    }

    /** What becomes of a job's promise. */
    public enum Promise {
        NONE,
        STILL_KEPT,
        STILL_MISSED,
        NOW_KEPT,
        NOW_MISSED
    }

    /** One thing that is otherwise in the other plan; only what is in both can move. */
    public sealed interface Move {
        /** The stay's place in the job. */
        int stay();

        /** A task starts at another minute. */
        record Retimed(int stay, String task, int from, int to) implements Move {}

        /** Others do a task. */
        record HandedOver(int stay, String task, List<String> from, List<String> to) implements Move {
            public HandedOver {
                from = List.copyOf(from);
                to = List.copyOf(to);
            }
        }

        /** A stay is in another place. */
        record Relocated(int stay, String from, String to) implements Move {}
    }

    /** Points gained in all; by so much less the other plan costs. */
    public long gain() {
        return makespanGain + jobs.stream().mapToLong(Changed::gain).sum();
    }

    /** How many jobs are finished earlier. */
    public int earlier() {
        return (int) jobs.stream().filter(Changed::isEarlier).count();
    }

    /** How many jobs are finished later. */
    public int later() {
        return (int) jobs.stream().filter(Changed::isLater).count();
    }

    /** All tasks that start at another minute. */
    public Stream<Move.Retimed> retimed() {
        return jobs.stream()
                .flatMap(job -> job.moves().stream())
                .filter(Move.Retimed.class::isInstance)
                .map(Move.Retimed.class::cast);
    }

    /** How many more promises are kept. */
    public int promises() {
        return count(Promise.NOW_KEPT) - count(Promise.NOW_MISSED);
    }

    private int count(Promise promise) {
        return (int) jobs.stream().filter(job -> job.promise == promise).count();
    }
}
