package org.shedboard.forecast;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.shedboard.fit.Combined;
import org.shedboard.fit.LogNormal;
import org.shedboard.learn.Growth;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Task;

/**
 * The likely minutes of one visit's work, had its machine another mud grade or were it looked at to another depth: never fewer for a
 * dirtier machine or a deeper look. The grade and depth it has are said as the visit's own forecast says them.
 */
public final class MudAndDepth {
    private final VisitForecast forecast;
    private final Map<Cell, Map<Piece, Integer>> minutes = new LinkedHashMap<>();
    private final Map<Piece, double[][][]> believed;
    private final double[][] likely;

    private record Cell(Mud mud, Depth depth) {}

    private MudAndDepth(VisitForecast forecast, Map<Cell, Map<Piece, List<Task>>> catalogue) {
        this.forecast = forecast;
        Map<Piece, List<Task>> own = catalogue.get(new Cell(mud(), depth()));
        catalogue.forEach((cell, there) -> minutes.put(cell, withAdded(there, own)));
        this.believed = Shown.grids(
                piecesOf(catalogue), (mud, depth) -> catalogue.get(new Cell(mud, depth)), forecast.belief());
        this.likely = around(Growth.rising(totals()));
    }

    /** Of work that is in the catalogue. */
    static MudAndDepth of(VisitForecast forecast) {
        Map<Cell, Map<Piece, List<Task>>> catalogue = new LinkedHashMap<>();
        for (Mud mud : Mud.values()) {
            for (Depth depth : Depth.values()) {
                catalogue.put(new Cell(mud, depth), forecast.work().at(mud, depth));
            }
        }
        return new MudAndDepth(forecast, catalogue);
    }

    private Mud mud() {
        return forecast.visit().intake().mud();
    }

    private Depth depth() {
        return forecast.visit().intake().depth();
    }

    private Set<Piece> piecesOf(Map<Cell, Map<Piece, List<Task>>> catalogue) {
        Set<Piece> all = new LinkedHashSet<>(forecast.pieces().keySet());
        catalogue.values().forEach(there -> all.addAll(there.keySet()));
        return all;
    }

    /** What the visit has besides the catalogue's work for it, since more was added on the way, it has whatever the mud. */
    private Map<Piece, Integer> withAdded(Map<Piece, List<Task>> there, Map<Piece, List<Task>> own) {
        Map<Piece, Integer> sums = new LinkedHashMap<>();
        there.forEach((piece, tasks) -> sums.put(piece, Piece.minutesOf(tasks)));
        forecast.pieces().forEach((piece, tasks) -> sums.merge(piece, Piece.minutesOf(tasks), Integer::sum));
        own.forEach((piece, tasks) -> sums.merge(piece, -Piece.minutesOf(tasks), Integer::sum));
        sums.values().removeIf(sum -> sum <= 0);
        return sums;
    }

    private double[][] totals() {
        double[][] totals = new double[Mud.values().length][Depth.values().length];
        minutes.forEach(
                (cell, pieces) -> totals[cell.mud().ordinal()][cell.depth().ordinal()] = total(cell, pieces));
        return totals;
    }

    private double total(Cell cell, Map<Piece, Integer> pieces) {
        List<LogNormal> parts = new ArrayList<>();
        List<Map<String, Double>> people = new ArrayList<>();
        pieces.forEach((piece, sum) -> {
            Map<String, Double> who = forecast.peopleOf(piece);
            LogNormal as = forecast.believed(piece.sort(), sum, forecast.under(who, cell.mud(), cell.depth()));
            Shown shown = Shown.of(believed.get(piece), as, cell.mud(), cell.depth());
            parts.add(new LogNormal(as.mu() + shown.shift(), shown.sigma()));
            people.add(who);
        });
        return parts.isEmpty() ? 0 : Combined.of(parts, forecast.shared(people)).median();
    }

    /** Rising figures drawn to the visit's own, which stays as it is: nothing below it is more, nothing above it less. */
    private double[][] around(double[][] rising) {
        double own = forecast.range().likely();
        for (Mud mud : Mud.values()) {
            for (Depth depth : Depth.values()) {
                double each = rising[mud.ordinal()][depth.ordinal()];
                boolean isBelow = mud.compareTo(mud()) <= 0 && depth.compareTo(depth()) <= 0;
                boolean isAbove = mud.compareTo(mud()) >= 0 && depth.compareTo(depth()) >= 0;
                double drawn = isBelow ? Math.min(each, own) : isAbove ? Math.max(each, own) : each;
                rising[mud.ordinal()][depth.ordinal()] = isBelow && isAbove ? own : drawn;
            }
        }
        return rising;
    }

    /** Minutes that half of such visits stay within. */
    public int likely(Mud mud, Depth depth) {
        return (int) Math.round(likely[mud.ordinal()][depth.ordinal()]);
    }
}
