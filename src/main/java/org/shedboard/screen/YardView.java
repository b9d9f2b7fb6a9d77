package org.shedboard.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shedboard.board.Board;
import org.shedboard.board.Screen;
import org.shedboard.board.Yard;
import org.shedboard.board.YardKeys;
import org.shedboard.day.Outlook;
import org.shedboard.estimate.Estimate;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Column;
import org.shedboard.grid.Glyphs;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.shop.Visit;
import org.shedboard.words.When;
import org.shedboard.words.Words;

/** Everything that is here or due, a line each, and all that matters of the chosen one below. */
final class YardView {
    /** Lines about the chosen machine. */
    private static final int DETAIL = 5;
    /** A list of fewer rows is worth more than what is said below it. */
    private static final int LEAST_LIST = 5;
    /** From this width on there is room to say where it goes next. */
    private static final int ROOMY = 76;
    /** From this width on there is room to say what machine it is. */
    private static final int WIDE = 100;
    /** From this width on there is room for what it waits for. */
    private static final int WIDEST = 116;

    private static final int OWNER = 22;
    private static final int MACHINE = 19;
    private static final int FIELD = 30;

    private final Canvas canvas;
    private final Outlook outlook;
    private final Board board;
    private final Screen.YardPage screen;
    private final List<Visit> listed;

    YardView(Canvas canvas, Board board, Screen.YardPage screen) {
        this.canvas = canvas;
        this.board = board;
        this.screen = screen;
        this.outlook = board.expectOutlook();
        this.listed = YardKeys.listed(outlook, screen);
    }

    void draw(Region page) {
        Header.draw(canvas, page.row(0), board, Words.say("yard.title"), List.of(count()));
        Region body = page.below(1);
        boolean isFiltering = screen.isTyping() || !screen.filter().isBlank();
        if (isFiltering) {
            filter(body.row(0).inside(1, 0));
            body = body.below(1);
        }
        int detail = body.height() >= DETAIL + LEAST_LIST ? DETAIL : 0;
        list(body.above(detail));
        YardKeys.chosen(outlook, screen).ifPresent(visit -> detail(page.bottom(detail), visit));
    }

    private String count() {
        int all = Yard.of(outlook).size();
        String order = Words.say(screen.order());
        return listed.size() == all
                ? Words.say("yard.count", all, order)
                : Words.say("yard.count_of", listed.size(), all, order);
    }

    private void filter(Region row) {
        Region field = canvas.text(row, Words.say("yard.find") + " ", Style.STRONG);
        OverlayView.field(canvas, field.left(FIELD), screen.filter(), screen.isTyping());
    }

    private void list(Region region) {
        List<Column> columns = columns(region.width());
        canvas.headings(region.row(0).inside(1, 0), columns);
        Region rows = region.below(1);
        if (listed.isEmpty()) {
            String empty = screen.filter().isBlank() ? "board.empty" : "yard.nothing";
            canvas.paragraph(rows.inside(1, 0), Words.say(empty), Style.QUIET);
            return;
        }
        int index = YardKeys.chosen(outlook, screen).map(listed::indexOf).orElse(0);
        int first = Math.max(0, index - rows.height() + 1);
        for (int row = 0; row < rows.height() && first + row < listed.size(); row++) {
            Press.row(canvas, rows.row(row), first + row, index);
            entry(rows.row(row), columns, listed.get(first + row), first + row == index);
        }
    }

    private static List<Column> columns(int width) {
        List<Column> all = new ArrayList<>();
        all.add(Column.right(Words.say("board.tag"), 4));
        all.add(Column.left(Words.say("board.owner"), width >= WIDEST ? OWNER : 0));
        if (width >= WIDE) {
            all.add(Column.left(Words.say("board.machine"), MACHINE));
        }
        all.add(Column.left(Words.say("board.mud"), 5));
        all.add(Column.left(Words.say("board.depth"), 4));
        all.add(Column.right(Words.say("board.minutes"), 8));
        all.add(Column.right(Words.say("board.promise"), TimeRoom.of(When.WEEKDAY_CLOCK)));
        all.add(Column.right(Words.say("board.chance"), 6));
        if (width >= ROOMY) {
            all.add(Column.left(Words.say("yard.state"), 11));
        }
        if (width >= WIDEST) {
            all.add(Column.left(Words.say("yard.waits"), 0));
        }
        return all;
    }

    private void entry(Region row, List<Column> columns, Visit visit, boolean chosen) {
        Style style = chosen ? Style.SELECTED : YardTable.styleOf(outlook, visit);
        canvas.fill(row, style);
        if (chosen) {
            canvas.fill(row.left(1), Glyphs.POINTER, style);
        }
        canvas.entry(row.inside(1, 0), columns, texts(visit, row.width()), style);
    }

    private List<String> texts(Visit visit, int width) {
        YardEntry entry = new YardEntry(outlook, visit);
        List<String> texts = new ArrayList<>(List.of(entry.markedTag(), entry.owner()));
        if (width >= WIDE) {
            texts.add(entry.label());
        }
        texts.addAll(List.of(entry.mud(), entry.shortDepth(), entry.minutes(), entry.promise(), entry.chance()));
        texts.add(Words.say(visit.state()));
        if (width >= WIDEST) {
            texts.add(new YardWaits(outlook, visit).text());
        }
        return texts;
    }

    private void detail(Region region, Visit visit) {
        YardEntry entry = new YardEntry(outlook, visit);
        Region rest = region.below(1).inside(1, 0);
        rest = canvas.paragraph(
                rest, Words.say("yard.detail", entry.markedTag(), entry.owner(), entry.machine()), Style.STRONG);
        rest = canvas.paragraph(rest, state(entry, visit), Style.NORMAL);
        canvas.paragraph(rest, Words.say("yard.detail_waits", new YardWaits(outlook, visit).text()), Style.NORMAL);
    }

    private static String state(YardEntry entry, Visit visit) {
        String state = visit.standsIn()
                .map(place -> Words.say(visit.state()) + ", " + Words.say("sheet.place", place))
                .orElse(Words.say(visit.state()));
        Optional<Estimate.Range> left = entry.rangeLeft();
        return left.map(range ->
                        Words.say("yard.detail_state", state, entry.mud(), entry.depth(), range.likely(), range.safe()))
                .orElse(Words.say("yard.detail_state_short", state, entry.mud(), entry.depth()));
    }
}
