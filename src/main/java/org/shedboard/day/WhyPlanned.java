package org.shedboard.day;

import java.util.List;
import java.util.Optional;
import org.shedboard.pack.Plan;
import org.shedboard.pack.story.Instead;
import org.shedboard.pack.story.Link;
import org.shedboard.pack.story.Why;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;

/**
 * Why the plan has a task of a visit as it has it: why then, why there, why that person.
 *
 * @param place where; empty for what needs no place
 * @param chain why not earlier: the task's own reasons first, then those of what it waits for, and so on back
 * @param people the others of the shop, and when each could start it
 * @param places the other places of its kind, and when it could start there
 */
public record WhyPlanned(
        Visit visit,
        Task task,
        Plan.TaskTime time,
        Optional<String> place,
        List<Link> chain,
        List<Instead> people,
        List<Instead> places) {
    /** Longer chains are not followed by anybody who listens. */
    private static final int LINKS = 4;

    public WhyPlanned {
        chain = List.copyOf(chain);
        people = List.copyOf(people);
        places = List.copyOf(places);
    }

    /** Empty when the task is not in the plan. */
    public static Optional<WhyPlanned> of(Outlook outlook, Visit visit, Task task) {
        return outlook.timeOf(visit.id(), task.id()).map(time -> of(outlook, visit, task, time));
    }

    private static WhyPlanned of(Outlook outlook, Visit visit, Task task, Plan.TaskTime time) {
        Why why = Why.of(outlook.problem(), outlook.plan());
        int stay = time.stay();
        return new WhyPlanned(
                visit,
                task,
                time,
                outlook.plan().findStay(visit.id(), stay).map(Plan.StayPlace::place),
                why.chain(visit.id(), stay, task.id(), LINKS),
                why.otherPeople(visit.id(), stay, task.id()),
                why.otherPlaces(visit.id(), stay, task.id()));
    }
}
