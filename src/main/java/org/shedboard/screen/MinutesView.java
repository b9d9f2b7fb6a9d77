package org.shedboard.screen;

import java.util.ArrayList;
import java.util.List;
import org.shedboard.board.Board;
import org.shedboard.board.MinuteWords;
import org.shedboard.board.Screen;
import org.shedboard.day.Day;
import org.shedboard.day.Names;
import org.shedboard.day.WhySoLong;
import org.shedboard.forecast.Explanation;
import org.shedboard.forecast.MudAndDepth;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Column;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Intake;
import org.shedboard.shop.Mud;
import org.shedboard.words.When;
import org.shedboard.words.Words;

/** Where the minutes of a visit come from: what one says to the owner, the parts, other mud and depth, and visits like it. */
final class MinutesView {
    /** Beyond this width the eye would lose the line between what is said and its minutes. */
    private static final int WIDEST = 100;

    /** Rows that are more than any explanation needs. */
    private static final int TALLEST = 200;

    private static final int GAP = 3;

    private final Canvas canvas;
    private final Board board;
    private final Screen.Minutes screen;
    private final Day day;
    private final WhySoLong why;

    MinutesView(Canvas canvas, Board board, Screen.Minutes screen) {
        this.canvas = canvas;
        this.board = board;
        this.screen = screen;
        this.day = board.expectDay();
        this.why = screen.why();
    }

    void draw(Region page) {
        Header.draw(canvas, page.row(0), board, Words.say("estimate.title", Names.of(day, why.visit())));
        Region body = page.below(1).inside(1, 0).left(WIDEST);
        int rows = new MinutesView(canvas.within(body.top(0)), board, screen).rows(body, 0);
        int scroll = Math.max(0, Math.min(screen.scroll(), rows - body.height()));
        new MinutesView(canvas.within(body), board, screen).rows(body, scroll);
    }

    /** Draws everything, moved up; gives how many rows it is. */
    private int rows(Region body, int scroll) {
        Region all = new Region(body.left(), body.top() - scroll, body.width(), TALLEST);
        Region rest = canvas.paragraph(all, MinuteWords.toOwner(why), Style.STRONG);
        if (why.explained().table().isEmpty()) {
            rest = canvas.paragraph(rest, Words.say("estimate.unknown"), Style.HELD);
        }
        rest = rest.below(1);
        int half = rest.width() / 2;
        Region parts = parts(rest.left(half));
        Region side = works(table(rest.rightOf(half + GAP)));
        int taken = Math.max(parts.top(), side.top()) - rest.top();
        return nearest(rest.below(taken + 1)).top() - all.top();
    }

    private Region parts(Region region) {
        List<Column> columns = List.of(Column.left(Words.say("estimate.from"), 0), Column.right("", 5));
        List<List<String>> rows = new ArrayList<>();
        MinuteWords.parts(why).forEach(part -> rows.add(List.of(Words.say(part.source()), MinuteWords.minutes(part))));
        Region rest = canvas.columns(region, columns, rows, Style.NORMAL);
        canvas.entry(rest, columns, List.of(Words.say("estimate.likely"), likely()), Style.STRONG);
        return rest.below(1);
    }

    private String likely() {
        return String.valueOf(why.explained().range().likely());
    }

    /** The visit's own grade and depth are marked, not only coloured. */
    private Region table(Region region) {
        if (why.explained().table().isEmpty()) {
            return region;
        }
        List<Column> columns = new ArrayList<>(List.of(Column.left(Words.say("estimate.table"), 0)));
        for (Depth depth : Depth.values()) {
            columns.add(
                    Column.right(Words.say(depth), Math.max(5, Words.say(depth).length())));
        }
        canvas.headings(region, columns);
        Region rest = region.below(1);
        for (Mud mud : Mud.values()) {
            row(rest, columns, why.explained().table().get(), mud);
            rest = rest.below(1);
        }
        return rest.below(1);
    }

    private void row(Region region, List<Column> columns, MudAndDepth table, Mud mud) {
        List<String> texts = new ArrayList<>(List.of(Words.say(mud)));
        for (Depth depth : Depth.values()) {
            String minutes = String.valueOf(table.likely(mud, depth));
            texts.add(isOwn(mud, depth) ? Words.say("estimate.own", minutes) : minutes);
        }
        canvas.entry(region, columns, texts, Style.NORMAL);
        List<Region> parts = Canvas.parts(region.row(0), columns);
        for (Depth depth : Depth.values()) {
            if (isOwn(mud, depth)) {
                canvas.restyle(parts.get(depth.ordinal() + 1), Style.STRONG);
            }
        }
    }

    private boolean isOwn(Mud mud, Depth depth) {
        return mud == why.visit().intake().mud()
                && depth == why.visit().intake().depth();
    }

    private Region works(Region region) {
        List<Column> columns = List.of(
                Column.left(Words.say("estimate.works"), 0),
                Column.right(Words.say("estimate.catalogue"), 6),
                Column.right(Words.say("estimate.likely"), 6),
                Column.right(Words.say("estimate.safe"), 6));
        List<List<String>> rows = new ArrayList<>();
        for (Explanation.PieceOfWork work : why.explained().works()) {
            rows.add(List.of(
                    MinuteWords.name(work),
                    String.valueOf(work.catalogue()),
                    String.valueOf(work.likely()),
                    String.valueOf(work.safe())));
        }
        return canvas.columns(region, columns, rows, Style.NORMAL);
    }

    private Region nearest(Region region) {
        if (why.nearest().isEmpty()) {
            return canvas.paragraph(region, Words.say("estimate.none_finished"), Style.QUIET);
        }
        List<Column> columns = List.of(
                Column.left(Words.say("estimate.nearest"), 0),
                Column.left("", TimeRoom.of(When.FULL_DATE)),
                Column.left("", 6),
                Column.left("", 9),
                Column.right(Words.say("estimate.catalogue"), 6),
                Column.right(Words.say("estimate.took"), 6));
        List<List<String>> rows = new ArrayList<>();
        rows.add(thisOne());
        for (WhySoLong.Like like : why.nearest()) {
            rows.add(List.of(
                    MinuteWords.machine(day, like),
                    MinuteWords.date(like.visit()),
                    Words.say(like.visit().under().mud()),
                    Words.say(like.visit().under().depth()),
                    whole(like.visit().catalogueMinutes()),
                    whole(like.visit().actualMinutes())));
        }
        return canvas.columns(region, columns, rows, Style.NORMAL);
    }

    private List<String> thisOne() {
        Intake intake = why.visit().intake();
        return List.of(
                Words.say("estimate.this_one"),
                "",
                Words.say(intake.mud()),
                Words.say(intake.depth()),
                String.valueOf(why.explained().catalogueAtPace()),
                likely());
    }

    private static String whole(double minutes) {
        return String.valueOf(Math.round(minutes));
    }
}
