package org.shedboard.screen;

import java.util.ArrayList;
import java.util.List;
import org.shedboard.board.Board;
import org.shedboard.board.FigureWords;
import org.shedboard.board.Screen;
import org.shedboard.forecast.Suggestion;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Column;
import org.shedboard.grid.Glyphs;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.words.Words;

/** The figures that finished work contradicts: a line a figure, the strongest first, and what speaks against the chosen one below. */
final class SuggestView {
    /** Lines about the chosen figure. */
    private static final int DETAIL = 7;
    /** From this width on there is room for the range that its factor may lie in. */
    private static final int WIDE = 110;

    private static final int MARK = 2;

    private final Canvas canvas;
    private final Board board;
    private final Screen.Suggested screen;

    SuggestView(Canvas canvas, Board board, Screen.Suggested screen) {
        this.canvas = canvas;
        this.board = board;
        this.screen = screen;
    }

    void draw(Region page) {
        Header.draw(canvas, page.row(0), board, Words.say("suggest.title"));
        Region body = page.below(2).inside(1, 0);
        if (screen.list().isEmpty()) {
            canvas.paragraph(body, FigureWords.total(screen.list()), Style.NORMAL);
            return;
        }
        canvas.text(body.row(0), FigureWords.total(screen.list()), Style.STRONG);
        List<Column> columns = columns(body.width());
        Region list = body.below(2).above(DETAIL);
        canvas.headings(list.row(0).rightOf(MARK), columns);
        rows(list.below(1), columns, body.width());
        screen.chosen().ifPresent(chosen -> detail(body.bottom(DETAIL).below(1), chosen));
    }

    private static List<Column> columns(int width) {
        List<Column> columns = new ArrayList<>();
        columns.add(Column.left(Words.say("suggest.figure"), 0));
        columns.add(Column.right(Words.say("suggest.now"), 5));
        columns.add(Column.right(Words.say("suggest.proposed"), 6));
        columns.add(Column.right(Words.say("suggest.stays"), 6));
        columns.add(Column.right(Words.say("suggest.times"), 6));
        if (width >= WIDE) {
            columns.add(Column.right(Words.say("suggest.between"), 14));
        }
        return columns;
    }

    private List<String> row(Suggestion each, int width) {
        List<String> row = new ArrayList<>(List.of(
                nameOf(each),
                String.valueOf(each.now()),
                String.valueOf(each.proposed()),
                String.valueOf(each.evidence().stays()),
                FigureWords.times(each.evidence().factor())));
        if (width >= WIDE) {
            row.add(FigureWords.range(each.evidence()));
        }
        return row;
    }

    private String nameOf(Suggestion each) {
        return FigureWords.name(board.expectDay().books().catalogue(), each.figure());
    }

    private void rows(Region region, List<Column> columns, int width) {
        List<Suggestion> list = screen.list();
        int first = Math.max(0, screen.row() - region.height() + 1);
        for (int i = first; i < list.size() && i - first < region.height(); i++) {
            Region line = region.row(i - first);
            Style style = i == screen.row() ? Style.SELECTED : Style.NORMAL;
            canvas.fill(line, style);
            Press.row(canvas, line, i, screen.row());
            if (i == screen.row()) {
                canvas.fill(line.left(1), Glyphs.POINTER, style);
            }
            canvas.entry(line.rightOf(MARK), columns, row(list.get(i), width), style);
        }
    }

    private void detail(Region region, Suggestion chosen) {
        Region rest = canvas.paragraph(region, nameOf(chosen), Style.STRONG);
        rest = canvas.paragraph(rest, FigureWords.evidence(chosen), Style.NORMAL);
        canvas.paragraph(rest, Words.say("suggest.id", chosen.figure().id()), Style.QUIET);
    }
}
