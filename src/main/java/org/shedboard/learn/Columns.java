package org.shedboard.learn;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Mud;

/**
 * The columns of the model: which number stands where for some circumstances. Mud and depth climb, a column for each grade reached, so
 * that what a muddy machine teaches is also known of a caked one. A class or person that no lesson names has no column, and is taken for
 * one like the rest.
 */
final class Columns {
    /** Age at which a machine is taken for one like the rest, and the years that count as one step. */
    private static final double MIDDLE_AGE = 8;

    private static final double AGE_STEP = 10;
    /** Older machines are taken for as old, so that a year typed wrong moves nothing far. */
    private static final double OLDEST = 40;

    private static final double DAYS_A_YEAR = 365.2425;

    private final List<String> classes;
    private final List<String> people;
    private final Map<String, Practice> practice;
    private final boolean hasSeason;
    private final List<Trait> traits;

    Columns(List<Lesson> lessons, Map<String, Practice> practice, boolean hasSeason) {
        this.classes = sorted(
                lessons.stream().map(lesson -> lesson.circumstances().classId()).toList());
        this.people = sorted(lessons.stream()
                .flatMap(lesson -> lesson.circumstances().people().keySet().stream())
                .toList());
        this.practice = Map.copyOf(practice);
        this.hasSeason = hasSeason;
        this.traits = traits();
    }

    private static List<String> sorted(Collection<String> names) {
        return List.copyOf(new TreeSet<>(names));
    }

    private List<Trait> traits() {
        List<Trait> all = new ArrayList<>(List.of(Trait.SHOP));
        add(all, Trait.MUD, Mud.values().length - 1);
        add(all, Trait.DEPTH, Depth.values().length - 1);
        add(all, Trait.CLASS, classes.size());
        add(all, Trait.AGE, 1);
        add(all, Trait.PERSON, people.size());
        add(all, Trait.PRACTICE, 1);
        add(all, Trait.SEASON, hasSeason ? 2 : 0);
        return List.copyOf(all);
    }

    private static void add(List<Trait> all, Trait trait, int columns) {
        for (int i = 0; i < columns; i++) {
            all.add(trait);
        }
    }

    /** What each column is about. */
    List<Trait> all() {
        return traits;
    }

    double[] row(Circumstances circumstances) {
        double[] row = new double[traits.size()];
        int at = 0;
        row[at++] = 1;
        for (int grade = 1; grade < Mud.values().length; grade++) {
            row[at++] = circumstances.mud().grade() >= grade ? 1 : 0;
        }
        for (int look = 1; look < Depth.values().length; look++) {
            row[at++] = circumstances.depth().ordinal() >= look ? 1 : 0;
        }
        for (String each : classes) {
            row[at++] = each.equals(circumstances.classId()) ? 1 : 0;
        }
        row[at++] = (age(circumstances) - MIDDLE_AGE) / AGE_STEP;
        for (String each : people) {
            row[at++] = circumstances.people().getOrDefault(each, 0.0);
        }
        row[at++] = practice(circumstances);
        if (hasSeason) {
            double angle = 2 * StrictMath.PI * dayOfYear(circumstances.date()) / DAYS_A_YEAR;
            row[at++] = StrictMath.sin(angle);
            row[at] = StrictMath.cos(angle);
        }
        return row;
    }

    private static double age(Circumstances circumstances) {
        if (circumstances.ageYears().isEmpty()) {
            return MIDDLE_AGE;
        }
        return Math.max(0, Math.min(OLDEST, circumstances.ageYears().getAsInt()));
    }

    private double practice(Circumstances circumstances) {
        double sum = 0;
        for (Map.Entry<String, Double> share : circumstances.people().entrySet()) {
            Practice gained = practice.get(share.getKey());
            sum += gained == null ? 0 : share.getValue() * gained.doublings(circumstances.date());
        }
        return sum;
    }

    private static int dayOfYear(LocalDate date) {
        return date.getDayOfYear();
    }
}
