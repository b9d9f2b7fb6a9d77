package org.shedboard.board;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shedboard.day.Act;
import org.shedboard.day.Lasting;
import org.shedboard.day.Trace;

/**
 * What was done at this terminal today, the oldest first, and what of it was taken back and can be done again. What other terminals do
 * is not in it: an act of theirs to the same thing makes that one of ours cannot be taken back any more.
 */
public record Doings(List<Doing> done, List<Doing> undone) {
    public static final Doings NONE = new Doings(List.of(), List.of());

    /** Nobody goes back further than this. Invented. */
    private static final int MOST = 50;

    public Doings {
        done = List.copyOf(done);
        undone = List.copyOf(undone);
    }

    /**
     * One act.
     *
     * @param at when it was done
     * @param sentence what was said of it then
     * @param trace by which it is taken back, or done again where it was taken back
     * @param lasting why it cannot be
     */
    public record Doing(Instant at, String sentence, Trace trace, Optional<Lasting> lasting) {
        Doing with(Trace next) {
            return new Doing(at, sentence, next, lasting);
        }
    }

    boolean isEmpty() {
        return done.isEmpty() && undone.isEmpty();
    }

    /** With an act that was carried out here; what was taken back before it is not done again after it. */
    Doings plus(Doing doing) {
        return new Doings(joined(done, doing), List.of());
    }

    /** What an act took back, or did again. */
    Optional<Doing> meantBy(Act.TakeBack act) {
        return find(done, act).or(() -> find(undone, act));
    }

    /** Whether it took something back that was done, and did nothing again. */
    boolean isDone(Act.TakeBack act) {
        return find(done, act).isPresent();
    }

    /** After that act was carried out: what was done is what can be done again, and the other way round. */
    Doings after(Act.TakeBack act, Trace trace) {
        Optional<Doing> taken = find(done, act);
        if (taken.isPresent()) {
            return new Doings(
                    without(done, taken.get()), joined(undone, taken.get().with(trace)));
        }
        return find(undone, act)
                .map(again -> new Doings(joined(done, again.with(trace)), without(undone, again)))
                .orElse(this);
    }

    private static Optional<Doing> find(List<Doing> all, Act.TakeBack act) {
        return all.stream().filter(doing -> doing.trace().equals(act.trace())).findFirst();
    }

    private static List<Doing> joined(List<Doing> all, Doing last) {
        List<Doing> next = new ArrayList<>(all.subList(Math.max(0, all.size() - MOST + 1), all.size()));
        next.add(last);
        return next;
    }

    private static List<Doing> without(List<Doing> all, Doing one) {
        return all.stream().filter(doing -> !doing.equals(one)).toList();
    }
}
