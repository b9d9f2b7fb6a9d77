package org.shedboard.day;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Visit;

/**
 * A stay that is over and that the plan has forgotten: which machine stood in a place, from which minute to which.
 *
 * @param to when its last task was complete, unattended minutes and all
 */
public record StoodStay(Visit visit, int from, int to) {
    /** Those of one place, in order. */
    public static List<StoodStay> in(Outlook outlook, String placeId) {
        List<StoodStay> all = new ArrayList<>();
        for (Visit visit : outlook.day().visits()) {
            for (int index = 0; index < visit.stays().size(); index++) {
                Stay stay = visit.stays().get(index);
                boolean stood =
                        stay.isDone() && stay.placeId().filter(placeId::equals).isPresent();
                if (stood && outlook.plan().findStay(visit.id(), index).isEmpty()) {
                    all.add(of(outlook.day(), visit, stay));
                }
            }
        }
        all.sort(Comparator.comparingInt(StoodStay::from));
        return all;
    }

    private static StoodStay of(Day day, Visit visit, Stay stay) {
        int from = stay.tasks().stream()
                .mapToInt(task -> day.minuteOf(task.progress().began().orElseThrow()))
                .min()
                .orElseThrow();
        int to = stay.tasks().stream()
                .mapToInt(task -> day.minuteOf(task.progress().ended().orElseThrow()) + task.unattended())
                .max()
                .orElseThrow();
        return new StoodStay(visit, from, Math.max(from, to));
    }
}
