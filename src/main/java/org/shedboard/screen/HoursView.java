package org.shedboard.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.shedboard.board.Board;
import org.shedboard.board.Screen;
import org.shedboard.day.Day;
import org.shedboard.day.DayTally;
import org.shedboard.day.Names;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Column;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.hours.DecimalHours;
import org.shedboard.hours.Tally;
import org.shedboard.words.Words;

/** The hours of the day, per person and per visit. */
final class HoursView {
    private static final int NUMBER = 13;
    private static final int NOTES = 4;

    private final Canvas canvas;
    private final Board board;
    private final Screen.Hours screen;
    private final Day day;
    private final Tally tally;

    HoursView(Canvas canvas, Board board, Screen.Hours screen) {
        this.canvas = canvas;
        this.board = board;
        this.screen = screen;
        this.day = board.expectDay();
        this.tally = board.seen().orElseThrow().tally();
    }

    void draw(Region page) {
        Header.draw(canvas, page.row(0), board, Words.say("tally.title", Header.date(day)));
        Region body = page.below(2).inside(1, 0);
        if (!day.isOpened()) {
            canvas.text(body, Words.say("tally.empty"), Style.STRONG);
            return;
        }
        Region rest = canvas.columns(body, peopleColumns(), people(), Style.NORMAL);
        canvas.entry(rest.row(0), peopleColumns(), together(), Style.STRONG);
        rest = rest.below(2);
        List<List<String>> visits = visits();
        List<List<String>> shown = visits.subList(Math.min(screen.scroll(), visits.size()), visits.size());
        Region table = rest.above(NOTES);
        canvas.columns(table, visitColumns(), shown, Style.NORMAL);
        notes(rest.bottom(NOTES));
    }

    private static List<Column> peopleColumns() {
        return List.of(
                Column.left(Words.say("tally.people"), 0),
                Column.right(Words.say("tally.attended"), NUMBER),
                Column.right(Words.say("tally.on_machines"), NUMBER),
                Column.right(Words.say("tally.other"), NUMBER),
                Column.right(Words.say("tally.unaccounted"), NUMBER));
    }

    private List<List<String>> people() {
        List<List<String>> rows = new ArrayList<>();
        for (Tally.PersonHours hours : tally.people()) {
            rows.add(List.of(
                    PlacesView.nameOf(day, hours.personId()),
                    hours(hours.attended()),
                    hours(hours.onMachines()),
                    hours(hours.otherMinutes()),
                    hours(hours.unaccounted())));
        }
        return rows;
    }

    private List<String> together() {
        int other = tally.people().stream()
                .mapToInt(Tally.PersonHours::otherMinutes)
                .sum();
        int unaccounted =
                tally.people().stream().mapToInt(Tally.PersonHours::unaccounted).sum();
        return List.of(
                Words.say("tally.all"),
                hours(tally.attended()),
                hours(tally.onMachines()),
                hours(other),
                hours(unaccounted));
    }

    private static List<Column> visitColumns() {
        return List.of(
                Column.left(Words.say("tally.visits"), 0),
                Column.right(Words.say("tally.estimated"), NUMBER),
                Column.right(Words.say("tally.worked"), NUMBER),
                Column.right(Words.say("tally.cleaning"), NUMBER),
                Column.left(Words.say("tally.who"), 0));
    }

    private List<List<String>> visits() {
        List<List<String>> rows = new ArrayList<>();
        for (Tally.VisitHours hours : tally.visits()) {
            day.findVisit(hours.visitId())
                    .ifPresent(visit -> rows.add(List.of(
                            Names.of(day, visit),
                            Words.say("tally.minutes", DayTally.estimatedOf(day, visit)),
                            Words.say("tally.minutes", hours.worked()),
                            Words.say("tally.minutes", hours.cleaning()),
                            hours.people().stream()
                                    .map(id -> PlacesView.nameOf(day, id))
                                    .collect(Collectors.joining(", ")))));
        }
        return rows;
    }

    private void notes(Region region) {
        if (day.isClosed()) {
            canvas.text(region.row(0), Words.say("tally.closed"), Style.STRONG);
        }
        DayTally.Promises promises =
                DayTally.promises(day, board.expectOutlook().at());
        canvas.text(region.row(1), Words.say("tally.promises", promises.due(), promises.kept()), Style.NORMAL);
        canvas.paragraph(region.below(2), Words.say("tally.note"), Style.QUIET);
    }

    private static String hours(int minutes) {
        return Words.say("tally.hours", DecimalHours.of(minutes));
    }
}
