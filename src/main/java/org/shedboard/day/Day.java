package org.shedboard.day;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.shedboard.hours.ClockEntry;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Opening;
import org.shedboard.shop.Owner;
import org.shedboard.shop.Person;
import org.shedboard.shop.Shop;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;

/**
 * Everything that is so on one day.
 *
 * @param visits those not yet gone, and those that ended today
 * @param entries today's clock entries, and any that are still open
 * @param posted the plan everybody works to, once there is one
 * @param nextNumber the number the next new thing gets in its id
 */
public record Day(
        Books books,
        LocalDate date,
        Optional<Opening> opening,
        List<Visit> visits,
        List<ClockEntry> entries,
        Optional<Posted> posted,
        long nextNumber) {
    public Day {
        visits = List.copyOf(visits);
        entries = List.copyOf(entries);
    }

    public Shop shop() {
        return books.shop();
    }

    public ZoneId zone() {
        return shop().zone();
    }

    /** Midnight at the start of the day: minute 0 of its packing problem. */
    public Instant origin() {
        return date.atStartOfDay(zone()).toInstant();
    }

    /** Whole minutes from the day's start; negative before it. */
    public int minuteOf(Instant at) {
        return (int) Math.floorDiv(Duration.between(origin(), at).toSeconds(), 60L);
    }

    public Instant instantOf(int minute) {
        return origin().plusSeconds(60L * minute);
    }

    public LocalTime timeOf(Instant at) {
        return LocalTime.ofInstant(at, zone());
    }

    public boolean isOpened() {
        return opening.isPresent();
    }

    public boolean isClosed() {
        return opening.flatMap(Opening::closed).isPresent();
    }

    public Optional<Visit> findVisit(String id) {
        return visits.stream().filter(visit -> visit.id().equals(id)).findFirst();
    }

    public Visit expectVisit(String id) {
        return findVisit(id).orElseThrow(() -> new IllegalArgumentException("no visit %s today".formatted(id)));
    }

    public Optional<Visit> findByTag(int tag) {
        return visits.stream()
                .filter(visit -> visit.tag().isPresent() && visit.tag().getAsInt() == tag)
                .findFirst();
    }

    public Machine machineOf(Visit visit) {
        return books.expectMachine(visit.machineId());
    }

    public Owner ownerOf(Visit visit) {
        return books.expectOwner(machineOf(visit).ownerId());
    }

    /** Id of whoever is taken to act where nobody is named: whoever opened the day, else the first of the people. */
    public String inCharge() {
        return opening.map(Opening::by).orElseGet(() -> shop().people().get(0).id());
    }

    /** The visit that stands in a place now. */
    public Optional<Visit> standingIn(String placeId) {
        return visits.stream()
                .filter(visit -> visit.state().isOpen())
                .filter(visit -> visit.standsIn().filter(placeId::equals).isPresent())
                .findFirst();
    }

    public Optional<ClockEntry> openEntryOf(String personId) {
        return entries.stream()
                .filter(entry -> entry.isOpen() && entry.personId().equals(personId))
                .findFirst();
    }

    /** What a person is on at the moment. */
    public Optional<Running> runningOf(String personId) {
        for (Visit visit : visits) {
            for (Task task : visit.tasks()) {
                if (task.progress().isRunning() && task.progress().isBy(personId)) {
                    return Optional.of(new Running(visit, task));
                }
            }
        }
        return Optional.empty();
    }

    /** A task in somebody's hands. */
    public record Running(Visit visit, Task task) {}

    /** Whether a person is here at this moment, as far as we were told. */
    public boolean isHere(Person person) {
        return opening.flatMap(opened -> opened.attendanceOf(person.id()))
                .filter(attendance -> attendance.left().isEmpty())
                .isPresent();
    }

    Day with(Books next) {
        return new Day(next, date, opening, visits, entries, posted, nextNumber);
    }

    Day with(Opening next) {
        return new Day(books, date, Optional.of(next), visits, entries, posted, nextNumber);
    }

    Day with(Visit visit) {
        return new Day(books, date, opening, Books.replaced(visits, visit, Visit::id), entries, posted, nextNumber);
    }

    Day with(ClockEntry entry) {
        return new Day(
                books, date, opening, visits, Books.replaced(entries, entry, ClockEntry::id), posted, nextNumber);
    }

    public Day with(Posted plan) {
        return new Day(books, date, opening, visits, entries, Optional.of(plan), nextNumber);
    }

    /** The day after this one that the date names: what is over stays behind. */
    Day on(LocalDate next) {
        List<Visit> staying = visits.stream()
                .filter(visit -> visit.state().isOpen() || visit.state().isHere())
                .toList();
        List<ClockEntry> open = entries.stream().filter(ClockEntry::isOpen).toList();
        return new Day(books, next, Optional.empty(), staying, open, posted, nextNumber);
    }

    Day withoutPlan() {
        return new Day(books, date, opening, visits, entries, Optional.empty(), nextNumber);
    }

    Day withNextNumber(long number) {
        return new Day(books, date, opening, visits, entries, posted, number);
    }
}
