package org.shedboard.day;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.shedboard.forecast.VisitForecast;
import org.shedboard.hours.ClockEntry;
import org.shedboard.hours.Errand;
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
 * @param entries today's clock entries with the corrections to them, and any that are still open
 * @param errands other work that is planned, or that somebody is on
 * @param unclosed the newest earlier day that was opened and never closed
 * @param posted the plan everybody works to, once there is one
 * @param nextNumber the number the next new thing gets in its id
 */
public record Day(
        Books books,
        LocalDate date,
        Optional<Opening> opening,
        List<Visit> visits,
        List<ClockEntry> entries,
        List<Errand> errands,
        Optional<LocalDate> unclosed,
        Optional<Posted> posted,
        long nextNumber) {
    public Day {
        visits = List.copyOf(visits);
        entries = List.copyOf(entries);
        errands = List.copyOf(errands);
    }

    /** A day of which nothing is known yet, in a shop that has not numbered anything. */
    static Day blank(Books books, LocalDate date) {
        return new Day(
                books, date, Optional.empty(), List.of(), List.of(), List.of(), Optional.empty(), Optional.empty(), 1);
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

    /** What a visit takes, as its finished work taught the shop. */
    public VisitForecast forecastOf(Visit visit) {
        return VisitForecast.of(books.grounds(), machineOf(visit), visit, date);
    }

    public Machine machineOf(Visit visit) {
        return books.machineOf(visit);
    }

    public Owner ownerOf(Visit visit) {
        return books.ownerOf(visit);
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

    /** What a person is called; the id of one who is no longer of the shop. */
    public String nameOf(String personId) {
        return books.nameOf(personId);
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

    /** What is planned for a person besides machines, in order. */
    public List<Errand> errandsOf(String personId) {
        return errands.stream()
                .filter(errand -> errand.personId().equals(personId) && errand.isOpen())
                .sorted(Comparator.comparing(Errand::from))
                .toList();
    }

    /** Entries somebody forgot to end before a midnight, the oldest first. */
    public List<ClockEntry> unsettled() {
        return entries.stream()
                .filter(entry -> entry.isOpen() && entry.from().isBefore(origin()))
                .sorted(Comparator.comparing(ClockEntry::from))
                .toList();
    }

    /** Ids of those of whom nobody said when they left, by now or by a correction. */
    public List<String> stillHere() {
        return ClockEntry.standing(rows()).stream()
                .filter(row -> row.isAtWork() && row.isOpen())
                .map(ClockEntry::personId)
                .toList();
    }

    /** The presences of the day and its clock entries, as the rows that hours are tallied from. */
    public List<ClockEntry> rows() {
        List<ClockEntry> rows = new ArrayList<>();
        opening.ifPresent(opened -> rows.addAll(Presences.of(opened)));
        rows.addAll(entries);
        return rows;
    }

    public Day with(Books next) {
        return new Day(next, date, opening, visits, entries, errands, unclosed, posted, nextNumber);
    }

    Day with(Opening next) {
        return new Day(books, date, Optional.of(next), visits, entries, errands, unclosed, posted, nextNumber);
    }

    Day with(Visit visit) {
        return withVisits(Books.replaced(visits, visit, Visit::id));
    }

    private Day withVisits(List<Visit> next) {
        return new Day(books, date, opening, next, entries, errands, unclosed, posted, nextNumber);
    }

    Day with(ClockEntry entry) {
        return withEntries(Books.replaced(entries, entry, ClockEntry::id));
    }

    private Day withEntries(List<ClockEntry> next) {
        return new Day(books, date, opening, visits, next, errands, unclosed, posted, nextNumber);
    }

    Day with(Errand errand) {
        List<Errand> next = Books.replaced(errands, errand, Errand::id);
        return new Day(books, date, opening, visits, entries, next, unclosed, posted, nextNumber);
    }

    public Day with(Posted plan) {
        return withPlan(Optional.of(plan));
    }

    Day withoutPlan() {
        return withPlan(Optional.empty());
    }

    private Day withPlan(Optional<Posted> plan) {
        return new Day(books, date, opening, visits, entries, errands, unclosed, plan, nextNumber);
    }

    /** The day after this one that the date names: what is over stays behind. */
    Day on(LocalDate next) {
        List<Visit> staying = visits.stream()
                .filter(visit -> visit.state().isOpen() || visit.state().isHere())
                .toList();
        List<ClockEntry> open = entries.stream().filter(ClockEntry::isOpen).toList();
        List<Errand> planned = errands.stream().filter(Errand::isOpen).toList();
        Optional<LocalDate> before = isOpened() && !isClosed() ? Optional.of(date) : unclosed;
        return new Day(books, next, Optional.empty(), staying, open, planned, before, posted, nextNumber);
    }

    Day withNextNumber(long number) {
        return new Day(books, date, opening, visits, entries, errands, unclosed, posted, number);
    }
}
