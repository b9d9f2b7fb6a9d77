package org.shedboard.screen;

import org.shedboard.board.Board;
import org.shedboard.board.Screen;
import org.shedboard.day.Day;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Glyphs;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.words.Words;

/** The next machines of two people at one terminal: side by side where there is room, else one above the other. */
final class NextPairView {
    /** From this width on two stand side by side. */
    static final int SIDE_BY_SIDE = 110;
    /** Of twelve rows so many are for the one who has the keys. */
    private static final int SHARE_WITH_KEYS = 7;

    private static final int SHARES = 12;

    private final Canvas canvas;
    private final Board board;

    private NextPairView(Canvas canvas, Board board) {
        this.canvas = canvas;
        this.board = board;
    }

    /** One alone has the whole page. */
    static void draw(Canvas canvas, Region page, Board board, Screen.Next screen) {
        if (screen.beside().isEmpty()) {
            new NextView(canvas, board, screen).draw(page);
        } else {
            new NextPairView(canvas, board).draw(page, screen, screen.beside().get());
        }
    }

    private void draw(Region page, Screen.Next active, Screen.Next other) {
        Screen.Next first = active.isSecond() ? other : active;
        Screen.Next second = active.isSecond() ? active : other;
        Header.draw(canvas, page.row(0), board, Words.say("next.two", name(first), name(second)));
        Region body = page.below(1);
        if (page.width() >= SIDE_BY_SIDE) {
            int width = body.width() / 2;
            canvas.fill(body.rightOf(width).left(1), Glyphs.VERTICAL, Style.FRAME);
            half(body.left(width), first, !active.isSecond());
            half(body.rightOf(width + 1), second, active.isSecond());
        } else {
            int rows = body.height() * (active.isSecond() ? SHARES - SHARE_WITH_KEYS : SHARE_WITH_KEYS) / SHARES;
            half(body.top(rows), first, !active.isSecond());
            half(body.below(rows), second, active.isSecond());
        }
    }

    private void half(Region region, Screen.Next half, boolean hasKeys) {
        NextView view = new NextView(canvas.within(region), board, half);
        Style style = hasKeys ? Style.SELECTED : Style.TITLE;
        Region title = region.row(0);
        canvas.fill(title, style);
        if (hasKeys) {
            canvas.fill(title.left(1), Glyphs.POINTER, style);
        }
        canvas.text(title.rightOf(2), view.title(), style);
        view.drawBelow(region.below(1));
    }

    private String name(Screen.Next half) {
        Day day = board.expectDay();
        return day.nameOf(half.personId());
    }
}
