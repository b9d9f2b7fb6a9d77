package org.shedboard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.shedboard.day.Figures;
import org.shedboard.day.Wear;
import org.shedboard.estimate.Point;
import org.shedboard.fit.StraightLine;
import org.shedboard.words.Words;

/** Says how a point wears and when it reaches its limit. */
public final class WearWords {
    /** Nobody reads a meter closer than this when they plan work by it. */
    private static final int ROUNDED_TO_HOURS = 10;

    private final Wear wear;
    private final String unit;

    private WearWords(Wear wear) {
        this.wear = wear;
        this.unit = wear.point().measure().map(Point.Measure::unit).orElse("");
    }

    /** In one line; empty where too little was read off to say anything. */
    public static Optional<String> of(Wear wear) {
        List<String> parts = new WearWords(wear).parts();
        return parts.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", parts));
    }

    private List<String> parts() {
        List<String> parts = new ArrayList<>();
        if (!wear.isWithin()) {
            parts.add(Words.say("wear.past"));
        }
        wear.line().ifPresent(line -> {
            limit().ifPresent(parts::add);
            parts.add(rate(line));
            wear.limit().ifPresent(limit -> parts.add(when(limit.at())));
        });
        return parts;
    }

    private Optional<String> limit() {
        return wear.limit().map(limit -> Words.say("wear.limit", Figures.say(limit.value()), unit));
    }

    /** How fast it changes, give or take what four such rates in five stay within. */
    String rate(StraightLine line) {
        String figure = Figures.say(Math.abs(line.perHundredHours()));
        if (figure.equals("0")) {
            return Words.say("wear.level");
        }
        String name = line.perHour() < 0 ? "wear.loses" : "wear.gains";
        return Words.say(name, figure + margin(line), unit);
    }

    private static String margin(StraightLine line) {
        StraightLine.Interval sure = line.perHundredHours(Wear.PROBABILITY);
        double margin = (sure.high() - sure.low()) / 2;
        String figure = Double.isInfinite(margin) ? "0" : Figures.say(margin);
        return figure.equals("0") ? "" : Words.say("wear.margin", figure);
    }

    /** When the limit is reached, by hours on the meter. */
    static String when(StraightLine.Crossing at) {
        String likely = hours(at.likely());
        if (at.early().isEmpty()) {
            return Words.say("wear.reached_by_two", likely);
        }
        String early = hours(at.early().getAsDouble());
        OptionalDouble late = at.late();
        if (late.isPresent() && hours(late.getAsDouble()).equals(early)) {
            return Words.say("wear.reached_surely", likely);
        }
        return late.isPresent()
                ? Words.say("wear.reached", likely, early, hours(late.getAsDouble()))
                : Words.say("wear.reached_perhaps", likely, early);
    }

    private static String hours(double hours) {
        return String.valueOf(Math.round(hours / ROUNDED_TO_HOURS) * ROUNDED_TO_HOURS);
    }

    /** Wear of a machine told point by point, for whoever asks for all of it. */
    public static String line(Wear wear) {
        String newest = wear.newest()
                .map(each -> FindingWords.value(wear.point(), each.value()))
                .orElse("");
        String more = of(wear).orElse(Words.say("wear.too_few", wear.values().size()));
        return Words.say("wear.line", wear.point().name(), newest, more);
    }
}
