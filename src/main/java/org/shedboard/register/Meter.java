package org.shedboard.register;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.shedboard.register.UsePerDay.Point;

/**
 * All that one machine has run by its readings in one unit, through every meter it had.
 *
 * <p>A new meter begins where it was told, and where a reading falls without a word. What was run while no meter was read, between the last
 * reading of the old one and the first of the new, is taken to be the usual use.
 */
public final class Meter {
    /** Older readings say nothing of how it is used now. */
    private static final int NEWEST = 40;

    private final List<Reading> standing;
    private final List<Reading> replacing;
    private final List<Point> points;
    private final Optional<UsePerDay> use;

    private Meter(List<List<Reading>> meters) {
        standing = meters.stream().flatMap(List::stream).toList();
        replacing = meters.stream().skip(1).map(meter -> meter.get(0)).toList();
        use = UsePerDay.of(meters.stream()
                .map(meter -> meter.stream().map(Meter::point).toList())
                .toList());
        points = joined(meters, use.map(UsePerDay::likely).orElse(0.0));
    }

    /** Of the readings of one machine in one unit; empty where there are none. */
    public static Optional<Meter> of(List<Reading> readings) {
        if (readings.isEmpty()) {
            return Optional.empty();
        }
        List<Reading> newest = readings.stream()
                .sorted(Comparator.comparing(Reading::at))
                .skip(Math.max(0, readings.size() - NEWEST))
                .toList();
        return Optional.of(new Meter(meters(newest)));
    }

    private static List<List<Reading>> meters(List<Reading> readings) {
        List<List<Reading>> meters = new ArrayList<>(List.of(new ArrayList<>()));
        for (Reading reading : readings) {
            List<Reading> meter = meters.get(meters.size() - 1);
            if (reading.told() == Reading.Told.RIGHT_AS_TYPED) {
                meter.removeIf(earlier -> !goTogether(earlier, reading));
            }
            boolean another = reading.told() == Reading.Told.NEW_METER
                    || (!meter.isEmpty() && meter.get(meter.size() - 1).value() > reading.value());
            if (another && !meter.isEmpty()) {
                meters.add(new ArrayList<>());
            }
            meters.get(meters.size() - 1).add(reading);
        }
        return meters;
    }

    /** Whether both can be right on one meter; a dial of whole numbers may have turned one on. */
    static boolean goTogether(Reading earlier, Reading later) {
        double most = later.unit().mostPerDay() * (later.day() - earlier.day()) + 1;
        double risen = later.value() - earlier.value();
        return risen >= 0 && risen <= most;
    }

    private static Point point(Reading reading) {
        return new Point(reading.day(), reading.value());
    }

    private static List<Point> joined(List<List<Reading>> meters, double usual) {
        List<Point> points = new ArrayList<>();
        double ahead = 0;
        for (List<Reading> meter : meters) {
            Reading first = meter.get(0);
            if (!points.isEmpty()) {
                Point before = points.get(points.size() - 1);
                ahead = before.run() + usual * (first.day() - before.day()) - first.value();
            }
            for (Reading reading : meter) {
                points.add(new Point(reading.day(), reading.value() + ahead));
            }
        }
        return points;
    }

    /** Its own use per day; empty before there are two readings of one meter. */
    public Optional<UsePerDay> use() {
        return use;
    }

    /** The newest reading. */
    public Reading last() {
        return standing.get(standing.size() - 1);
    }

    /** The readings that stand, oldest first: those found to be wrong are not among them. */
    public List<Reading> standing() {
        return standing;
    }

    /** The readings that stand, newest first. */
    public List<Reading> newestFirst() {
        List<Reading> newest = new ArrayList<>(standing);
        Collections.reverse(newest);
        return newest;
    }

    /** Whether the meter was another one from this reading on. */
    public boolean isOfNewMeter(Reading reading) {
        return replacing.contains(reading);
    }

    /** All it had run by that day; before the first and after the last reading at its usual use. */
    double runBy(double day, double usual) {
        Point first = points.get(0);
        Point end = points.get(points.size() - 1);
        if (day <= first.day()) {
            return first.run() - usual * (first.day() - day);
        }
        if (day >= end.day()) {
            return end.run() + usual * (day - end.day());
        }
        int next = 1;
        while (points.get(next).day() < day) {
            next++;
        }
        Point from = points.get(next - 1);
        Point to = points.get(next);
        return from.run() + (to.run() - from.run()) * (day - from.day()) / (to.day() - from.day());
    }

    /** The day on which it had, or will have, run that much; never, as infinity, where it stands still. */
    double dayOf(double run, double usual) {
        Point end = points.get(points.size() - 1);
        if (run > end.run()) {
            return end.day() + (run - end.run()) / usual;
        }
        for (int next = 1; next < points.size(); next++) {
            Point from = points.get(next - 1);
            Point to = points.get(next);
            if (run >= from.run() && run <= to.run()) {
                double share = to.run() == from.run() ? 0 : (run - from.run()) / (to.run() - from.run());
                return from.day() + share * (to.day() - from.day());
            }
        }
        return points.get(0).day();
    }

    /** What the dial of the meter it has now shows when it has run that much. */
    double dialAt(double run) {
        return last().value() + run - points.get(points.size() - 1).run();
    }
}
