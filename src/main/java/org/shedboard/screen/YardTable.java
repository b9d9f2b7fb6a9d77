package org.shedboard.screen;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.shedboard.day.Clocks;
import org.shedboard.day.Day;
import org.shedboard.day.Outlook;
import org.shedboard.day.Riding;
import org.shedboard.estimate.Estimate;
import org.shedboard.estimate.Estimator;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Column;
import org.shedboard.grid.Glyphs;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.pack.Plan;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;
import org.shedboard.words.Words;

/** The machines here and expected, a line each: what they are, how long they take, when they are ready, what was promised. */
final class YardTable {
    /** From this width on there is room to say what machine it is. */
    private static final int WIDE = 110;
    /** Beyond this width the eye would lose the line between the owner and the promise. */
    private static final int WIDEST = 150;

    private final Canvas canvas;
    private final Outlook outlook;
    private final Day day;
    private final Estimator estimator;
    private final List<Column> columns;
    private final boolean wide;

    YardTable(Canvas canvas, Outlook outlook, int width) {
        this.canvas = canvas;
        this.outlook = outlook;
        this.day = outlook.day();
        this.estimator = new Estimator(day.books().catalogue());
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
        all.add(Column.left(Words.say("board.next"), 12));
        all.add(Column.right(Words.say("board.ready"), 9));
        all.add(Column.right(Words.say("board.promise"), 9));
        all.add(Column.right(Words.say("board.chance"), 6));
        return all;
    }

    void heading(Region row) {
        canvas.headings(row.left(WIDEST).inside(1, 0), columns);
    }

    void entry(Region row, Visit visit, boolean selected) {
        Style style = selected ? Style.SELECTED : styleOf(visit);
        if (selected) {
            canvas.fill(row, style);
            canvas.fill(row.left(1), Glyphs.POINTER, style);
        }
        canvas.entry(row.left(WIDEST).inside(1, 0), columns, texts(visit), style);
    }

    private Style styleOf(Visit visit) {
        if (isLate(visit)) {
            return Style.LATE;
        }
        return switch (visit.state()) {
            case HELD -> Style.HELD;
            case DONE -> Style.GOOD;
            case BOOKED -> Style.QUIET;
            default -> Style.NORMAL;
        };
    }

    private boolean isLate(Visit visit) {
        return visit.promise()
                .flatMap(promise -> outlook.readyAt(visit.id()).map(ready -> ready.isAfter(promise.at())))
                .orElse(false);
    }

    private List<String> texts(Visit visit) {
        Machine machine = day.machineOf(visit);
        List<String> texts = new ArrayList<>();
        texts.add((Riding.isStopped(day, visit) ? "!" : "") + PlaceStatus.tagOf(visit));
        texts.add(day.ownerOf(visit).name());
        if (wide) {
            texts.add(machine.label() + " ("
                    + day.books().catalogue().expectClass(machine.classId()).name() + ")");
        }
        texts.add(Words.say(visit.intake().mud()));
        Depth depth = visit.intake().depth();
        texts.add(wide ? Words.say(depth) : Words.say("depth.short." + depth));
        texts.add(minutes(visit));
        texts.add(where(visit));
        texts.add(outlook.readyAt(visit.id()).map(at -> Clocks.sayTime(day, at)).orElse(""));
        texts.add(visit.promise().map(said -> Clocks.sayTime(day, said.at())).orElse(""));
        OptionalInt chance = outlook.chanceOfPromise(visit);
        texts.add(chance.isPresent() ? chance.getAsInt() + "%" : "");
        return texts;
    }

    private String minutes(Visit visit) {
        List<Task> left = visit.tasks().stream().filter(task -> !task.isDone()).toList();
        Estimate.Range range = estimator.rangeOf(left);
        return left.isEmpty() ? "" : range.likely() + "/" + range.safe();
    }

    /** Where it stands, or what it waits for and until when. */
    private String where(Visit visit) {
        if (visit.state() == VisitState.HELD) {
            return Words.say(visit.state());
        }
        if (visit.state() == VisitState.DONE) {
            return Words.say(visit.state());
        }
        Optional<String> standing = visit.standsIn();
        if (standing.isPresent()) {
            return Words.say("sheet.place", standing.get());
        }
        String next = nextStart(visit);
        return visit.state() == VisitState.BOOKED ? Words.say(visit.state()) + " " + arrival(visit) : next;
    }

    private String arrival(Visit visit) {
        String said = Clocks.sayTime(day, visit.intake().arrives());
        return said.length() > 5 ? said.substring(0, 3) : said;
    }

    private String nextStart(Visit visit) {
        return outlook.plan().tasks().stream()
                .filter(time ->
                        time.job().equals(visit.id()) && !outlook.taskOf(time).isDone())
                .min(Comparator.comparingInt(outlook::handsFrom))
                .map(time -> placeOf(visit, time) + Clocks.sayTime(day, day.instantOf(outlook.handsFrom(time))))
                .orElse("");
    }

    private String placeOf(Visit visit, Plan.TaskTime time) {
        Stay stay = visit.stays().get(time.stay());
        return stay.needsPlace()
                ? outlook.plan()
                        .findStay(visit.id(), time.stay())
                        .map(at -> at.place() + " ")
                        .orElse("")
                : "";
    }
}
