package org.shedboard.files;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.shedboard.grid.Grid;
import org.shedboard.grid.Style;
import org.shedboard.look.Look;
import org.shedboard.look.Scheme;

/**
 * A screen as a picture (SVG) that shows what a terminal shows, cell by cell, and can be looked at anywhere. Each run of glyphs is held
 * to the width of its cells, so that it looks the same in whatever font with letters of one width there is. There is no script in it, and
 * its letters can be read, searched and copied.
 */
public final class ScreenPicture {
    private static final String NAMESPACE = "http://www.w3.org/2000/svg";
    private static final String FONTS = "DejaVu Sans Mono,Menlo,Consolas,Liberation Mono,monospace";
    private static final double CELL_WIDTH = 9.6;
    private static final double CELL_HEIGHT = 19;
    private static final int FONT_SIZE = 16;
    /** From the top of a cell to the line that its letters stand on. */
    private static final double BASELINE = 14.8;
    /** Page around the cells, on each side. */
    private static final double MARGIN = 12;

    private final Grid grid;
    private final Scheme scheme;
    private final String title;
    private final String words;

    /**
     * @param title what is shown, in a few words
     * @param words the same in a sentence or two, for who cannot see it
     */
    public ScreenPicture(Grid grid, Scheme scheme, String title, String words) {
        this.grid = grid;
        this.scheme = scheme;
        this.title = title;
        this.words = words;
    }

    /** The file. */
    public String text() {
        List<ScreenRun> runs = ScreenRun.of(grid);
        double width = 2 * MARGIN + grid.size().columns() * CELL_WIDTH;
        double height = 2 * MARGIN + grid.size().rows() * CELL_HEIGHT;
        return Element.of("svg")
                .with("xmlns", NAMESPACE)
                .with("xml:space", "preserve")
                .with("width", width)
                .with("height", height)
                .with("viewBox", String.format(Locale.ROOT, "0 0 %.1f %.1f", width, height))
                .with("aria-labelledby", "title words")
                .add(
                        Element.of("title", title).with("id", "title"),
                        Element.of("desc", words).with("id", "words"),
                        Element.of("style", styleSheet(runs)),
                        page(width, height))
                .addAll(papers(runs))
                .addAll(texts(runs))
                .document();
    }

    private String styleSheet(List<ScreenRun> runs) {
        Set<Style> used = EnumSet.of(Style.NORMAL);
        runs.forEach(run -> used.add(run.style()));
        StringBuilder sheet = new StringBuilder(
                "text{font:" + FONT_SIZE + "px " + FONTS + ";white-space:pre}" + "rect{shape-rendering:crispEdges}");
        used.forEach(style -> sheet.append(rules(style)));
        return sheet.toString();
    }

    private String rules(Style style) {
        Look look = scheme.of(style);
        return "text.%1$s{fill:%2$s%3$s}rect.%1$s{fill:%4$s}"
                .formatted(
                        name(style),
                        look.ink().hex(),
                        look.isBold() ? ";font-weight:bold" : "",
                        look.paper().hex());
    }

    private static String name(Style style) {
        return style.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static Element page(double width, double height) {
        return rectangle(0, 0, width, height, Style.NORMAL);
    }

    private static Element rectangle(double x, double y, double width, double height, Style style) {
        return Element.of("rect")
                .with("class", name(style))
                .with("x", x)
                .with("y", y)
                .with("width", width)
                .with("height", height);
    }

    /** What stands on another paper than the page's. */
    private List<Element> papers(List<ScreenRun> runs) {
        List<Element> papers = new ArrayList<>();
        for (ScreenRun run : runs) {
            if (!scheme.of(run.style()).paper().equals(scheme.of(Style.NORMAL).paper())) {
                papers.add(rectangle(left(run), top(run), run.columns() * CELL_WIDTH, CELL_HEIGHT, run.style()));
            }
        }
        return papers;
    }

    private static List<Element> texts(List<ScreenRun> runs) {
        return runs.stream()
                .filter(run -> !run.isBlank())
                .map(ScreenRun::trimmed)
                .map(ScreenPicture::text)
                .toList();
    }

    private static Element text(ScreenRun run) {
        return Element.of("text", run.text())
                .with("class", name(run.style()))
                .with("x", left(run))
                .with("y", top(run) + BASELINE)
                .with("textLength", run.columns() * CELL_WIDTH)
                .with("lengthAdjust", "spacingAndGlyphs");
    }

    private static double left(ScreenRun run) {
        return MARGIN + run.from() * CELL_WIDTH;
    }

    private static double top(ScreenRun run) {
        return MARGIN + run.row() * CELL_HEIGHT;
    }
}
