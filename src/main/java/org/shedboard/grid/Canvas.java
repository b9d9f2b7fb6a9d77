package org.shedboard.grid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Where a screen is drawn. All regions are in the columns and rows of the whole screen; what falls outside the clip
 * region is not drawn, and nothing ever fails for want of room. Texts may come from anyone: they are shown with
 * stand-ins, so that no control sequence gets onto a screen.
 */
public final class Canvas {
    private final Size size;
    private final Region clip;
    private final char[] glyphs;
    private final Style[] styles;
    private final List<Spot> spots;
    private final Eye eye;

    /** Where the eye is wanted: at what is selected, or rather where something is typed. */
    private static final class Eye {
        private Optional<Cell> at = Optional.empty();
        private boolean isTyping;

        void look(Cell cell, boolean typing) {
            if (typing || !isTyping) {
                at = Optional.of(cell);
                isTyping = typing;
            }
        }
    }

    private Canvas(Size size, Region clip, char[] glyphs, Style[] styles, List<Spot> spots, Eye eye) {
        this.size = size;
        this.clip = clip;
        this.glyphs = glyphs;
        this.styles = styles;
        this.spots = spots;
        this.eye = eye;
    }

    /** A blank canvas in the normal style. */
    public static Canvas of(Size size) {
        char[] glyphs = new char[size.columns() * size.rows()];
        Style[] styles = new Style[glyphs.length];
        Arrays.fill(glyphs, ' ');
        Arrays.fill(styles, Style.NORMAL);
        return new Canvas(size, size.region(), glyphs, styles, new ArrayList<>(), new Eye());
    }

    /** The same cells, of which only those in the region can be drawn on. */
    public Canvas within(Region region) {
        return new Canvas(size, clip.intersect(region), glyphs, styles, spots, eye);
    }

    /** What can be drawn on. */
    public Region region() {
        return clip;
    }

    /** What was drawn so far. */
    public Grid grid() {
        return new Grid(size, glyphs.clone(), styles.clone(), spots, eye.at);
    }

    /** From now on whoever points at the region means this; it draws nothing. */
    public void spot(Region region, Spot.Meaning meaning) {
        Region inside = region.intersect(clip);
        if (!inside.isEmpty()) spots.add(new Spot(inside, meaning));
    }

    /** What is drawn from now on lies over all that was drawn so far, and has the eye wherever it wants it; nobody points past it. */
    public void over() {
        eye.isTyping = false;
        spots.clear();
    }

    /** The eye is wanted at the region's first cell, where nothing points at it. */
    public void look(Region region) {
        Region seen = region.intersect(clip);
        if (!seen.isEmpty()) eye.look(new Cell(seen.left(), seen.top()), false);
    }

    /** Draws a text in the region's first row, cut where it is too long; gives what is left to the right of it. */
    public Region text(Region region, String text, Style style) {
        Region row = region.row(0);
        if (row.isEmpty()) return row;
        String shown = TextWidth.clip(text, row.width());
        draw(row.left(), row.top(), shown, style);
        return row.rightOf(TextWidth.ofShown(shown));
    }

    /** Draws a text in one of the region's rows; gives what is left to the right of it. */
    public Region text(Region region, int row, String text, Style style) {
        return text(region.row(row), text, style);
    }

    /** Draws a text at the right end of the region's first row; gives what is left of that row. */
    public Region textRight(Region region, String text, Style style) {
        Region row = region.row(0);
        int width = Math.min(TextWidth.of(text), row.width());
        text(row.right(width), text, style);
        return row.leftOf(width);
    }

    /** Draws a text in the middle of the region's first row. */
    public void textCentred(Region region, String text, Style style) {
        text(region.row(0).centred(TextWidth.of(text), 1), text, style);
    }

    /** Draws a text in as many rows as it needs, broken at blanks; gives the rows left below it. */
    public Region paragraph(Region region, String text, Style style) {
        if (region.isEmpty()) return region;
        List<String> lines = TextWidth.wrap(text, region.width());
        for (int row = 0; row < Math.min(lines.size(), region.height()); row++) {
            text(region, row, lines.get(row), style);
        }
        return region.below(lines.size());
    }

    /** Blanks a region. */
    public void fill(Region region, Style style) {
        fill(region, ' ', style);
    }

    /** Fills a region with one glyph; what is not one column wide becomes its stand-in. */
    public void fill(Region region, char glyph, Style style) {
        char shown = TextWidth.standIn(glyph);
        char narrow = TextWidth.of(shown) == 1 ? shown : TextWidth.UNKNOWN;
        Region inside = region.intersect(clip);
        for (int row = inside.top(); row < inside.bottomEdge(); row++) {
            for (int column = inside.left(); column < inside.rightEdge(); column++) put(column, row, narrow, style);
        }
    }

    /** Changes the style of a region and leaves its glyphs. */
    public void restyle(Region region, Style style) {
        Region inside = region.intersect(clip);
        if (inside.isEmpty()) return;
        if (inside.isEmpty()) return;
        for (int row = inside.top(); row < inside.bottomEdge(); row++) {
            int from = index(inside.left(), row);
            Arrays.fill(styles, from, from + inside.width(), style);
        }
    }

    /** Draws a border along the region's edge, joined to lines that are there already; gives what is inside it. */
    public Region frame(Region region, Style style) {
        if (!region.isEmpty()) {
            Region middle = region.inside(1);
            horizontalLine(new Region(middle.left(), region.top(), middle.width(), 1), style);
            horizontalLine(new Region(middle.left(), region.bottomEdge() - 1, middle.width(), 1), style);
            verticalLine(new Region(region.left(), middle.top(), 1, middle.height()), style);
            verticalLine(new Region(region.rightEdge() - 1, middle.top(), 1, middle.height()), style);
            corners(region, style);
        }
        return region.inside(1);
    }

