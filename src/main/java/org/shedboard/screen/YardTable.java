package org.shedboard.screen;

import java.util.ArrayList;
import java.util.List;
import org.shedboard.day.Outlook;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Column;
import org.shedboard.grid.Glyphs;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.shop.Visit;
import org.shedboard.words.When;
import org.shedboard.words.Words;

/** The machines here and expected, a line each: what they are, how long they take, when they are ready, what was promised. */
final class YardTable {
    /** From this width on there is room to say what machine it is. */
    private static final int WIDE = 110;
    /** Beyond this width the eye would lose the line between the owner and the promise. */
    private static final int WIDEST = 150;

    /** Columns of what a machine waits for before the time: {@code booked 10:30}. */
    private static final int BEFORE_NEXT = 7;

    private final Canvas canvas;
    private final Outlook outlook;
    private final List<Column> columns;
    private final boolean wide;

    YardTable(Canvas canvas, Outlook outlook, int width) {
        this.canvas = canvas;
        this.outlook = outlook;
        this.wide = width >= WIDE;
        this.columns = columns(wide);
    }

    private static List<Column> columns(boolean wide) {
        List<Column> all = new ArrayList<>();
        all.add(Column.right(Words.say("board.tag"), 4));
        all.add(Column.left(Words.say("board.owner"), 0));
        if (wide) {
            all.add(Column.left(Words.say("board.machine"), 0));
        }
        all.add(Column.left(Words.say("board.mud"), 5));
        all.add(Column.left(Words.say("board.depth"), wide ? 9 : 4));
        all.add(Column.right(Words.say(wide ? "board.likely" : "board.minutes"), wide ? 11 : 8));
        all.add(Column.left(Words.say("board.next"), BEFORE_NEXT + TimeRoom.of(When.CLOCK)));
        all.add(Column.right(Words.say("board.ready"), TimeRoom.of(When.WEEKDAY_CLOCK)));
        all.add(Column.right(Words.say("board.promise"), TimeRoom.of(When.WEEKDAY_CLOCK)));
        all.add(Column.right(Words.say("board.chance"), 6));
        return all;
    }

    void heading(Region row) {
        canvas.headings(row.left(WIDEST).inside(1, 0), columns);
    }

    void entry(Region row, Visit visit, boolean selected) {
        Style style = selected ? Style.SELECTED : styleOf(outlook, visit);
        if (selected) {
            canvas.fill(row, style);
            canvas.fill(row.left(1), Glyphs.POINTER, style);
        }
        canvas.entry(row.left(WIDEST).inside(1, 0), columns, texts(visit), style);
    }

    static Style styleOf(Outlook outlook, Visit visit) {
        if (new YardEntry(outlook, visit).isLate()) {
            return Style.LATE;
        }
        return switch (visit.state()) {
            case HELD -> Style.HELD;
            case DONE -> Style.GOOD;
            case BOOKED -> Style.QUIET;
            default -> Style.NORMAL;
        };
    }

    private List<String> texts(Visit visit) {
        YardEntry entry = new YardEntry(outlook, visit);
        List<String> texts = new ArrayList<>();
        texts.add(entry.markedTag());
        texts.add(entry.owner());
        if (wide) {
            texts.add(entry.machine());
        }
        texts.add(entry.mud());
        texts.add(wide ? entry.depth() : entry.shortDepth());
        texts.add(entry.minutes());
        texts.add(entry.where());
        texts.add(entry.ready());
        texts.add(entry.promise());
        texts.add(entry.chance());
        return texts;
    }
}
