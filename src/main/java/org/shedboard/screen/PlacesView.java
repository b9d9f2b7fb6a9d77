package org.shedboard.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shedboard.board.Board;
import org.shedboard.board.Hand;
import org.shedboard.board.Known;
import org.shedboard.board.ScorecardWords;
import org.shedboard.board.Screen;
import org.shedboard.board.Sight;
import org.shedboard.board.Yard;
import org.shedboard.day.Concern;
import org.shedboard.day.Concerns;
import org.shedboard.day.Day;
import org.shedboard.day.KnockOffChance;
import org.shedboard.day.Outlook;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Glyphs;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.grid.TextWidth;
import org.shedboard.shop.Person;
import org.shedboard.shop.Place;
import org.shedboard.shop.Visit;
import org.shedboard.words.Words;

/** The bay board: what needs the foreman, each place on a time axis, the yard in planned order. */
final class PlacesView {
    private static final int LABEL = 12;
    private static final int ID = 4;
    /** Blank columns between a heading and what is said beside it. */
    private static final int GAP = 2;
    /** From this height on a place has two rows, and an empty one parts the places from the yard. */
    private static final int TALL = 34;
    /** What a place is doing takes so many columns, two fifths of the screen between these. */
    private static final int LEAST_STATUS = 38;

    private static final int MOST_STATUS = 46;

    private final Canvas canvas;
    private final Board board;
    private final Screen.Places screen;
    private final Outlook outlook;
    private final Optional<Hand> hand;
    private final Day day;
    private final List<Concern> concerns;
    private final VisitPointing pointing;

    PlacesView(Canvas canvas, Board board, Screen.Places screen) {
        this(canvas, board, screen, board.expectOutlook(), Optional.empty());
    }

    private PlacesView(Canvas canvas, Board board, Screen.Places screen, Outlook outlook, Optional<Hand> hand) {
        this.canvas = canvas;
        this.board = board;
        this.screen = screen;
        this.outlook = outlook;
        this.hand = hand;
        this.day = outlook.day();
        this.concerns = Concerns.of(outlook);
        // while a task is held, the keys that go up and down move it
        List<Visit> toPointAt = hand.isPresent() ? List.of() : Yard.of(outlook);
        this.pointing = new VisitPointing(canvas, toPointAt, screen.selected());
    }

    /** The places as they would be with a task where it is held. */
    static PlacesView holding(Canvas canvas, Board board, Outlook outlook, Hand hand) {
        return new PlacesView(canvas, board, Screen.Places.START, outlook, Optional.of(hand));
    }

    /** The places alone, and the task in hand under them; gives the rows they take. */
    int drawPlaces(Region region, int pageHeight) {
        int perPlace = pageHeight >= TALL ? 2 : 1;
        int rows = 2 + perPlace * day.shop().places().size();
        places(region.top(rows), perPlace);
        return rows + 1;
    }

    void draw(Region page) {
        Header.draw(canvas, page.row(0), board, title(board), SightWords.of(board.sight()));
        int perPlace = page.height() >= TALL ? 2 : 1;
        int placeRows = 1 + perPlace * day.shop().places().size();
        int concernRows = concernRows(page.height(), placeRows + perPlace - 1);
        Region body = page.below(1);
        concerns(body.top(concernRows));
        Region below = body.below(concernRows);
        places(below.top(placeRows), perPlace);
        yard(below.below(placeRows + (perPlace - 1)));
    }

    static String title(Board board) {
        Day day = board.expectDay();
        long here = day.shop().people().stream().filter(day::isHere).count();
        String state = day.isClosed()
                ? Words.say("board.closed")
                : day.isOpened() ? Words.say("board.here", here) : Words.say("board.not_open");
        return day.shop().name() + "   " + state;
    }

    /** Room for what needs the foreman: a sixth of the screen, more where the yard leaves it, never more than there is to say. */
    private int concernRows(int height, int placeRows) {
        int count = concerns.size() + (board.better().isPresent() ? 2 : 0) + told();
        int yardRows = 1 + Math.max(1, Yard.of(outlook).size());
        int spare = height - 1 - placeRows - yardRows;
        return Math.max(1, Math.min(count, Math.max(height / 6, spare)));
    }

