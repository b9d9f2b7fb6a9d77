package org.shedboard.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.shedboard.ahead.DayAhead;
import org.shedboard.ahead.Weeks;
import org.shedboard.board.AheadWords;
import org.shedboard.board.Board;
import org.shedboard.board.Screen;
import org.shedboard.day.Clocks;
import org.shedboard.day.Figures;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Glyphs;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.grid.TextWidth;
import org.shedboard.shop.PlaceKind;
import org.shedboard.shop.Skill;
import org.shedboard.words.When;
import org.shedboard.words.Words;

/** The weeks ahead: a row for each working day, a bar for each kind of place or each skill, and the chosen day in sentences below. */
final class AheadView {

    /** Hours booked of hours open, at least as wide as a shop with ten people needs it: {@code 85.0/85.0}. */
    private static final int BOTH_HOURS = 9;

    private static final int HOURS = 4;

    /** A bar shorter than this says nothing beside its number. */
    private static final int SHORTEST_BAR = 4;

    private final Canvas canvas;
    private final Board board;
    private final Screen.Ahead screen;
    /** Columns of the date, with the pointer before it and a blank behind. */
    private final int date = 2 + TimeRoom.of(When.WEEKDAY_DATE);

    private static final int MOST_LINES = 4;

    /** What one column shows of a day, in minutes. */
    private record Part(String name, int booked, int due, int open, boolean isFull) {
        String hours() {
            return booked == 0 ? "-" : Figures.hours(booked);
        }

        String both() {
            return hours() + "/" + Figures.hours(open);
        }
    }

    AheadView(Canvas canvas, Board board, Screen.Ahead screen) {
        this.canvas = canvas;
        this.board = board;
        this.screen = screen;
    }

    void draw(Region page) {
        Header.draw(canvas, page.row(0), board, Words.say("ahead.title"));
        Region body = page.below(2).inside(1, 0);
        Weeks weeks = screen.weeks();
        if (weeks.days().isEmpty()) {
            canvas.text(body, Words.say("ahead.empty"), Style.STRONG);
            return;
        }
        int chosen = Math.min(screen.row(), weeks.days().size() - 1);
        List<String> said = said(weeks, chosen, body.width());
        int rows = Math.min(weeks.days().size(), Math.max(1, body.height() - said.size() - 2));
        table(body.top(rows + 1), weeks, chosen, rows);
        Region below = body.below(rows + 2);
        for (String line : said) {
            canvas.text(below.row(0), line, Style.NORMAL);
            below = below.below(1);
        }
    }

    /** Sentences that the days above leave room for. */
    private List<String> said(Weeks weeks, int chosen, int width) {
        List<String> lines = new ArrayList<>();
        for (String sentence : AheadWords.of(board.expectDay(), weeks.days().get(chosen))) {
            lines.addAll(TextWidth.wrap(sentence, Math.max(1, width)));
        }
        if (lines.size() > MOST_LINES) {
            String last = lines.get(MOST_LINES - 1) + Words.say("ahead.and_more");
            lines = new ArrayList<>(lines.subList(0, MOST_LINES - 1));
            lines.add(last);
        }
        boolean due = weeks.days().stream().anyMatch(day -> day.due().handsOn() > 0);
        lines.add(
                due
                        ? Words.say("ahead.legend_due", Glyphs.DARK, Glyphs.MEDIUM, Glyphs.LIGHT)
                        : Words.say("ahead.legend", Glyphs.DARK, Glyphs.LIGHT));
        return lines;
    }

    /** The chosen day is always among the rows shown. */
    private void table(Region region, Weeks weeks, int chosen, int rows) {
        int first = Math.max(0, Math.min(chosen - rows / 2, weeks.days().size() - rows));
        heading(region.row(0), parts(weeks.days().get(0)));
        for (int row = 0; row < rows; row++) {
            day(region.row(row + 1), weeks.days().get(first + row), first + row == chosen);
            Press.row(canvas, region.row(row + 1), first + row, chosen);
        }
    }

