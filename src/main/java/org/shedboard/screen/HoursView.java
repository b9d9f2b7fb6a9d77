package org.shedboard.screen;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.shedboard.board.Board;
import org.shedboard.board.Screen;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.hours.DecimalHours;
import org.shedboard.tally.SpanTally;
import org.shedboard.tally.Stamps;
import org.shedboard.words.When;
import org.shedboard.words.Words;

/** The hours of a day or a week: its people, its machines, or day by day. */
final class HoursView {
    /** Beyond this width the eye would lose the line between a name and its hours. */
    private static final int WIDEST = 118;

    private final Canvas canvas;
    private final Board board;
    private final Screen.Hours screen;

    HoursView(Canvas canvas, Board board, Screen.Hours screen) {
        this.canvas = canvas;
        this.board = board;
        this.screen = screen;
    }

    void draw(Region page) {
        Header.draw(canvas, page.row(0), board, title());
        Region body = page.below(2).inside(1, 0).left(WIDEST);
        if (screen.page() == Screen.Hours.Page.MONTH) {
            board.lookBackOf(screen)
                    .ifPresentOrElse(
                            back -> new MonthHours(canvas, back, screen.scroll()).draw(body),
                            () -> canvas.text(body, Words.say("tally.reading"), Style.QUIET));
            return;
        }
        Optional<SpanTally> tally = board.hoursOf(screen);
        if (tally.isEmpty()) {
            canvas.text(body, Words.say("tally.reading"), Style.QUIET);
        } else if (tally.get().ledger().openings().isEmpty()
                && tally.get().hours().days().isEmpty()) {
            canvas.text(body, Words.say("tally.empty"), Style.STRONG);
        } else {
            draw(body, tally.get());
        }
    }

    private void draw(Region body, SpanTally tally) {
        switch (screen.page()) {
            case PEOPLE -> new PeopleHours(canvas, tally, screen.scroll()).draw(body);
            case MACHINES -> new MachineHours(canvas, tally, screen.scroll()).draw(body);
            case WEEK -> new WeekHours(canvas, tally).draw(body);
            case MONTH -> throw new IllegalStateException("a month is looked back upon");
            case ROWS -> new HoursRows(canvas, tally, screen.scroll()).draw(body);
        }
    }

    private String title() {
        String from = When.WEEKDAY_DATE.say(screen.from());
        String last = When.WEEKDAY_DATE.say(screen.until().minusDays(1));
        return switch (screen.page()) {
            case PEOPLE, MACHINES, ROWS -> Words.say("tally.title", from);
            case MONTH -> Words.say("back.title", from, last);
            case WEEK -> Words.say("tally.week_title", Stamps.week(screen.from()), from, last);
        };
    }

    static String date(LocalDate date) {
        return When.WEEKDAY_DATE.say(date);
    }

    static String weekday(LocalDate date) {
        return When.WEEKDAY_NUMBER.say(date);
    }

    static String hours(int minutes) {
        return DecimalHours.of(minutes).toPlainString();
    }

    /** Lines of text below one another; what does not fit is not drawn. */
    static Region lines(Canvas canvas, Region region, List<String> lines, Style style) {
        Region rest = region;
        for (String line : lines) {
            rest = canvas.paragraph(rest, line, style);
        }
        return rest;
    }
}