    /** So many lines come after the concerns of the day. */
    private int told() {
        return board.read().drifts().size() + board.read().warnings().size();
    }

    private void concerns(Region region) {
        List<String> sentences = new ArrayList<>();
        List<Style> styles = new ArrayList<>();
        board.better().ifPresent(better -> {
            sentences.add(Words.say(
                    "board.better",
                    better.difference().earlier(),
                    better.difference().later(),
                    better.difference().promises()));
            styles.add(Style.PROMISE);
            sentences.add(BetterLine.of(day, better.difference()));
            styles.add(Style.PROMISE);
        });
        int width = region.width() - LABEL;
        for (Concern concern : concerns) {
            sentences.add(sentence(concern, width));
            styles.add(styleOf(concern.kind()));
        }
        for (String drift : ScorecardWords.drifts(board.read().drifts())) {
            sentences.add(drift);
            styles.add(Style.LATE);
        }
        for (String warning : board.read().warnings()) {
            sentences.add(warning);
            styles.add(Style.LATE);
        }
        canvas.text(region.left(LABEL).inside(1, 0), Words.say("board.needs_you"), Style.STRONG);
        Region text = region.rightOf(LABEL);
        if (sentences.isEmpty()) {
            canvas.text(text, Words.say("board.nothing"), Style.GOOD);
        }
        for (int row = 0; row < Math.min(region.height(), sentences.size()); row++) {
            boolean last = row == region.height() - 1 && sentences.size() > region.height();
            Region line = text.row(row);
            if (last) {
                line = canvas.textRight(line, " " + Words.say("board.more", sentences.size() - row - 1), Style.QUIET);
            }
            canvas.text(line, sentences.get(row), styles.get(row));
            int concern = row - sentences.size() + told() + concerns.size();
            if (!last && concern >= 0 && concern < concerns.size()) {
                Region whole = region.row(row);
                concerns.get(concern).visitId().ifPresent(id -> pointing.visit(whole, id));
            }
        }
    }

    /** Where the whole sentence is too long the tag stands for the machine; the yard has its owner. */
    private String sentence(Concern concern, int width) {
        String whole = Words.say("concern." + concern.kind(), concern.values());
        Optional<Visit> visit = concern.visitId().flatMap(day::findVisit);
        if (TextWidth.of(whole) <= width || visit.isEmpty() || visit.get().tag().isEmpty()) {
            return whole;
        }
        List<String> values = new ArrayList<>(concern.values());
        values.set(0, PlaceStatus.tagOf(visit.get()));
        return Words.say("concern." + concern.kind(), values);
    }

    private static Style styleOf(Concern.Kind kind) {
        return switch (kind) {
            case NOT_TO_BE_RIDDEN, PROMISE_MISSED, PROMISE_IN_DANGER, NOT_IN_PLAN -> Style.DANGER;
            case PART_SHORT, OWNER_TO_ASK, FIX_TO_ASK, HELD_FOR_PARTS, HELD_FOR_LOOK -> Style.HELD;
            case UNSETTLED,
                    DAY_NOT_CLOSED,
                    HOIST_UNCHECKED,
                    HOIST_LOCKED_OUT,
                    BOOKING_LATE,
                    RUNS_OVER,
                    ON_AFTER_KNOCK_OFF,
                    PROMISE_AT_RISK -> Style.LATE;
            case OWNER_TO_RING, WASH_DOWN_AWAITED, LOAN_OUT, NO_PROMISE -> Style.NORMAL;
        };
    }

