package org.shedboard.forecast;

import java.util.ArrayList;
import java.util.List;
import org.shedboard.estimate.Catalogue;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;

/** A visit's work brought from one catalogue to the next. */
public final class Renewal {
    private Renewal() {}

    /**
     * The stays with the next catalogue's hands-on minutes for those tasks that have not begun and that it says something else of. Who
     * is on a task goes on with the minutes that they were told.
     */
    public static List<Stay> of(Catalogue before, Catalogue next, String classId, Visit visit) {
        List<Stay> old = new Today(before).staysOf(classId, visit);
        List<Stay> fresh = new Today(next).staysOf(classId, visit);
        List<Stay> renewed = new ArrayList<>();
        for (int i = 0; i < fresh.size(); i++) {
            renewed.add(of(visit.stays().get(i), old.get(i), fresh.get(i)));
        }
        return renewed;
    }

    private static Stay of(Stay stay, Stay old, Stay fresh) {
        List<Task> tasks = new ArrayList<>();
        for (int i = 0; i < stay.tasks().size(); i++) {
            Task task = stay.tasks().get(i);
            int minutes = fresh.tasks().get(i).handsOn();
            boolean isNews = !task.hasBegun() && minutes != old.tasks().get(i).handsOn();
            tasks.add(isNews ? task.withMinutes(minutes, task.unattended()) : task);
        }
        return stay.withTasks(tasks);
    }
}
