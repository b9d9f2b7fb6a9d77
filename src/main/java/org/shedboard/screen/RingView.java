package org.shedboard.screen;

import java.util.ArrayList;
import java.util.List;
import org.shedboard.board.Board;
import org.shedboard.board.RingWords;
import org.shedboard.board.Screen;
import org.shedboard.day.Clocks;
import org.shedboard.day.RingList;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Column;
import org.shedboard.grid.Glyphs;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.register.NextDue;
import org.shedboard.words.Words;

/** Whom to ring: a line a machine, the most overdue first, and all that is known of the chosen one below. */
final class RingView {
    /** Lines about the chosen machine. */
    private static final int DETAIL = 5;
    /** From this width on there is room for the telephone, and for what it is due at and when. */
    private static final int WIDE = 118;
    /** From this width on for what the meter shows by now too. */
    private static final int WIDEST = 140;

    private static final int MARK = 3;

    private final Canvas canvas;
    private final Board board;
    private final Screen.Ring screen;

    RingView(Canvas canvas, Board board, Screen.Ring screen) {
        this.canvas = canvas;
        this.board = board;
        this.screen = screen;
    }

    void draw(Region page) {
        Header.draw(canvas, page.row(0), board, RingWords.title(screen.weeks()));
        Region body = page.below(2).inside(1, 0);
        canvas.text(body.row(0), RingWords.total(screen.list()), Style.STRONG);
        Region list = body.below(2).above(DETAIL);
        List<Column> columns = columns(body.width());
        canvas.headings(list.row(0).rightOf(MARK), columns);
        rows(list.below(1), columns, body.width());
        screen.chosen().ifPresent(call -> detail(body.bottom(DETAIL).below(1), call));
    }

    private static List<Column> columns(int width) {
        List<Column> columns = new ArrayList<>();
        columns.add(Column.left(Words.say("ring.owner"), 0));
        if (width >= WIDE) {
            columns.add(Column.left(Words.say("ring.phone"), 13));
        }
        columns.add(Column.left(Words.say("ring.machine"), 20));
        columns.add(Column.left(Words.say("ring.due"), 13));
        if (width >= WIDE) {
            columns.add(Column.left(Words.say("ring.by"), width >= WIDEST ? 31 : 9));
            columns.add(Column.right(Words.say("ring.when"), 11));
        }
        columns.add(Column.right(Words.say("ring.late"), 12));
        columns.add(Column.right(Words.say("ring.work_minutes"), 4));
        return columns;
    }

    private List<String> row(RingList.Call call, int width) {
        List<String> row = new ArrayList<>();
        row.add(call.owner().name());
        if (width >= WIDE) {
            row.add(call.owner().phone());
        }
        row.add(call.machine().label());
        row.add(call.work().name());
        if (width >= WIDE) {
            row.add(width >= WIDEST ? RingWords.by(call.due()) : RingWords.byShort(call.due()));
            row.add(Clocks.sayFullDate(call.due().dates().likely()));
        }
        row.add(RingWords.late(call.due(), screen.list().today()));
        row.add(String.valueOf(call.load().minutes()));
        return row;
    }

    private void rows(Region region, List<Column> columns, int width) {
        List<RingList.Call> calls = screen.list().calls();
        int first = Math.max(0, screen.row() - region.height() + 1);
        for (int i = first; i < calls.size() && i - first < region.height(); i++) {
            Region line = region.row(i - first);
            boolean chosen = i == screen.row();
            Press.row(canvas, line, i, screen.row());
            Style style = chosen ? Style.SELECTED : styleOf(calls.get(i));
            canvas.fill(line, style);
            if (chosen) {
                canvas.fill(line.left(1), Glyphs.POINTER, style);
            }
            if (isOverdue(calls.get(i))) {
                canvas.fill(line.rightOf(1).left(1), '!', style);
            }
            canvas.entry(line.rightOf(MARK), columns, row(calls.get(i), width), style);
        }
    }

    private Style styleOf(RingList.Call call) {
        return isOverdue(call) ? Style.LATE : Style.NORMAL;
    }

    private boolean isOverdue(RingList.Call call) {
        return call.due().on(screen.list().today()) == NextDue.State.OVERDUE;
    }

    private void detail(Region region, RingList.Call call) {
        Region rest = canvas.paragraph(
                region, call.owner().name() + ", " + call.owner().phone(), Style.STRONG);
        rest = canvas.paragraph(rest, RingWords.sentence(call), Style.NORMAL);
        rest = canvas.paragraph(rest, Words.say("ring.detail_load", RingWords.hours(call.load())), Style.NORMAL);
        String rung = RingWords.rung(board.expectDay().books(), call).orElse("");
        canvas.paragraph(rest, rung, Style.QUIET);
    }
}
