package org.shedboard.forecast;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.shedboard.forecast.Explanation.Source;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Line;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Step;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;

/**
 * A visit's catalogue minutes by where they come from; together they are all the catalogue minutes it has.
 *
 * @param isKnown whether the catalogue still has the class and the work; where it has not, nothing can be said apart
 */
record CatalogueShare(boolean isKnown, Map<Source, Integer> minutes) {
    CatalogueShare {
        minutes = new EnumMap<>(minutes);
    }

    static CatalogueShare of(VisitForecast forecast, Set<String> addedLines) {
        Visit visit = forecast.visit();
        List<Line> agreed = visit.lines().stream()
                .filter(line -> !addedLines.contains(line.id()))
                .toList();
        List<Stay> fresh =
                stays(forecast, agreed, visit.intake().mud(), visit.intake().depth());
        int all = handsOn(visit.stays());
        if (fresh.isEmpty()) {
            return new CatalogueShare(false, Map.of(Source.CATALOGUE, all));
        }
        int least = handsOn(stays(forecast, agreed, Mud.CLEAN, Depth.ONCE_OVER));
        int clean = handsOn(stays(forecast, agreed, Mud.CLEAN, visit.intake().depth()));
        int added = added(visit, fresh);
        return new CatalogueShare(
                true,
                Map.of(
                        Source.CATALOGUE, least,
                        Source.DEPTH, clean - least,
                        Source.MUD, handsOn(fresh) - clean,
                        Source.ADDED, added,
                        Source.CHANGED, all - added - handsOn(fresh)));
    }

    private static List<Stay> stays(VisitForecast forecast, List<Line> lines, Mud mud, Depth depth) {
        return new Today(forecast.grounds().catalogue())
                .stays(
                        forecast.machine().classId(),
                        forecast.visit().intake().withMud(mud).withDepth(depth),
                        lines);
    }

    private static int handsOn(List<Stay> stays) {
        return stays.stream()
                .flatMap(stay -> stay.tasks().stream())
                .mapToInt(Task::handsOn)
                .sum();
    }

    /** Hands-on minutes of the tasks that the work agreed on does not ask for: work of other lines, and coming in once more for it. */
    private static int added(Visit visit, List<Stay> agreed) {
        List<Task> left = new ArrayList<>(visit.tasks());
        for (Stay stay : agreed) {
            for (Task task : stay.tasks()) {
                find(visit, stay.step(), task, left).ifPresent(left::remove);
            }
        }
        return left.stream().mapToInt(Task::handsOn).sum();
    }

    private static Optional<Task> find(Visit visit, Step step, Task task, List<Task> among) {
        return among.stream()
                .filter(each -> each.isCalled(task.id()))
                .filter(each -> visit.stayOf(each.id()).orElseThrow().step() == step)
                .findFirst();
    }
}