    /** Draws a border with a title in its upper edge; gives what is inside it. */
    public Region frame(Region region, String title, Style style) {
        Region inside = frame(region, style);
        Region edge = region.row(0).rightOf(2).leftOf(2);
        if (edge.width() > 4) text(edge, " " + TextWidth.clip(title, edge.width() - 2) + " ", Style.TITLE);
        return inside;
    }

    /** Draws a line along the region's first row. */
    public void horizontalLine(Region region, Style style) {
        Region row = region.row(0);
        for (int column = row.left(); column < row.rightEdge(); column++) {
            line(column, row.top(), Glyphs.HORIZONTAL, style);
        }
    }

    /** Draws a line along the region's first column. */
    public void verticalLine(Region region, Style style) {
        Region column = region.left(1);
        for (int row = column.top(); row < column.bottomEdge() && !column.isEmpty(); row++) {
            line(column.left(), row, Glyphs.VERTICAL, style);
        }
    }

    /** Draws a line across a framed region, joined to the frame on both sides. */
    public void divider(Region region, int row, Style style) {
        Region line = region.row(row);
        if (line.width() < 2) return;
        horizontalLine(line.rightOf(1).leftOf(1), style);
        line(line.left(), line.top(), '├', style);
        line(line.rightEdge() - 1, line.top(), '┤', style);
    }

    /**
     * Draws letters, digits and dashes {@link BigLetters#ROWS} rows tall; gives what is left to the right of them. Where
     * they do not fit whole they become ordinary text, because half a number is another number.
     */
    public Region big(Region region, String text, Style style) {
        List<String> rows = BigLetters.rows(text);
        int width = BigLetters.width(text);
        if (width > region.width() || BigLetters.ROWS > region.height()) return text(region, text, style);
        for (int row = 0; row < rows.size(); row++) {
            text(region, row, rows.get(row), style);
        }
        return region.rightOf(width + 1);
    }

    /** Draws a table, headings first, as many rows as there is room for; gives the rows left below it. */
    public Region columns(Region region, List<Column> columns, List<List<String>> entries, Style style) {
        headings(region, columns);
        Region rest = region.below(1);
        for (List<String> entry : entries) {
            entry(rest, columns, entry, style);
            rest = rest.below(1);
        }
        return rest;
    }

    /** Draws the headings of a table in the region's first row. */
    public void headings(Region region, List<Column> columns) {
        entry(region, columns, columns.stream().map(Column::heading).toList(), Style.QUIET);
    }

    /** Draws one entry of a table in the region's first row, and the whole row in its style. */
    public void entry(Region region, List<Column> columns, List<String> texts, Style style) {
        Region row = region.row(0);
        fill(row, style);
        List<Region> parts = parts(row, columns);
        for (int i = 0; i < Math.min(texts.size(), parts.size()); i++) {
            if (columns.get(i).side() == Column.Side.RIGHT) textRight(parts.get(i), texts.get(i), style);
            else text(parts.get(i), texts.get(i), style);
        }
    }

    /** Where the columns of a table stand in a row: one blank between each two. */
    public static List<Region> parts(Region row, List<Column> columns) {
        int gaps = Math.max(0, columns.size() - 1);
        int[] widths = columns.stream().mapToInt(Column::width).toArray();
        int[] shares = Region.shares(Math.max(0, row.width() - gaps), widths);
        Region[] parts = new Region[shares.length];
        Region rest = row;
        for (int i = 0; i < shares.length; i++) {
            parts[i] = rest.left(shares[i]);
            rest = rest.rightOf(shares[i] + 1);
        }
        return List.of(parts);
    }

    private void corners(Region region, Style style) {
        int right = region.rightEdge() - 1;
        int bottom = region.bottomEdge() - 1;
        line(region.left(), region.top(), '┌', style);
        line(right, region.top(), '┐', style);
        line(region.left(), bottom, '└', style);
        line(right, bottom, '┘', style);
    }

    private void line(int column, int row, char glyph, Style style) {
        if (clip.contains(column, row)) put(column, row, Glyphs.joined(glyphs[index(column, row)], glyph), style);
    }

    private void draw(int left, int row, String shown, Style style) {
        int column = left;
        for (int i = 0; i < shown.length(); i++) {
            char glyph = shown.charAt(i);
            if (TextWidth.of(glyph) == 2) putWide(column, row, glyph, style);
            else put(column, row, glyph, style);
            column += TextWidth.of(glyph);
        }
    }

    /** A wide glyph of which the clip region would cut one half is not drawn; the other half is blank. */
    private void putWide(int column, int row, char glyph, Style style) {
        put(column, row, ' ', style);
        put(column + 1, row, ' ', style);
        if (!clip.contains(column, row) || !clip.contains(column + 1, row)) return;
        glyphs[index(column, row)] = glyph;
        glyphs[index(column + 1, row)] = Grid.TAIL;
    }

    private void put(int column, int row, char glyph, Style style) {
        if (!clip.contains(column, row)) return;
        int index = index(column, row);
        blankOtherHalf(index, column);
        glyphs[index] = glyph;
        styles[index] = style;
        if (glyph == Glyphs.POINTER || style == Style.CURSOR) eye.look(new Cell(column, row), style == Style.CURSOR);
    }

    /** What is left of a wide glyph when one of its cells is drawn over is a blank. */
    private void blankOtherHalf(int index, int column) {
        if (glyphs[index] == Grid.TAIL) glyphs[index - 1] = ' ';
        if (column + 1 < size.columns() && glyphs[index + 1] == Grid.TAIL) glyphs[index + 1] = ' ';
    }

    private int index(int column, int row) {
        return row * size.columns() + column;
    }
}
