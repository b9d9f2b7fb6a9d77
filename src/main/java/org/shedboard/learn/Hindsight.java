package org.shedboard.learn;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.shedboard.fit.LogNormal;

/** Finished work gone through in the order of its days: each piece is forecast from those of the days before it, then learned from. */
public final class Hindsight {
    private static final int LAST = 10;

    private final Expectation expected;
    private final Map<Sort, Deque<Double>> last = new EnumMap<>(Sort.class);
    private final List<Said> said = new ArrayList<>();
    private Learned learned;

    private Hindsight(Expectation expected, List<Lesson> lessons) {
        this.expected = expected;
        this.learned = Learned.untaught(expected, lessons);
        for (Sort sort : Sort.values()) {
            last.put(sort, new ArrayDeque<>());
        }
    }

    /** What would have been said of each piece that was not set aside when it came, oldest first. */
    public static List<Said> of(Expectation expected, List<Lesson> lessons) {
        List<Lesson> inOrder =
                lessons.stream().sorted(Comparator.comparing(Lesson::date)).toList();
        Hindsight hindsight = new Hindsight(expected, inOrder);
        for (int from = 0; from < inOrder.size(); ) {
            int to = from;
            while (to < inOrder.size()
                    && inOrder.get(to).date().equals(inOrder.get(from).date())) {
                to++;
            }
            hindsight.day(inOrder.subList(from, to));
            from = to;
        }
        return List.copyOf(hindsight.said);
    }

    private void day(List<Lesson> lessons) {
        List<Said> ofDay = lessons.stream()
                .filter(lesson -> lesson.fault().isEmpty())
                .map(this::said)
                .toList();
        for (Said each : ofDay) {
            int aside = learned.aside().size();
            learned = learned.after(each.lesson());
            if (learned.aside().size() == aside) {
                said.add(each);
                remember(each.lesson());
            }
        }
    }

    private void remember(Lesson lesson) {
        Deque<Double> ratios = last.get(lesson.sort());
        ratios.addLast(lesson.logRatio());
        if (ratios.size() > LAST) {
            ratios.removeFirst();
        }
    }

    private Said said(Lesson lesson) {
        double catalogue = StrictMath.log(lesson.catalogueMinutes());
        double spread = expected.spreadOf(lesson.sort());
        return new Said(
                lesson,
                learned.minutes(lesson.sort(), lesson.catalogueMinutes(), lesson.circumstances()),
                new LogNormal(catalogue, spread),
                lastTen(catalogue, spread, last.get(lesson.sort())));
    }

    /** The mean and spread of the last ten ratios; the catalogue's where there are fewer than two. */
    private static LogNormal lastTen(double catalogue, double spread, Deque<Double> ratios) {
        if (ratios.size() < 2) {
            return new LogNormal(catalogue, spread);
        }
        double mean = ratios.stream().mapToDouble(ratio -> ratio).average().orElseThrow();
        double squares = ratios.stream()
                .mapToDouble(ratio -> (ratio - mean) * (ratio - mean))
                .sum();
        return new LogNormal(catalogue + mean, StrictMath.sqrt(squares / (ratios.size() - 1)));
    }
}
