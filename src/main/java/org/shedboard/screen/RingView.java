package org.shedboard.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.shedboard.board.Board;
import org.shedboard.board.RingWords;
import org.shedboard.board.RoundWords;
import org.shedboard.board.Screen;
import org.shedboard.day.Clocks;
import org.shedboard.day.Day;
import org.shedboard.day.RingList;
import org.shedboard.day.Round;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Column;
import org.shedboard.grid.Glyphs;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.register.NextDue;
import org.shedboard.words.When;
import org.shedboard.words.Words;

/** Whom to ring: who has to hear something today, then services due, a line a machine, and all that is known of the chosen one below. */
final class RingView {
    /** Lines about the chosen machine, a blank one before them. */
    private static final int DETAIL = 6;
    /** Lists of fewer rows are worth more than what is said below them. */
    private static final int LEAST_LISTS = 8;
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
        Header.draw(canvas, page.row(0), board, Words.say("round.title"));
        Region body = page.below(1).inside(1, 0);
        int detail = body.height() >= DETAIL + LEAST_LISTS ? DETAIL : 0;
        Region lists = body.above(detail);
        int wanted = 1 + screen.round().calls().size();
        int today = Math.max(2, Math.min(wanted, lists.height() / 2));
        today(lists.top(today));
        services(lists.below(today + 1));
        Region about = body.bottom(detail).below(1);
        screen.chosenToday().ifPresent(call -> detail(about, call));
        screen.chosen().ifPresent(call -> detail(about, call));
    }

    private void today(Region region) {
        canvas.text(region.row(0), RoundWords.total(screen.round()), Style.STRONG);
        List<Round.Call> calls = screen.round().calls();
        Region rows = region.below(1);
        int first = Math.max(0, Math.min(screen.row(), calls.size() - 1) - rows.height() + 1);
        for (int i = first; i < calls.size() && i - first < rows.height(); i++) {
            Region line = rows.row(i - first);
            Style style =
                    i == screen.row() ? Style.SELECTED : styleOf(calls.get(i).why());
            Press.row(canvas, line, i, screen.row());
            mark(line, i == screen.row(), style);
            canvas.entry(line.rightOf(MARK), todaysColumns(region.width()), todaysRow(calls.get(i)), style);
        }
    }

    private static List<Column> todaysColumns(int width) {
        List<Column> narrow = List.of(
                Column.left("", 15), Column.right("", 4), Column.left("", 26), Column.left("", width >= WIDE ? 14 : 0));
        return width >= WIDE
                ? Stream.concat(narrow.stream(), Stream.of(Column.left("", 0))).toList()
                : narrow;
    }

    /** Where there is little room, the telephone stands for what to say, which is below. */
    private static List<String> todaysRow(Round.Call call) {
        return List.of(
                RoundWords.why(call),
                PlaceStatus.tagOf(call.visit()),
                call.owner().name(),
                call.owner().phone(),
                RoundWords.toSay(call));
    }

    private static Style styleOf(Round.Why why) {
        return switch (why) {
            case LATE, IN_DANGER -> Style.LATE;
            case FOUND -> Style.HELD;
            case DONE -> Style.GOOD;
        };
    }

    private void mark(Region line, boolean chosen, Style style) {
        canvas.fill(line, style);
        if (chosen) {
            canvas.fill(line.left(1), Glyphs.POINTER, style);
        }
    }

    private void services(Region region) {
        String title = screen.list().calls().isEmpty()
                ? RingWords.total(screen.list())
                : Words.say("round.services", RingWords.due(screen.weeks()), RingWords.total(screen.list()));
        canvas.text(region.row(0), title, Style.STRONG);
        List<Column> columns = columns(region.width());
        canvas.headings(region.row(1).rightOf(MARK), columns);
        rows(region.below(2), columns, region.width());
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
            columns.add(Column.right(Words.say("ring.when"), TimeRoom.of(When.FULL_DATE)));
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
        int first = Math.max(0, screen.serviceRow() - region.height() + 1);
        for (int i = first; i < calls.size() && i - first < region.height(); i++) {
            Region line = region.row(i - first);
            boolean chosen = i == screen.serviceRow();
            Press.row(canvas, line, i, screen.serviceRow());
            Style style = chosen ? Style.SELECTED : styleOf(calls.get(i));
            mark(line, chosen, style);
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

    private void detail(Region region, Round.Call call) {
        Day day = board.expectDay();
        Region rest = canvas.paragraph(
                region,
                Words.say(
                        "round.detail",
                        call.owner().name(),
                        call.owner().phone(),
                        PlaceStatus.tagOf(call.visit()),
                        day.machineOf(call.visit()).label()),
                Style.STRONG);
        rest = canvas.paragraph(rest, Words.say("round.to_say", RoundWords.toSay(call)), Style.NORMAL);
        for (String said : RoundWords.said(day, call.visit())) {
            rest = canvas.paragraph(rest, said, Style.QUIET);
        }
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
