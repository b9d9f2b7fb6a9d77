package org.shedboard.grid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A finished screen: rows and columns of cells, each with a glyph and a style. A wide glyph takes two cells, the second
 * of which is its tail. No glyph is a control character. Besides, it knows what its spots stand for; two screens that look the same
 * are equal whatever these are.
 */
public final class Grid {
    /** What the cells hold where a wide glyph reaches over from the left; never handed out. */
    static final char TAIL = 0;

    private final Size size;
    private final char[] glyphs;
    private final Style[] styles;
    private final List<Spot> spots;
    private final Optional<Cell> cursor;

    Grid(Size size, char[] glyphs, Style[] styles, List<Spot> spots, Optional<Cell> cursor) {
        this.size = size;
        this.glyphs = glyphs;
        this.styles = styles;
        this.spots = List.copyOf(spots);
        this.cursor = cursor;
    }

    public Size size() {
        return size;
    }

    /** Where the cursor stands: at what is selected or typed; empty where nothing is. */
    public Optional<Cell> cursor() {
        return cursor;
    }

    /** The glyph of a cell; a blank for the tail of a wide one. */
    public char glyph(int column, int row) {
        char glyph = glyphs[index(column, row)];
        return glyph == TAIL ? ' ' : glyph;
    }

    /** Whether the cell is the second half of the wide glyph to its left. */
    public boolean isTail(int column, int row) {
        return glyphs[index(column, row)] == TAIL;
    }

    public Style style(int column, int row) {
        return styles[index(column, row)];
    }

    /** What a cell stands for when somebody points at it: of spots one over the other, the one laid last. */
    public Optional<Spot.Meaning> meaningAt(int column, int row) {
        for (int i = spots.size() - 1; i >= 0; i--) {
            if (spots.get(i).region().contains(column, row))
                return Optional.of(spots.get(i).meaning());
        }
        return Optional.empty();
    }

    /** The same screen in printable ASCII only; a wide glyph becomes two question marks. */
    public Grid toAscii() {
        char[] plain = new char[glyphs.length];
        for (int i = 0; i < plain.length; i++) {
            plain[i] = glyphs[i] == TAIL ? TextWidth.UNKNOWN : Glyphs.ascii(glyphs[i]);
        }
        return new Grid(size, plain, styles, spots, cursor);
    }

    /** The glyphs row by row, without blanks at the end. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        for (int row = 0; row < size.rows(); row++) lines.add(glyphs(row).stripTrailing());
        return List.copyOf(lines);
    }

    /** The glyphs as lines to be read one after the other: without lines that frame or part, one blank line where there are several. */
    public List<String> text() {
        List<String> text = new ArrayList<>();
        for (String line : lines()) {
            String read = Glyphs.withoutLines(line).stripTrailing();
            boolean isSecondBlank = read.isEmpty()
                    && (text.isEmpty() || text.get(text.size() - 1).isEmpty());
            if (!isSecondBlank) text.add(read);
        }
        return List.copyOf(text);
    }

    /** The style letters row by row, one a cell. */
    public List<String> styleLines() {
        List<String> lines = new ArrayList<>();
        for (int row = 0; row < size.rows(); row++) lines.add(styles(row));
        return List.copyOf(lines);
    }

    /** The form in which screens are stored: the glyphs in a frame, then one letter of style a cell. */
    public String framed() {
        String border = "+" + "-".repeat(size.columns()) + "+\n";
        StringBuilder text = new StringBuilder(border);
        for (int row = 0; row < size.rows(); row++) {
            text.append('|').append(glyphs(row)).append("|\n");
        }
        text.append(border);
        for (String line : styleLines()) text.append(line).append('\n');
        return text.toString();
    }

    /** As {@link #framed()}. */
    @Override
    public String toString() {
        return framed();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Grid grid
                && size.equals(grid.size)
                && Arrays.equals(glyphs, grid.glyphs)
                && Arrays.equals(styles, grid.styles);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(glyphs);
    }

    private String glyphs(int row) {
        StringBuilder line = new StringBuilder();
        for (int column = 0; column < size.columns(); column++) {
            char glyph = glyphs[index(column, row)];
            if (glyph != TAIL) line.append(glyph);
        }
        return line.toString();
    }

    private String styles(int row) {
        StringBuilder line = new StringBuilder();
        for (int column = 0; column < size.columns(); column++) {
            line.append(style(column, row).code());
        }
        return line.toString();
    }

    private int index(int column, int row) {
        if (!size.region().contains(column, row)) {
            throw new IndexOutOfBoundsException("no cell in column " + column + ", row " + row + " of " + size);
        }
        return row * size.columns() + column;
    }
}
