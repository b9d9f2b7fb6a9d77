package org.shedboard.day;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.shedboard.hours.Activity;
import org.shedboard.hours.ClockEntry;
import org.shedboard.hours.Errand;
import org.shedboard.register.Movement;
import org.shedboard.register.NoticeTaken;
import org.shedboard.shop.Visit;

/**
 * What an act changed, by which it can be taken back: of each thing how it was before and how the act left it.
 *
 * @param hours of everybody whose clock entries it changed, those that counted
 * @param moved what it took off the shelf, or put back
 */
public record Trace(
        List<Was<Visit>> visits,
        List<Was<Errand>> errands,
        List<Was<NoticeTaken>> notices,
        List<Hours> hours,
        List<Movement> moved,
        Plans plans) {
    /** Of what cannot be taken back. */
    public static final Trace NOTHING = new Trace(
            List.of(), List.of(), List.of(), List.of(), List.of(), new Plans(Optional.empty(), Optional.empty()));

    public Trace {
        visits = List.copyOf(visits);
        errands = List.copyOf(errands);
        notices = List.copyOf(notices);
        hours = List.copyOf(hours);
        moved = List.copyOf(moved);
    }

    /**
     * One thing.
     *
     * @param before empty where the act made it
     */
    public record Was<T>(Optional<T> before, T after) {}

    /** The entries of a person that counted, each in the order in which they began. */
    public record Hours(String personId, List<Stretch> before, List<Stretch> after) {
        public Hours {
            before = List.copyOf(before);
            after = List.copyOf(after);
        }

        static Hours of(String personId, Day before, Day after) {
            return new Hours(personId, Stretch.of(before, personId), Stretch.of(after, personId));
        }

        /** What the person was on before, and had not ended. */
        public Optional<Stretch> openBefore() {
            return before.stream().filter(stretch -> stretch.to().isEmpty()).findFirst();
        }
    }

    /** The posted plan before and after. */
    public record Plans(Optional<Posted> before, Optional<Posted> after) {
        /** Whether the plan is still the one that the act left. */
        boolean isStill(Optional<Posted> now) {
            return isSame(after, now);
        }

        boolean isSame() {
            return isSame(before, after);
        }

        /** Figures about how a plan was found are nothing that anybody works to. */
        private static boolean isSame(Optional<Posted> one, Optional<Posted> other) {
            return one.map(Posted::plan)
                            .map(plan -> List.of(plan.stays(), plan.tasks()))
                            .equals(other.map(Posted::plan).map(plan -> List.of(plan.stays(), plan.tasks())))
                    && one.map(Posted::origin).equals(other.map(Posted::origin));
        }
    }

    /** What the changes made of the one day to come to the other; {@link #NOTHING} where one of them cannot be taken back. */
    static Trace of(Day before, Day after, Collection<Change> changes) {
        boolean aboutVisit = changes.stream().anyMatch(Change.VisitSaved.class::isInstance);
        if (!changes.stream().allMatch(change -> isCovered(change) || aboutVisit && stays(change))) {
            return NOTHING;
        }
        return new Trace(
                things(
                        values(changes, Change.VisitSaved.class, Change.VisitSaved::visit),
                        Visit::id,
                        visit -> before.findVisit(visit.id())),
                things(
                        values(changes, Change.ErrandSaved.class, Change.ErrandSaved::errand),
                        Errand::id,
                        errand -> find(before, errand)),
                things(
                        values(changes, Change.NoticeTakenSaved.class, Change.NoticeTakenSaved::taken),
                        taken -> taken.visitId() + " " + taken.noticeId(),
                        taken -> find(before, taken)),
                hours(before, after, changes),
                values(changes, Change.MovementSaved.class, Change.MovementSaved::movement)
                        .toList(),
                new Plans(before.posted(), after.posted()));
    }

    /** Owners, machines and readings that came in with a machine are true all the same. */
    private static boolean stays(Change change) {
        return change instanceof Change.OwnerSaved
                || change instanceof Change.MachineSaved
                || change instanceof Change.ReadingSaved;
    }

    private static boolean isCovered(Change change) {
        return change instanceof Change.VisitSaved
                || change instanceof Change.EntrySaved
                || change instanceof Change.ErrandSaved
                || change instanceof Change.NoticeTakenSaved
                || change instanceof Change.MovementSaved moved
                        && moved.movement().kind() != Movement.Kind.COUNTED
                        && moved.movement().kind() != Movement.Kind.CAME
                || change instanceof Change.StockSaved
                || change instanceof Change.PlanPosted
                || change instanceof Change.NumberUsed;
    }

    private static <C extends Change, T> Stream<T> values(
            Collection<Change> changes, Class<C> kind, Function<C, T> value) {
        return changes.stream().filter(kind::isInstance).map(kind::cast).map(value);
    }

    /** Each thing once, as it was left in the end, however often it was saved on the way. */
    private static <T> List<Was<T>> things(Stream<T> saved, Function<T, String> id, Function<T, Optional<T>> before) {
        Map<String, T> last = new LinkedHashMap<>();
        saved.forEach(thing -> last.put(id.apply(thing), thing));
        return last.values().stream()
                .map(after -> new Was<>(before.apply(after), after))
                .filter(was -> !was.before().equals(Optional.of(was.after())))
                .toList();
    }

    private static List<Hours> hours(Day before, Day after, Collection<Change> changes) {
        Set<String> people = new LinkedHashSet<>();
        values(changes, Change.EntrySaved.class, Change.EntrySaved::entry)
                .map(ClockEntry::personId)
                .forEach(people::add);
        return people.stream()
                .map(person -> Hours.of(person, before, after))
                .filter(hours -> !hours.before().equals(hours.after()))
                .toList();
    }

    static Optional<Errand> find(Day day, Errand errand) {
        return day.errands().stream()
                .filter(each -> each.id().equals(errand.id()))
                .findFirst();
    }

    static Optional<NoticeTaken> find(Day day, NoticeTaken taken) {
        return day.books().register().takenOn(taken.visitId()).stream()
                .filter(each -> each.noticeId().equals(taken.noticeId()))
                .findFirst();
    }

    Trace withPlan(Posted after) {
        Plans next = new Plans(plans.before(), Optional.of(after));
        return equals(NOTHING) ? this : new Trace(visits, errands, notices, hours, moved, next);
    }

    /** Whether nothing but the plan is another one. */
    public boolean isOfPlanAlone() {
        return visits.isEmpty() && errands.isEmpty() && notices.isEmpty() && hours.isEmpty() && moved.isEmpty();
    }

    /** Whether there is nothing to take back. */
    public boolean isNothing() {
        return isOfPlanAlone() && plans.isSame();
    }

    /** Ids of the visits that the act was about. */
    public List<String> visitIds() {
        return visits.stream().map(was -> was.after().id()).toList();
    }

    /** What somebody was on from when to when, whichever row says so. */
    public record Stretch(Activity activity, Instant from, Optional<Instant> to) {
        static Stretch of(ClockEntry entry) {
            return new Stretch(entry.activity(), entry.from(), entry.to());
        }

        /** Those of a person that count, in the order in which they began. */
        static List<Stretch> of(Day day, String personId) {
            return rows(day, personId).stream().map(Stretch::of).toList();
        }

        /** The rows of them. */
        static List<ClockEntry> rows(Day day, String personId) {
            List<ClockEntry> rows = new ArrayList<>(ClockEntry.standing(day.entries()));
            rows.removeIf(row -> !row.personId().equals(personId));
            rows.sort(Comparator.comparing(ClockEntry::from)
                    .thenComparing(row -> row.to().orElse(Instant.MAX))
                    .thenComparing(row -> row.activity().toString()));
            return rows;
        }
    }
}
