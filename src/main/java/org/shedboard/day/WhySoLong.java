package org.shedboard.day;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shedboard.estimate.Estimate;
import org.shedboard.forecast.Explanation;
import org.shedboard.forecast.FinishedVisit;
import org.shedboard.forecast.Nearest;
import org.shedboard.forecast.VisitForecast;
import org.shedboard.forecast.Washed;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;

/**
 * Why a visit takes as long as it is said to: where its minutes come from, what it would take washed, and what visits like it took.
 *
 * @param left minutes of what is not done yet
 * @param washed had it come in clean; empty where that saves nothing, or comes too late
 * @param nearest finished visits like it, the nearest first
 */
public record WhySoLong(
        Visit visit, Explanation explained, Estimate.Range left, Optional<Washed> washed, List<Like> nearest) {
    /**
     * A finished visit that was like it.
     *
     * @param machine as the books have it now; empty where they no longer do
     */
    public record Like(FinishedVisit visit, Optional<Machine> machine) {}

    public WhySoLong {
        nearest = List.copyOf(nearest);
    }

    public static WhySoLong of(Day day, Visit visit) {
        VisitForecast forecast = day.forecastOf(visit);
        Explanation explained = Explanation.of(forecast, AddedWork.linesOf(visit));
        List<Task> left = visit.tasks().stream().filter(task -> !task.isDone()).toList();
        return new WhySoLong(
                visit,
                explained,
                forecast.rangeOf(left),
                Washed.of(forecast, explained, day.books().hoursRules()),
                nearest(day, visit, forecast));
    }

    private static List<Like> nearest(Day day, Visit visit, VisitForecast forecast) {
        Map<String, String> machines = new HashMap<>();
        day.books().register().logbook().serviced().forEach(each -> machines.put(each.visitId(), each.machineId()));
        return Nearest.of(
                        forecast,
                        day.books().experience(),
                        id -> visit.machineId().equals(machines.get(id)))
                .stream()
                .map(each -> new Like(
                        each, Optional.ofNullable(machines.get(each.visitId())).flatMap(day.books()::findMachine)))
                .toList();
    }
}
