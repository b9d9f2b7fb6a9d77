package org.shedboard.day;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.shedboard.estimate.Point;
import org.shedboard.pack.Plan;
import org.shedboard.shop.Person;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;

/**
 * What one person is on, or goes to next.
 *
 * @param placeId where; empty for work that takes no place
 * @param from when it began, or is planned to
 * @param until when the plan has its hands-on work over
 * @param openPoints inspection points of this task that have no finding yet
 */
public record NextTask(
        Person person,
        Visit visit,
        Stay stay,
        Task task,
        Optional<String> placeId,
        Instant from,
        Instant until,
        List<Point> openPoints) {

    public boolean isRunning() {
        return task.progress().isRunning();
    }

    /** What this person is on; else what the plan has for them next. */
    public static Optional<NextTask> of(Outlook outlook, Person person) {
        return all(outlook, person).stream().findFirst();
    }

    /** All the plan has for this person, in order, what they are on first. */
    public static List<NextTask> all(Outlook outlook, Person person) {
        Comparator<Plan.TaskTime> runningFirst =
                Comparator.comparing(time -> !outlook.taskOf(time).progress().isRunning());
        return outlook.tasksOf(person.id()).stream()
                .sorted(runningFirst.thenComparingInt(outlook::handsFrom))
                .map(time -> of(outlook, person, time))
                .toList();
    }

    private static NextTask of(Outlook outlook, Person person, Plan.TaskTime time) {
        Day day = outlook.day();
        Visit visit = day.expectVisit(time.job());
        Stay stay = visit.stays().get(time.stay());
        Task task = outlook.taskOf(time);
        Optional<String> place = stay.placeId()
                .or(() -> outlook.plan().findStay(time.job(), time.stay()).map(Plan.StayPlace::place));
        return new NextTask(
                person,
                visit,
                stay,
                task,
                place,
                day.instantOf(outlook.handsFrom(time)),
                day.instantOf(time.end()),
                PointsDue.openOf(day, visit, task));
    }
}
