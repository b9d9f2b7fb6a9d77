package org.shedboard.screen;

import java.util.ArrayList;
import java.util.List;
import org.shedboard.board.Board;
import org.shedboard.board.ScorecardWords;
import org.shedboard.board.Screen;
import org.shedboard.day.Books;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Column;
import org.shedboard.grid.Glyphs;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.grid.TextWidth;
import org.shedboard.learn.Scorecard;
import org.shedboard.words.Words;

/** How right we were: in sentences and rows, drawn, and what was set aside; where there is room, drawn beside the rows. */
final class ScorecardView {
    /** Beyond this width a line is hard to read to its end, and the rows need no more. */
    private static final int WIDEST = 92;
    /** From this width on the drawings stand beside the rows. */
    private static final int BOTH = 190;

    private static final int GAP = 4;
    private static final List<Integer> WIDTHS = List.of(8, 10, 9, 9, 10);

    private final Canvas canvas;
    private final Books books;
    private final Board board;
    private final Screen.ScorecardPage screen;
    private final Scorecard card;

    /** A line of the page: a text across it, or a row of the table. */
    private record Line(String text, List<String> row, Style style) {
        static Line of(String text, Style style) {
            return new Line(text, List.of(), style);
        }
    }

    ScorecardView(Canvas canvas, Board board, Screen.ScorecardPage screen) {
        this.canvas = canvas;
        this.books = board.expectDay().books();
        this.board = board;
        this.screen = screen;
        this.card = screen.card();
    }

    void draw(Region page) {
        Header.draw(canvas, page.row(0), board, title());
        Region body = page.below(2).inside(1, 0);
        switch (screen.page()) {
            case SAID -> said(body);
            case DRAWN -> drawn(body);
            case ASIDE -> list(body, aside(Math.min(body.width(), WIDEST)));
        }
    }

    private String title() {
        return Words.say(
                switch (screen.page()) {
                    case SAID -> "scorecard.title";
                    case DRAWN -> "scorecard.title_drawn";
                    case ASIDE -> "scorecard.title_aside";
                });
    }

    private void said(Region body) {
        int width = Math.min(body.width(), WIDEST);
        list(body.left(width), said(width));
        if (body.width() + 2 >= BOTH) {
            ScorecardPlots.draw(canvas, body.rightOf(width + GAP), card);
        }
    }

    private void drawn(Region body) {
        if (card.last().isEmpty()) {
            canvas.paragraph(body, Words.say("scorecard.nothing_drawn"), Style.STRONG);
        }
        ScorecardPlots.draw(canvas, body, card);
    }

    private List<Line> said(int width) {
        List<Line> lines = new ArrayList<>();
        for (String sentence : ScorecardWords.of(books, card)) {
            Style style = lines.isEmpty() || sentence.startsWith("!") ? Style.STRONG : Style.NORMAL;
            wrapped(sentence, width, style, lines);
        }
        List<ScorecardWords.Part> parts = ScorecardWords.parts(books, card);
        if (!parts.isEmpty()) {
            lines.add(Line.of("", Style.NORMAL));
            lines.add(new Line("", ScorecardWords.headings(), Style.QUIET));
            parts.forEach(part -> add(part, lines));
            wrapped(Words.say("scorecard.legend"), width, Style.QUIET, lines);
        }
        return lines;
    }

    private static void add(ScorecardWords.Part part, List<Line> lines) {
        if (!part.heading().isEmpty()) {
            lines.add(Line.of(part.heading(), Style.QUIET));
        }
        for (ScorecardWords.Row row : part.rows()) {
            List<String> texts = new ArrayList<>(List.of("  " + row.name()));
            texts.addAll(row.figures());
            lines.add(new Line("", texts, Style.NORMAL));
        }
    }

    private List<Line> aside(int width) {
        List<Line> lines = new ArrayList<>();
        List<String> aside = ScorecardWords.aside(books, card);
        if (aside.isEmpty()) {
            wrapped(Words.say("scorecard.nothing_aside"), width, Style.STRONG, lines);
            return lines;
        }
        wrapped(Words.say("scorecard.why_aside"), width, Style.QUIET, lines);
        aside.forEach(each -> wrapped(Glyphs.BULLET + " " + each, width, Style.NORMAL, lines));
        return lines;
    }

    private static void wrapped(String text, int width, Style style, List<Line> lines) {
        TextWidth.wrap(text, Math.max(1, width)).forEach(line -> lines.add(Line.of(line, style)));
    }

    /** Moved up no further than until the last line is seen; the last row says how many are below it. */
    private void list(Region region, List<Line> lines) {
        int first = Math.max(0, Math.min(screen.scroll(), lines.size() - region.height()));
        boolean isMore = first + region.height() < lines.size();
        int shown = isMore ? region.height() - 1 : region.height();
        for (int row = 0; row < shown && first + row < lines.size(); row++) {
            line(region.row(row), lines.get(first + row));
        }
        if (isMore) {
            String more = Words.say("scorecard.more_below", Glyphs.DOWN, lines.size() - first - shown);
            canvas.text(region.bottom(1), more, Style.QUIET);
        }
    }

    private void line(Region row, Line line) {
        if (line.row().isEmpty()) {
            canvas.text(row, line.text(), line.style());
            return;
        }
        canvas.entry(row, columns(line.row().size()), line.row(), line.style());
    }

    /** What takes the place of all figures but the first stands in one column. */
    private static List<Column> columns(int texts) {
        List<Column> columns = new ArrayList<>(List.of(Column.left("", 0)));
        if (texts <= WIDTHS.size()) {
            columns.add(Column.right("", WIDTHS.get(0)));
            int rest = WIDTHS.stream().skip(1).mapToInt(width -> width + 1).sum() - 1;
            columns.add(Column.right("", rest));
            return columns;
        }
        WIDTHS.forEach(width -> columns.add(Column.right("", width)));
        return columns;
    }
}
