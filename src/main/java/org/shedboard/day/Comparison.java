package org.shedboard.day;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.shedboard.pack.Plan;
import org.shedboard.shop.Promise;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;

/**
 * What becomes of every visit when one outlook of a day takes the place of another. The two need not be of the same problem: a visit
 * may have come, somebody may have gone.
 *
 * @param rows the visits of which anything changes, in the order in which the later outlook works on them
 */
public record Comparison(List<Row> rows) {
    public Comparison {
        rows = List.copyOf(rows);
    }

    /** How a visit stands in one outlook. */
    public record Standing(Optional<Instant> ready, Optional<Instant> promised, OptionalInt chance) {
        static Standing of(Outlook outlook, Visit visit) {
            return new Standing(
                    outlook.readyAt(visit.id()), visit.promise().map(Promise::at), outlook.chanceOfPromise(visit));
        }

        /** Whether what was promised is less likely than not. */
        boolean isInDanger() {
            return promised.isPresent() && (chance.isEmpty() || chance.getAsInt() < Concerns.IN_DANGER);
        }
    }

    /** A task that is at another time, in other hands or in another place. */
    public record Move(Task task, At before, At after) {
        /** When, by whom and where. */
        public record At(Instant start, List<String> people, Optional<String> place) {
            public At {
                people = List.copyOf(people);
            }
        }
    }

    /** What becomes of a promise. */
    public enum Fate {
        /** It is as it was, or there is none. */
        SAME,
        IN_DANGER,
        SAVED
    }

    /**
     * One visit.
     *
     * @param before how it stood; empty for one that was not there
     * @param after how it would stand; empty for one that would not be there
     */
    public record Row(Visit visit, Optional<Standing> before, Optional<Standing> after, List<Move> moves) {
        public Row {
            moves = List.copyOf(moves);
        }

        public Fate fate() {
            boolean was = before.filter(Standing::isInDanger).isPresent();
            boolean is = after.filter(Standing::isInDanger).isPresent();
            return was == is ? Fate.SAME : is ? Fate.IN_DANGER : Fate.SAVED;
        }

        boolean isChanged() {
            return !before.equals(after) || !moves.isEmpty();
        }

        /** Whether it is ready earlier, or at all where it was not. */
        public boolean isEarlier() {
            return readyAfter().isPresent()
                    && readyBefore()
                            .filter(was -> !readyAfter().get().isBefore(was))
                            .isEmpty();
        }

        /** Whether it is ready later, or not any more. */
        public boolean isLater() {
            return readyBefore().isPresent()
                    && readyAfter()
                            .filter(is -> !is.isAfter(readyBefore().get()))
                            .isEmpty();
        }

        private Optional<Instant> readyBefore() {
            return before.flatMap(Standing::ready);
        }

        private Optional<Instant> readyAfter() {
            return after.flatMap(Standing::ready);
        }
    }

    /** From the one outlook to the other. */
    public static Comparison between(Outlook before, Outlook after) {
        Map<String, Visit> visits = new LinkedHashMap<>();
        after.queue().forEach(visit -> visits.put(visit.id(), visit));
        before.queue().forEach(visit -> visits.putIfAbsent(visit.id(), visit));
        return new Comparison(visits.values().stream()
                .map(visit -> row(before, after, visit))
                .filter(Row::isChanged)
                .toList());
    }

    private static Row row(Outlook before, Outlook after, Visit visit) {
        return new Row(
                visit,
                openIn(before, visit).map(each -> Standing.of(before, each)),
                openIn(after, visit).map(each -> Standing.of(after, each)),
                moves(before, after, visit));
    }

    private static Optional<Visit> openIn(Outlook outlook, Visit visit) {
        return outlook.day().findVisit(visit.id()).filter(each -> each.state().isOpen());
    }

    private static List<Move> moves(Outlook before, Outlook after, Visit visit) {
        List<Move> moves = new ArrayList<>();
        for (Task task : visit.tasks()) {
            Optional<Move.At> was = at(before, visit, task);
            Optional<Move.At> is = at(after, visit, task);
            if (!task.isDone() && was.isPresent() && is.isPresent() && !was.equals(is)) {
                moves.add(new Move(task, was.get(), is.get()));
            }
        }
        return moves;
    }

    private static Optional<Move.At> at(Outlook outlook, Visit visit, Task task) {
        return outlook.timeOf(visit.id(), task.id())
                .map(time -> new Move.At(
                        outlook.day().instantOf(outlook.handsFrom(time)),
                        time.people(),
                        outlook.plan().findStay(visit.id(), time.stay()).map(Plan.StayPlace::place)));
    }

    /** How many visits are ready earlier. */
    public int earlier() {
        return (int) rows.stream().filter(Row::isEarlier).count();
    }

    /** How many visits are ready later. */
    public int later() {
        return (int) rows.stream().filter(Row::isLater).count();
    }

    /** How many promises become so. */
    public int count(Fate fate) {
        return (int) rows.stream().filter(row -> row.fate() == fate).count();
    }
}
