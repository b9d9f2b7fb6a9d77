package org.shedboard.day;

import java.util.List;
import org.shedboard.shop.Person;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;

/**
 * Nobody signs off their own work. Where the shop has nobody else for it, as where one person works alone, it stays possible:
 * a machine must be able to leave.
 */
final class OwnWork {
    private OwnWork() {}

    /** Whether this person may not do the task for having done what it checks. */
    static boolean isBarred(Day day, Visit visit, Task task, Person person) {
        return did(checkedBy(visit, task), person) && canBeKept(day, visit, task);
    }

    /** Whether somebody is left who could do the task without having done, or having to do, what it checks. */
    static boolean canBeKept(Day day, Visit visit, Task task) {
        List<Task> checked = checkedBy(visit, task);
        return day.shop().people().stream()
                .filter(person -> person.may(task.skill()) && !did(checked, person))
                .anyMatch(person -> checked.stream().allMatch(other -> canBeDoneWithout(day, other, person)));
    }

    private static List<Task> checkedBy(Visit visit, Task task) {
        return task.notBy().stream().flatMap(id -> visit.findTask(id).stream()).toList();
    }

    private static boolean did(List<Task> tasks, Person person) {
        return tasks.stream().anyMatch(task -> task.progress().isBy(person.id()));
    }

    private static boolean canBeDoneWithout(Day day, Task task, Person person) {
        return task.isDone()
                || day.shop().people().stream()
                        .anyMatch(other -> !other.id().equals(person.id()) && other.may(task.skill()));
    }
}
