package org.shedboard.day;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.shedboard.hours.Presence;
import org.shedboard.hours.Tally;
import org.shedboard.shop.Attendance;
import org.shedboard.shop.Person;
import org.shedboard.shop.Promise;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;

/** The tally of a day, and what its work was estimated at. */
public final class DayTally {
    private DayTally() {}

    public static Tally of(Day day, Instant now) {
        List<Presence> presences = day.opening().stream()
                .flatMap(opening -> opening.attendances().stream())
                .map(attendance -> presence(day, attendance, now))
                .toList();
        return Tally.of(presences, day.entries(), now);
    }

    private static Presence presence(Day day, Attendance attendance, Instant now) {
        Instant to = attendance.left().orElse(now.isAfter(attendance.from()) ? now : attendance.from());
        Person person = day.shop().expectPerson(attendance.personId());
        return new Presence(person.id(), attendance.from(), to, breaks(day, person));
    }

    private static List<Presence.Break> breaks(Day day, Person person) {
        List<Presence.Break> breaks = new ArrayList<>();
        for (int i = 1; i < person.shifts().size(); i++) {
            breaks.add(new Presence.Break(
                    at(day, person.shifts().get(i - 1).to()),
                    at(day, person.shifts().get(i).from())));
        }
        return breaks;
    }

    private static Instant at(Day day, LocalTime time) {
        return day.date().atTime(time).atZone(day.zone()).toInstant();
    }

    /** Catalogue minutes of the tasks of a visit whose hands-on work ended on this day. */
    public static int estimatedOf(Day day, Visit visit) {
        ZoneId zone = day.zone();
        return visit.tasks().stream()
                .filter(Task::isDone)
                .filter(task -> task.progress()
                        .ended()
                        .filter(ended -> LocalDate.ofInstant(ended, zone).equals(day.date()))
                        .isPresent())
                .mapToInt(Task::handsOn)
                .sum();
    }

    /**
     * The promises that fall due on a day.
     *
     * @param due how many fall due
     * @param kept how many of those were done by the time first promised
     */
    public record Promises(int due, int kept) {}

    /** Promises of this day that are due by now, or done already; on a closed day all of them. */
    public static Promises promises(Day day, Instant now) {
        return count(day, visit -> day.isClosed() || visit.finished().isPresent() || isDue(visit, now));
    }

    /** All promises of this day; one whose machine is not done is not kept. */
    public static Promises promisesOf(Day day) {
        return count(day, visit -> true);
    }

    private static boolean isDue(Visit visit, Instant now) {
        return visit.firstPromise()
                .filter(promise -> !promise.at().isAfter(now))
                .isPresent();
    }

    private static Promises count(Day day, Predicate<Visit> counts) {
        List<Visit> promised = day.visits().stream()
                .filter(visit -> visit.firstPromise()
                        .filter(promise ->
                                LocalDate.ofInstant(promise.at(), day.zone()).equals(day.date()))
                        .isPresent())
                .filter(counts)
                .toList();
        return new Promises(promised.size(), (int)
                promised.stream().filter(DayTally::isKept).count());
    }

    private static boolean isKept(Visit visit) {
        Instant promised = visit.firstPromise().map(Promise::at).orElseThrow();
        return visit.finished().filter(done -> !done.isAfter(promised)).isPresent();
    }
}
