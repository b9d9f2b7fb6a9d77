package org.shedboard.screen;

import java.util.List;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Glyphs;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.grid.TextWidth;

/**
 * A field with the same scale across and up, in which marks stand for pairs of figures. Dots along the diagonal show where the marks would
 * stand if both figures of each pair were the same.
 */
final class Plot {
    /** Columns of the figures beside the upright axis, a blank among them. */
    private static final int FIGURES = 5;

    /** Rows below the field: the axis, its figures, what they are of. */
    private static final int BELOW = 3;

    private static final int TITLE = 1;

    private final Canvas canvas;
    private final Region region;
    private final Region field;

    /**
     * A figure on both axes.
     *
     * @param at how far along, 0 to 1
     */
    record Tick(double at, String figure) {}

    /** @param region what there is for the field, its axes and their titles */
    Plot(Canvas canvas, Region region) {
        this.canvas = canvas;
        this.region = region;
        this.field = region.below(TITLE).above(BELOW).rightOf(FIGURES + 1);
    }

    /** The cell of the field for two figures, 0 to 1 each; what lies outside stands at the edge. */
    Region cell(double across, double up) {
        return field.row(field.height() - 1 - index(up, field.height()))
                .rightOf(index(across, field.width()))
                .left(1);
    }

    private static int index(double share, int cells) {
        return (int) Math.round(Math.max(0, Math.min(1, share)) * Math.max(0, cells - 1));
    }

    /** Draws everything but the marks. */
    void frame(String upTitle, String acrossTitle, List<Tick> ticks) {
        canvas.text(region.row(0), upTitle, Style.QUIET);
        for (int column = 0; column < field.width(); column++) {
            double along = field.width() == 1 ? 0 : column / (field.width() - 1.0);
            canvas.fill(cell(along, along), Glyphs.DOT, Style.QUIET);
        }
        Region corner = region.below(TITLE).above(BELOW - 1).rightOf(FIGURES);
        canvas.verticalLine(corner.left(1), Style.FRAME);
        canvas.horizontalLine(corner.bottom(1), Style.FRAME);
        ticks.forEach(this::tick);
        canvas.textRight(region.bottom(1), acrossTitle, Style.QUIET);
    }

    private void tick(Tick tick) {
        Region row = cell(0, tick.at());
        Region beside = new Region(region.left(), row.top(), FIGURES - 1, row.height());
        canvas.textRight(beside, tick.figure(), Style.QUIET);
        int width = TextWidth.of(tick.figure());
        int middle = cell(tick.at(), 0).left() - width / 2;
        int left = Math.max(region.left(), Math.min(region.rightEdge() - width, middle));
        canvas.text(
                new Region(left, region.bottomEdge() - 2, width, Math.min(1, region.height())),
                tick.figure(),
                Style.QUIET);
    }

    void mark(double across, double up, char glyph, Style style) {
        canvas.fill(cell(across, up), glyph, style);
    }
}
