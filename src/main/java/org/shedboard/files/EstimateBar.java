package org.shedboard.files;

import org.shedboard.tally.SpanTally;
import org.shedboard.tally.VisitTally;
import org.shedboard.words.Words;

/**
 * What was worked on a machine beside what was estimated: grey as far as was worked, hatched where the estimate had more, a stroke
 * where the estimate ends.
 *
 * @param most minutes that the longest bar stands for
 */
record EstimateBar(int most) {
    static final double STROKE = 0.6;

    private static final double WIDTH = 18;
    private static final double HEIGHT = 3;
    private static final double MARGIN = 0.4;

    static EstimateBar of(SpanTally tally) {
        return new EstimateBar(tally.visits().stream()
                .mapToInt(visit -> Math.max(visit.estimated(), visit.worked()))
                .max()
                .orElse(0));
    }

    /** @param id unlike that of any other drawing of the page */
    Element draw(VisitTally visit, String name, String id) {
        String words = Words.say("sheet.estimate_bar", visit.estimated(), visit.worked());
        Picture picture = Picture.of(WIDTH, HEIGHT, id, name, words);
        double worked = x(visit.worked());
        double estimated = x(visit.estimated());
        if (estimated > worked) {
            picture.hatched(Box.between(worked, estimated, 0.6, 2.4));
        }
        if (visit.worked() > 0) {
            picture.full(Box.between(MARGIN, worked, 0.6, 2.4));
        }
        return picture.upright(estimated, 0, HEIGHT, STROKE).element();
    }

    private double x(int minutes) {
        return most == 0 ? MARGIN : MARGIN + (WIDTH - 2 * MARGIN) * minutes / most;
    }
}
