package org.shedboard.screen;

import java.util.List;
import org.shedboard.board.Board;
import org.shedboard.day.Clocks;
import org.shedboard.day.Day;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.grid.TextWidth;
import org.shedboard.words.When;
import org.shedboard.words.Words;

/** The first line of a screen: the shop, the date and the time. */
final class Header {
    /** Blank columns between the title and the date. */
    private static final int GAP = 2;
    /** Blank columns between the title and what is added to it. */
    private static final int BEFORE_MORE = 3;

    private Header() {}

    static void draw(Canvas canvas, Region row, Board board, String title) {
        draw(canvas, row, board, title, List.of());
    }

    /** @param more wordings of what is added where there is room, the fullest first */
    static void draw(Canvas canvas, Region row, Board board, String title, List<String> more) {
        Day day = board.expectDay();
        canvas.fill(row, Style.TITLE);
        String time = Words.say(
                "board.date",
                When.WEEKDAY_DATE.say(day.date()),
                Clocks.sayTime(day, board.expectOutlook().at()));
        String right = board.looksOnly() ? Words.say("board.look_only", time) : time;
        Region rest = canvas.textRight(row.inside(1, 0), right, Style.TITLE);
        Region left = canvas.text(rest.leftOf(GAP), title, Style.TITLE).rightOf(BEFORE_MORE);
        more.stream()
                .filter(text -> TextWidth.of(text) <= left.width())
                .findFirst()
                .ifPresent(text -> canvas.text(left, text, Style.TITLE));
    }

    static String date(Day day) {
        return When.WEEKDAY_DATE.say(day.date());
    }
}
