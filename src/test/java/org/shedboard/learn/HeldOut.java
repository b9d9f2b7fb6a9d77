package org.shedboard.learn;

import java.util.ArrayList;
import java.util.List;
import org.shedboard.fit.LogNormal;

/** Forecasts of work that nothing was learned from, scored beside the catalogue alone and the truth, shop by shop. */
final class HeldOut {
    private static final int PIECES = 100;

    private final List<Double> gaps = new ArrayList<>();
    private double catalogue;
    private double truth;
    private double forecast;
    private int likely;
    private int safe;
    private int count;

    /** Says of a piece of work what it will take. */
    interface Forecaster {
        LogNormal of(Lesson lesson);
    }

    static Forecaster of(Learned learned) {
        return lesson -> learned.minutes(lesson.sort(), lesson.catalogueMinutes(), lesson.circumstances());
    }

    static List<DrawnShop.Piece> of(DrawnShop shop) {
        return shop.visitsWith(PIECES);
    }

    void add(Forecaster forecaster, List<DrawnShop.Piece> pieces) {
        double catalogueBefore = catalogue;
        double truthBefore = truth;
        double forecastBefore = forecast;
        pieces.forEach(piece -> add(forecaster.of(piece.lesson()), piece));
        gaps.add((catalogue - catalogueBefore - (forecast - forecastBefore))
                / (catalogue - catalogueBefore - (truth - truthBefore)));
    }

    private void add(LogNormal said, DrawnShop.Piece piece) {
        double actual = piece.lesson().actualMinutes();
        catalogue += new LogNormal(Math.log(piece.lesson().catalogueMinutes()), DrawnShop.SPREAD).crps(actual);
        truth += piece.truth().crps(actual);
        forecast += said.crps(actual);
        likely += actual <= said.median() ? 1 : 0;
        safe += actual <= said.quantile(Said.SAFE) ? 1 : 0;
        count++;
    }

    /** Of the way in score from the catalogue alone to the truth, all shops together. */
    double gapClosed() {
        return (catalogue - forecast) / (catalogue - truth);
    }

    double likelyShare() {
        return (double) likely / count;
    }

    double safeShare() {
        return (double) safe / count;
    }

    /** The gap that this share of the shops stays below. */
    double gapOfShops(double share) {
        return gaps.stream()
                .sorted()
                .skip((long) (share * gaps.size()))
                .findFirst()
                .orElseThrow();
    }

    @Override
    public String toString() {
        return "gap closed %.1f %%, of shops one in ten below %.1f, half below %.1f, nine in ten below %.1f; likely %.3f, safe %.3f, of %d"
                .formatted(
                        100 * gapClosed(),
                        100 * gapOfShops(0.1),
                        100 * gapOfShops(0.5),
                        100 * gapOfShops(0.9),
                        likelyShare(),
                        safeShare(),
                        count);
    }
}