    private void heading(Region row, List<Part> parts) {
        canvas.text(row.rightOf(1).left(date - 1), Words.say("ahead.day"), Style.QUIET);
        for (int i = 0; i < parts.size(); i++) {
            canvas.text(cell(row, i, parts.size()), parts.get(i).name(), Style.QUIET);
        }
    }

    private void day(Region row, DayAhead day, boolean isChosen) {
        Style style = isChosen ? Style.SELECTED : Style.NORMAL;
        if (isChosen) {
            canvas.fill(row, style);
            canvas.fill(row.left(1), Glyphs.POINTER, style);
        }
        canvas.text(row.rightOf(1).left(date - 1), Clocks.sayDate(day.date()), style);
        List<Part> parts = parts(day);
        for (int i = 0; i < parts.size(); i++) {
            part(cell(row, i, parts.size()), parts.get(i), style);
        }
    }

    /** The columns share what the date leaves, with a blank between each two. */
    private Region cell(Region row, int index, int count) {
        int width = Math.max(0, row.width() - date) / count;
        return row.rightOf(date + index * width).left(Math.max(0, width - 1));
    }

    private void part(Region cell, Part part, Style style) {
        int widest = widest(Part::both, BOTH_HOURS);
        boolean both = cell.width() >= widest + 1 + SHORTEST_BAR;
        String hours = both ? part.both() : part.hours();
        int width = both ? widest : widest(Part::hours, HOURS);
        canvas.textRight(cell.right(width), hours, part.isFull() ? Style.STRONG : style);
        if (part.isFull()) {
            canvas.fill(cell.right(Math.max(width, hours.length()) + 1).left(1), '!', Style.STRONG);
        }
        bar(cell.leftOf(width + 1), part);
    }

    /** Columns that the longest of these takes on any of the days: no number is cut, and all bars are of one length. */
    private int widest(Function<Part, String> said, int least) {
        return screen.weeks().days().stream()
                .flatMap(day -> parts(day).stream())
                .mapToInt(part -> said.apply(part).length())
                .reduce(least, Math::max);
    }

    private void bar(Region region, Part part) {
        int whole = Math.max(part.open(), 1);
        int booked = columns(part.booked(), whole, region.width());
        int due = columns(part.booked() + part.due(), whole, region.width());
        canvas.fill(region, part.open() == 0 ? ' ' : Glyphs.LIGHT, Style.FREE);
        canvas.fill(region.left(due), Glyphs.MEDIUM, Style.UNATTENDED);
        canvas.fill(region.left(booked), Glyphs.DARK, Style.HANDS_ON);
    }

    /** What is booked at all shows, and what is not full does not look so. */
    private static int columns(int minutes, int whole, int width) {
        if (minutes >= whole) {
            return width;
        }
        int columns = (int) ((long) minutes * width / whole);
        return minutes > 0 ? Math.max(1, columns) : 0;
    }

    private List<Part> parts(DayAhead day) {
        return screen.page() == Screen.Ahead.Page.PLACES ? places(day) : skills(day);
    }

    private static List<Part> places(DayAhead day) {
        List<Part> parts = new ArrayList<>();
        for (PlaceKind kind : PlaceKind.values()) {
            int booked = day.byKind().get(kind);
            parts.add(new Part(Words.say(kind), booked, day.due().of(kind), day.open(kind), day.isFull(kind)));
        }
        int booked = day.people().booked();
        int open = day.people().open();
        boolean isFull = open - booked < DayAhead.LEAST_MINUTES;
        parts.add(new Part(Words.say("ahead.everybody"), booked, day.due().handsOn(), open, isFull));
        return parts;
    }

    private static List<Part> skills(DayAhead day) {
        List<Part> parts = new ArrayList<>();
        for (Skill skill : Skill.values()) {
            int booked = day.people().booked(skill);
            parts.add(new Part(Words.say(skill), booked, day.due().of(skill), day.open(skill), day.isFull(skill)));
        }
        return parts;
    }
}