    private void places(Region region, int perPlace) {
        int status = Math.max(LEAST_STATUS, Math.min(MOST_STATUS, region.width() * 2 / 5));
        Region axisColumns = region.rightOf(status);
        int now = outlook.problem().now();
        Sight.Extent extent = Sight.Extent.of(outlook);
        TimeAxis axis = TimeAxis.over(
                axisColumns, board.sight().from(extent), board.sight().to(extent));
        TimeScale scale = TimeScale.of(axis, day, now);
        Region heading = region.row(0).left(status - 1).inside(1, 0);
        Region rest = canvas.text(heading, Words.say("board.places"), Style.STRONG);
        board.seen().flatMap(Known.Seen::knockOff).ifPresent(chance -> knockOff(rest.rightOf(GAP), chance));
        scale.drawWithNow(canvas, region.row(0));
        List<Place> places = day.shop().places();
        for (int i = 0; i < places.size(); i++) {
            Region rows = region.below(1 + i * perPlace).top(perPlace);
            place(rows.left(status), places.get(i));
            restTime(rows.row(0), axis);
            for (int row = 0; row < perPlace; row++) {
                scale.drawMidnights(canvas, rows.row(row));
                canvas.fill(axis.columnAt(rows.row(row), now), Glyphs.VERTICAL, Style.NOW);
            }
            new PlaceBars(canvas, outlook, axis, pointing, hand)
                    .draw(rows, places.get(i).id());
        }
        Region under = region.below(1 + perPlace * places.size());
        hand.ifPresent(held -> HeldBar.draw(canvas, under, status, outlook, held, axis));
    }

    private void knockOff(Region room, KnockOffChance chance) {
        KnockOffLine line = new KnockOffLine(day, chance);
        canvas.text(room, line.text(room.width()), line.style());
    }

    /** Dots where nobody is at work: breaks, and what lies before the first shift and after knock-off. */
    private void restTime(Region row, TimeAxis axis) {
        for (int column = 0; column < axis.columns().width(); column++) {
            int middle = axis.minuteAt(column) + axis.minutesPerColumn() / 2;
            boolean manned = outlook.problem().people().stream()
                    .anyMatch(person -> person.shifts().stream().anyMatch(shift -> shift.contains(middle)));
            if (!manned) {
                canvas.fill(axis.columnAt(row, middle), Glyphs.DOT, Style.BREAK);
            }
        }
    }

    private void place(Region rows, Place place) {
        Region line = rows.row(0).inside(1, 0);
        canvas.text(line.left(ID), place.id(), Style.STRONG);
        PlaceStatus status = PlaceStatus.of(outlook, place);
        Region rest = canvas.text(line.rightOf(ID - 1), status.text(), status.style());
        String more = status.more().isEmpty() ? "" : ", " + status.more();
        boolean fits = TextWidth.of(more) < rest.width();
        canvas.text(rest, fits ? more : "", Style.QUIET);
        if (rows.height() > 1) {
            String rated = place.isHoist() ? " " + Words.say("board.rated", place.ratedKg()) : "";
            Region under = rows.row(1).inside(1, 0).rightOf(ID - 1);
            canvas.text(under, fits || status.more().isEmpty() ? place.name() + rated : status.more(), Style.QUIET);
        }
    }

    private void yard(Region region) {
        List<Visit> listed = Yard.of(outlook);
        YardTable table = new YardTable(canvas, outlook, region.width());
        table.heading(region.row(0));
        Region rows = region.below(1);
        if (listed.isEmpty()) {
            canvas.text(rows.row(0).inside(1, 0), Words.say("board.empty"), Style.QUIET);
        }
        int index = pointing.cursor();
        int first = Math.max(0, index - rows.height() + 1);
        for (int row = 0; row < rows.height() && first + row < listed.size(); row++) {
            table.entry(rows.row(row), listed.get(first + row), first + row == index);
            pointing.visit(rows.row(row), listed.get(first + row).id());
        }
        if (rows.height() > listed.size() + 1) {
            canvas.text(rows.bottom(1).inside(1, 0), legend(), Style.QUIET);
        }
    }

    /** What the glyphs on the time axis mean. */
    static String legend() {
        return Words.say(
                "board.legend",
                Glyphs.DARK,
                Glyphs.LIGHT,
                StayBar.FINISHED,
                Glyphs.TICK,
                Glyphs.HORIZONTAL,
                Glyphs.DOT);
    }

    static String nameOf(Day day, String personId) {
        return day.shop().findPerson(personId).map(Person::name).orElse(personId);
    }
}
