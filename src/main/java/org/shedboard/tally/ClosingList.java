package org.shedboard.tally;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.shedboard.day.Clocks;
import org.shedboard.day.Day;
import org.shedboard.day.Names;
import org.shedboard.day.Outlook;
import org.shedboard.day.PointsDue;
import org.shedboard.day.Presences;
import org.shedboard.hours.Activity;
import org.shedboard.hours.ClockEntry;
import org.shedboard.hours.Stretch;
import org.shedboard.shop.Hold;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Place;
import org.shedboard.shop.Promise;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;

/**
 * Goes over a day that is to be closed: what is open, what stands where it should not, whom nobody told, what goes over.
 *
 * <p>A machine was drained and not filled when a task {@code drain} of it is done and its {@code fill} is not, or {@code drain-oil} and
 * {@code fill-oil}: catalogues name such pairs alike.
 */
public final class ClosingList {
    private static final String DRAIN = "drain";
    private static final String FILL = "fill";

    private final Outlook outlook;
    private final Day day;
    private final SpanTally tally;
    private final List<ClosingItem> items = new ArrayList<>();

    private ClosingList(Outlook outlook, SpanTally tally) {
        this.outlook = outlook;
        this.day = outlook.day();
        this.tally = tally;
    }

    /** What there is to look at, in order; the tally is that of the day. */
    public static List<ClosingItem> of(Outlook outlook, SpanTally tally) {
        ClosingList list = new ClosingList(outlook, tally);
        list.hours();
        list.day.visits().forEach(list::lookAt);
        list.hoists();
        return list.items.stream()
                .sorted(Comparator.comparing(ClosingItem::kind))
                .toList();
    }

    private void hours() {
        day.entries().stream().filter(ClockEntry::isOpen).forEach(entry -> {
            String since = Clocks.sayTime(day, entry.from());
            add(ClosingItem.Kind.OPEN_ENTRY, entry, day.nameOf(entry.personId()), TallyWords.on(tally, entry), since);
        });
        day.opening().stream()
                .flatMap(opening -> Presences.of(opening).stream())
                .filter(entry ->
                        entry.isOpen() && day.openEntryOf(entry.personId()).isEmpty())
                .forEach(entry -> add(
                        ClosingItem.Kind.STILL_HERE,
                        entry,
                        day.nameOf(entry.personId()),
                        Clocks.sayTime(day, entry.from())));
        toSay().forEach(entry -> add(
                ClosingItem.Kind.REST_TO_SAY,
                entry,
                day.nameOf(entry.personId()),
                Clocks.sayTime(day, entry.from()),
                Clocks.sayTime(day, entry.to().orElseThrow())));
        tally.hours()
                .overlapped()
                .forEach(entry -> add(
                        ClosingItem.Kind.OVERLAPPED,
                        entry,
                        day.nameOf(entry.personId()),
                        entry.id(),
                        TallyWords.on(tally, entry),
                        Clocks.sayTime(day, entry.from())));
    }

    /** Breaks that are neither rests nor meals by their length; one that nobody clocked is told as if somebody had. */
    private List<ClockEntry> toSay() {
        List<ClockEntry> breaks = new ArrayList<>();
        tally.hours()
                .days()
                .forEach(person -> person.stretches().stream()
                        .filter(stretch -> stretch.use() == Stretch.Use.REST_TO_SAY)
                        .forEach(stretch -> breaks.add(clocked(person.personId(), stretch))));
        return breaks;
    }

    private ClockEntry clocked(String personId, Stretch stretch) {
        return ClockEntry.standing(day.entries()).stream()
                .filter(entry -> entry.personId().equals(personId) && entry.activity() instanceof Activity.Break)
                .filter(entry -> entry.overlaps(stretch.from(), stretch.to()))
                .findFirst()
                .orElse(new ClockEntry(
                        "",
                        personId,
                        new Activity.Break(Activity.Break.Kind.MEAL),
                        stretch.from(),
                        Optional.of(stretch.to())));
    }

