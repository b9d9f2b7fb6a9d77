package org.shedboard.screen;

import java.util.List;
import org.shedboard.board.Board;
import org.shedboard.board.ClosingKeys;
import org.shedboard.board.Screen;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Glyphs;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.grid.TextWidth;
import org.shedboard.tally.ClosingItem;
import org.shedboard.words.Words;

/** What there is to look at before the day is closed, filled in by the program. */
final class ClosingView {
    /** The pointer, the box and a blank after each. */
    private static final int MARK = 4;

    private final Canvas canvas;
    private final Board board;
    private final Screen.Closing screen;

    ClosingView(Canvas canvas, Board board, Screen.Closing screen) {
        this.canvas = canvas;
        this.board = board;
        this.screen = screen;
    }

    void draw(Region page) {
        Header.draw(canvas, page.row(0), board, Words.say("closing.title", Header.date(board.expectDay())));
        List<ClosingItem> items = ClosingKeys.items(board);
        Region body = page.below(2).inside(1, 0);
        canvas.text(body, intro(items), Style.STRONG);
        Region rest = body.below(2);
        int first = firstShown(items, rest);
        for (int i = first; i < items.size(); i++) {
            Press.row(canvas, rest.top(lines(items.get(i), rest).size()), i, screen.row());
            rest = item(rest, items.get(i), i == screen.row());
        }
    }

    private String intro(List<ClosingItem> items) {
        if (board.expectDay().isClosed()) {
            return Words.say("tally.closed");
        }
        long blocking = items.stream().filter(item -> item.kind().blocks()).count();
        return blocking == 0 ? Words.say("closing.ready") : Words.say("closing.blocked", blocking);
    }

    /** The list is moved up as far as the chosen one needs. */
    private int firstShown(List<ClosingItem> items, Region region) {
        int first = 0;
        int last = Math.min(screen.row(), items.size() - 1);
        int rows = 0;
        for (int i = last; i >= 0; i--) {
            rows += lines(items.get(i), region).size();
            if (rows > region.height()) {
                first = i + 1;
                break;
            }
        }
        return first;
    }

    private static List<String> lines(ClosingItem item, Region region) {
        return TextWidth.wrap(Words.say("closing." + item.kind(), item.values()), Math.max(1, region.width() - MARK));
    }

    private Region item(Region region, ClosingItem item, boolean chosen) {
        List<String> lines = lines(item, region);
        Style style = chosen ? Style.SELECTED : styleOf(item);
        for (int i = 0; i < lines.size(); i++) {
            Region row = region.row(i);
            canvas.fill(row, style);
            canvas.text(row.rightOf(MARK), lines.get(i), style);
        }
        if (chosen) {
            canvas.fill(region.row(0).left(1), Glyphs.POINTER, style);
        }
        canvas.fill(region.row(0).rightOf(2).left(1), glyphOf(item), style);
        return region.below(lines.size());
    }

    private static char glyphOf(ClosingItem item) {
        if (item.kind().blocks()) {
            return Glyphs.CROSS;
        }
        return item.kind().isUrgent() ? '!' : Glyphs.BULLET;
    }

    private static Style styleOf(ClosingItem item) {
        if (item.kind().blocks()) {
            return Style.LATE;
        }
        return item.kind().isUrgent() ? Style.DANGER : Style.NORMAL;
    }
}
