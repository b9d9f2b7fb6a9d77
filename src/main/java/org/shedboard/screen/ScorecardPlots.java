package org.shedboard.screen;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Glyphs;
import org.shedboard.grid.Region;
import org.shedboard.grid.Size;
import org.shedboard.grid.Style;
import org.shedboard.learn.Calibration;
import org.shedboard.learn.Said;
import org.shedboard.learn.Scorecard;
import org.shedboard.words.Words;

/**
 * The two drawings of a scorecard: whether as many stayed within some minutes as were said to, and what each piece took against what was
 * said of it.
 */
public final class ScorecardPlots {
    /** Columns between the drawings, and the size beyond which they only grow and show no more. */
    private static final int GAP = 3;

    private static final int WIDEST = 64;
    private static final int HIGHEST = 26;

    /** Rows below each drawing for what its marks mean. */
    private static final int LEGEND = 3;

    /** The figures that minutes are marked at: each axis begins and ends with one. */
    private static final double[] MINUTES = {1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000};

    private static final int SAFE_PERCENT = 80;
    private static final int LIKELY_PERCENT = 50;
    private static final int HUNDRED = 100;

    private final Canvas canvas;
    private final Scorecard card;

    private ScorecardPlots(Canvas canvas, Scorecard card) {
        this.canvas = canvas;
        this.card = card;
    }

    /** The drawings as lines, for whoever has no screen. */
    public static List<String> lines(Scorecard card, int width, int height) {
        Canvas canvas = Canvas.of(new Size(width, height));
        draw(canvas, new Region(0, 0, width, height), card);
        return canvas.grid().lines().stream().map(String::stripTrailing).toList();
    }

    /** Side by side. Of a card with nothing on it nothing is drawn. */
    static void draw(Canvas canvas, Region region, Scorecard card) {
        if (card.last().isEmpty()) {
            return;
        }
        ScorecardPlots plots = new ScorecardPlots(canvas, card);
        int width = Math.min(WIDEST, (region.width() - GAP) / 2);
        Region high = region.top(HIGHEST);
        plots.calibration(high.left(width));
        plots.minutes(high.rightOf(width + GAP).left(width));
    }

    private void calibration(Region region) {
        Plot plot = new Plot(canvas, region.above(LEGEND));
        plot.frame(Words.say("scorecard.seen"), Words.say("scorecard.said_share"), percents());
        for (Calibration.Share share : card.calibration().shares()) {
            boolean isAim = isAim(share);
            plot.mark(
                    share.said(),
                    share.seen(),
                    isAim ? Glyphs.DIAMOND : Glyphs.CIRCLE,
                    isAim ? Style.STRONG : Style.NORMAL);
        }
        canvas.paragraph(
                region.bottom(LEGEND),
                Words.say("scorecard.legend_shares", Glyphs.DIAMOND, Glyphs.CIRCLE, Glyphs.DOT),
                Style.QUIET);
    }

    private static boolean isAim(Calibration.Share share) {
        long percent = Math.round(HUNDRED * share.said());
        return percent == LIKELY_PERCENT || percent == SAFE_PERCENT;
    }

    private static List<Plot.Tick> percents() {
        List<Plot.Tick> ticks = new ArrayList<>();
        for (int percent : new int[] {0, 20, LIKELY_PERCENT, SAFE_PERCENT, HUNDRED}) {
            ticks.add(new Plot.Tick((double) percent / HUNDRED, String.valueOf(percent)));
        }
        return ticks;
    }

    /** On scales that double: ten minutes off matter more of a wash than of a day's work. */
    private void minutes(Region region) {
        double least = nextBelow(
                card.last().stream().mapToDouble(ScorecardPlots::less).min().orElseThrow());
        double most = nextAbove(
                card.last().stream().mapToDouble(ScorecardPlots::more).max().orElseThrow());
        Plot plot = new Plot(canvas, region.above(LEGEND));
        plot.frame(Words.say("scorecard.actual"), Words.say("scorecard.likely_minutes"), minutes(least, most));
        Map<Region, Integer> counts = new LinkedHashMap<>();
        for (Said said : card.last()) {
            Region cell = plot.cell(
                    along(said.likelyMinutes(), least, most),
                    along(said.lesson().actualMinutes(), least, most));
            counts.merge(cell, 1, Integer::sum);
        }
        counts.forEach((cell, count) -> canvas.fill(cell, glyph(count), Style.NORMAL));
        canvas.paragraph(
                region.bottom(LEGEND),
                Words.say("scorecard.legend_minutes", Glyphs.BULLET, Glyphs.CIRCLE, Glyphs.DISC, Glyphs.DOT),
                Style.QUIET);
    }

    private static char glyph(int count) {
        if (count == 1) {
            return Glyphs.BULLET;
        }
        return count <= 3 ? Glyphs.CIRCLE : Glyphs.DISC;
    }

    private static List<Plot.Tick> minutes(double least, double most) {
        List<Plot.Tick> ticks = new ArrayList<>();
        for (double each : MINUTES) {
            if (each >= least && each <= most) {
                ticks.add(new Plot.Tick(along(each, least, most), String.valueOf((int) each)));
            }
        }
        return ticks;
    }

    private static double along(double minutes, double least, double most) {
        return StrictMath.log(minutes / least) / StrictMath.log(most / least);
    }

    private static double less(Said said) {
        return Math.min(said.likelyMinutes(), said.lesson().actualMinutes());
    }

    private static double more(Said said) {
        return Math.max(said.likelyMinutes(), said.lesson().actualMinutes());
    }

    private static double nextBelow(double minutes) {
        double found = MINUTES[0];
        for (double each : MINUTES) {
            found = each < minutes ? each : found;
        }
        return found;
    }

    private static double nextAbove(double minutes) {
        for (double each : MINUTES) {
            if (each > minutes) {
                return each;
            }
        }
        return MINUTES[MINUTES.length - 1];
    }
}