    private void lookAt(Visit visit) {
        String name = Names.of(day, visit);
        if (visit.state().isHere()) {
            drained(visit).forEach(task -> add(ClosingItem.Kind.NO_OIL, name, task.name()));
            visit.standsIn()
                    .flatMap(day.shop()::findPlace)
                    .filter(Place::isHoist)
                    .ifPresent(hoist -> add(ClosingItem.Kind.ON_HOIST, name, hoist.name()));
        }
        if (visit.finished().filter(this::isToday).isPresent()) {
            String points = PointsDue.markedOf(day, visit, Mark.NOT_REACHED).stream()
                    .map(point -> point.name())
                    .collect(Collectors.joining(", "));
            if (!points.isEmpty()) {
                add(ClosingItem.Kind.NOT_REACHED, name, points);
            }
        }
        visit.firstPromise()
                .filter(promise -> isToday(promise.at()) && isDue(visit) && isMissed(visit, promise))
                .ifPresent(promise -> missed(visit, promise));
        visit.hold()
                .filter(hold -> hold.reason() == Hold.Reason.PARTS)
                .ifPresent(hold -> add(ClosingItem.Kind.PARTS_TO_ORDER, name, hold.note()));
        if (visit.state().isOpen() && visit.state().isHere()) {
            add(ClosingItem.Kind.GOES_OVER, name, goesOn(visit));
        }
    }

    private static List<Task> drained(Visit visit) {
        return visit.tasks().stream()
                .filter(task -> task.isDone() && task.id().startsWith(DRAIN))
                .flatMap(task -> visit.findTask(FILL + task.id().substring(DRAIN.length())).stream())
                .filter(fill -> !fill.isDone())
                .toList();
    }

    private boolean isToday(Instant at) {
        return tally.ledger().isWithin(at);
    }

    private static boolean isDue(Visit visit) {
        return visit.state() != VisitState.CANCELLED && visit.state() != VisitState.NO_SHOW;
    }

    /** One whose time is still to come is missed when the machine is not going to be ready by then. */
    private boolean isMissed(Visit visit, Promise promise) {
        boolean isToCome = visit.finished().isEmpty() && promise.at().isAfter(outlook.at());
        return isToCome
                ? outlook.readyAt(visit.id())
                        .filter(ready -> !ready.isAfter(promise.at()))
                        .isEmpty()
                : !Promises.isKept(visit);
    }

    /** Told is who heard of another time before the promised one was over. */
    private void missed(Visit visit, Promise promise) {
        String name = Names.of(day, visit);
        Optional<Promise> told = visit.promises().stream()
                .skip(visit.promises().indexOf(promise) + 1L)
                .filter(later -> !later.saidAt().isAfter(promise.at()))
                .findFirst();
        if (told.isPresent()) {
            add(
                    ClosingItem.Kind.MISSED_TOLD,
                    name,
                    Clocks.sayTime(day, promise.at()),
                    Clocks.sayTime(day, told.get().saidAt()),
                    Clocks.sayTime(day, told.get().at()));
        } else {
            add(
                    ClosingItem.Kind.MISSED_UNTOLD,
                    name,
                    Clocks.sayTime(day, promise.at()),
                    day.ownerOf(visit).phone());
        }
    }

    private String goesOn(Visit visit) {
        return outlook.nextTaskOf(visit)
                .flatMap(task -> outlook.timeOf(visit.id(), task.id()))
                .map(time -> Clocks.sayTime(day, day.instantOf(outlook.handsFrom(time))))
                .orElse("-");
    }

    private void hoists() {
        for (Place hoist : day.shop().hoists()) {
            day.opening()
                    .flatMap(opening -> opening.checkOf(hoist.id()))
                    .flatMap(check -> check.lockedOut())
                    .ifPresent(why -> add(ClosingItem.Kind.HOIST_LOCKED, hoist.name(), why));
        }
    }

    private void add(ClosingItem.Kind kind, String... values) {
        items.add(new ClosingItem(kind, Optional.empty(), Arrays.asList(values)));
    }

    private void add(ClosingItem.Kind kind, ClockEntry entry, String... values) {
        items.add(new ClosingItem(kind, Optional.of(entry), Arrays.asList(values)));
    }
}
