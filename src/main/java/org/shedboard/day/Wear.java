package org.shedboard.day;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.shedboard.estimate.Point;
import org.shedboard.fit.StraightLine;
import org.shedboard.register.Measured;
import org.shedboard.shop.Finding;
import org.shedboard.shop.Line;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Visit;

/**
 * The values read off at one point of a machine since it was last renewed, how fast they change, and when they reach a limit.
 *
 * @param values the oldest first; none at all where nothing was read off
 * @param line empty while there are not two values at different hours on the meter
 * @param limit the one they go towards, and when they reach it, where they go towards one
 */
public record Wear(Point point, List<Measured> values, Optional<StraightLine> line, Optional<Limit> limit) {
    /** Four times in five a limit is reached between early and late, as four jobs in five stay within their safe minutes. */
    public static final double PROBABILITY = 0.8;

    /** A limit and when it is reached. */
    public record Limit(double value, StraightLine.Crossing at) {}

    public Wear {
        values = List.copyOf(values);
    }

    /** Of a machine that is here, with what was read off in this visit as the newest value. */
    public static Wear of(Day day, Visit visit, Point point) {
        List<Measured> before = day.books().register().measuredAt(visit.machineId(), point.id()).stream()
                .filter(each -> !each.visitId().equals(visit.id()))
                .filter(each -> !isAfter(visit, each))
                .toList();
        List<Measured> all = new ArrayList<>(before);
        visit.findingAt(point.id())
                .filter(finding -> finding.measured().isPresent())
                .ifPresent(finding -> all.add(now(visit, finding)));
        return of(point, all);
    }

    /** Whether a value was read off after the visit was over, as seen from one that was long ago. */
    private static boolean isAfter(Visit visit, Measured measured) {
        return visit.finished()
                .filter(over -> !visit.state().isHere())
                .filter(measured.finding().at()::isAfter)
                .isPresent();
    }

    private static Measured now(Visit visit, Finding finding) {
        Set<String> works =
                visit.lines().stream().filter(visit::isDone).map(Line::workId).collect(Collectors.toSet());
        return new Measured(visit.machineId(), visit.id(), visit.intake().meterHours(), finding, works);
    }

    /** @param all the values ever read off at the point, the oldest first */
    public static Wear of(Point point, List<Measured> all) {
        List<Measured> values = sinceRenewed(point, all);
        List<StraightLine.At> points = values.stream()
                .filter(each -> each.meterHours().isPresent())
                .map(each -> new StraightLine.At(each.meterHours().getAsInt(), each.value()))
                .toList();
        Optional<StraightLine> line =
                StraightLine.canBeDrawn(points) ? Optional.of(StraightLine.through(points)) : Optional.empty();
        return new Wear(point, values, line, line.flatMap(each -> limitOf(point, each)));
    }

    /** A value called good in the visit in which the point was renewed is the first of the new; any other is the last of the old. */
    private static List<Measured> sinceRenewed(Point point, List<Measured> all) {
        List<Measured> values = new ArrayList<>();
        for (Measured each : all) {
            boolean renewed = point.fixedBy().filter(each.workIds()::contains).isPresent();
            if (renewed) {
                values.clear();
            }
            if (!renewed || each.finding().mark() == Mark.GOOD) {
                values.add(each);
            }
        }
        return values;
    }

    private static Optional<Limit> limitOf(Point point, StraightLine line) {
        return point.measure().flatMap(measure -> {
            double limit = line.perHour() < 0 ? measure.low() : measure.high();
            return line.reaches(limit, PROBABILITY).map(crossing -> new Limit(limit, crossing));
        });
    }

    public Optional<Measured> newest() {
        return values.isEmpty() ? Optional.empty() : Optional.of(values.get(values.size() - 1));
    }

    /** Whether the newest value is within its limits; so is a point of which nothing was read off. */
    public boolean isWithin() {
        return newest().filter(each -> !point.mayBeGood(each.value())).isEmpty();
    }
}
