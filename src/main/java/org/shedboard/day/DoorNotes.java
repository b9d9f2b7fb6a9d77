package org.shedboard.day;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.shedboard.register.NextDue;
import org.shedboard.register.Upkeep;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Visit;

/** What is to be known about a machine at the door, found. */
public final class DoorNotes {
    private final Day day;
    private final Act.TakeIn wanted;
    private final Instant now;
    private final List<DoorNote> notes = new ArrayList<>();

    private DoorNotes(Day day, Act.TakeIn wanted, Instant now) {
        this.day = day;
        this.wanted = wanted;
        this.now = now;
    }

    /**
     * The most urgent first.
     *
     * @param wanted the machine as far as it is described; it need not be one that could be taken in like this
     */
    public static List<DoorNote> of(Day day, Act.TakeIn wanted, Instant now) {
        return new DoorNotes(day, wanted, now).all();
    }

    private List<DoorNote> all() {
        machine().ifPresent(this::service);
        year();
        parts();
        fullDay();
        return notes.stream().sorted(Comparator.comparing(DoorNote::kind)).toList();
    }

    /** A service that may be done by now, unless it is wanted already. */
    private void service(Machine machine) {
        Upkeep upkeep = day.books().upkeep();
        List<String> works = wanted.wanted().stream().map(Act.Wanted::workId).toList();
        upkeep.nextDue(machine, now)
                .filter(due -> due.on(LocalDate.ofInstant(now, day.zone())) != NextDue.State.AHEAD)
                .filter(due -> !upkeep.isDoneBy(machine, due, works))
                .ifPresent(due -> notes.add(note(due)));
    }

    private DoorNote note(NextDue due) {
        String work = day.books().catalogue().expectWork(due.workId()).name();
        return due.dial()
                .map(dial -> DoorNote.of(DoorNote.Kind.SERVICE_BY_METER, work, dial.sayDue(), dial.sayNow()))
                .orElseGet(() -> DoorNote.of(
                        DoorNote.Kind.SERVICE_BY_DATE,
                        work,
                        Clocks.sayFullDate(due.dates().likely())));
    }

    private void year() {
        OptionalInt year =
                machine().map(Machine::modelYear).orElse(wanted.which().modelYear());
        if (isDescribed() && year.isEmpty()) {
            notes.add(DoorNote.of(DoorNote.Kind.YEAR_UNKNOWN));
        }
    }

    /** What would be short if the machine came in like this, and what somebody has to look for on it. */
    private void parts() {
        if (Acts.apply(day, Quoting.withoutPromise(wanted), now) instanceof Outcome.Done done) {
            Visit visit = done.day().expectVisit(done.subject().orElseThrow());
            List<Cover> covers = SetAside.of(done.day(), now).of(visit);
            covers.stream().filter(Cover::isShort).forEach(this::isShort);
            covers.stream().map(Cover::need).filter(Need::isOpen).distinct().forEach(this::toCheck);
        }
    }

    private void isShort(Cover cover) {
        DoorNote.Kind kind =
                cover.state() == Cover.State.ON_ORDER ? DoorNote.Kind.PART_ON_ORDER : DoorNote.Kind.PART_NOT_ORDERED;
        String item = day.books().catalogue().nameOfItem(cover.itemId());
        notes.add(DoorNote.of(kind, item, Clocks.sayTime(day, cover.from().orElseThrow())));
    }

    private void toCheck(Need need) {
        String items =
                need.itemIds().stream().map(day.books().catalogue()::nameOfItem).collect(Collectors.joining(", "));
        notes.add(DoorNote.of(DoorNote.Kind.PART_TO_CHECK, need.part().name(), items));
    }

    /** A booking is not refused for it: the foreman may know better. */
    private void fullDay() {
        notes.addAll(new FullDay(day, now).notes(wanted));
    }

    /** The machine, if it is one we know. */
    private Optional<Machine> machine() {
        return wanted.which().machineId().flatMap(day.books()::findMachine);
    }

    private boolean isDescribed() {
        return machine().isPresent() || !wanted.which().label().isBlank();
    }
}
