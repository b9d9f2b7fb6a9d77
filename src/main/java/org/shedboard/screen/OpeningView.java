package org.shedboard.screen;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.shedboard.board.Board;
import org.shedboard.board.Key;
import org.shedboard.board.OpenForm;
import org.shedboard.day.Clocks;
import org.shedboard.day.Day;
import org.shedboard.day.Names;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Glyphs;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.shop.Place;
import org.shedboard.shop.Step;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;
import org.shedboard.words.Words;

/** Opening the day: who is here, each hoist, what stood here overnight and how, who is expected. */
final class OpeningView {
    private static final int NAME = 26;

    private final Canvas canvas;
    private final Board board;
    private final OpenForm form;
    private final Day day;

    OpeningView(Canvas canvas, Board board, OpenForm form) {
        this.canvas = canvas;
        this.board = board;
        this.form = form;
        this.day = board.expectDay();
    }

    void draw(Region page) {
        Header.draw(canvas, page.row(0), board, Words.say("open.title", Header.date(day)));
        Region rest = page.below(2).inside(1, 0);
        rest = leftOpen(rest);
        rest = heading(rest, "open.people");
        int row = 0;
        for (OpenForm.Who who : form.people()) {
            row(rest.row(0), row, day.shop().expectPerson(who.personId()).name(), said(who));
            rest = rest.below(1);
            row++;
        }
        rest = heading(rest.below(1), "open.hoists");
        for (OpenForm.Hoist hoist : form.hoists()) {
            Place place = day.shop().expectPlace(hoist.placeId());
            row(
                    rest.row(0),
                    row,
                    place.id() + " " + place.name() + ", " + Words.say("board.rated", place.ratedKg()),
                    said(hoist));
            rest = rest.below(1);
            row++;
        }
        rest = heading(rest.below(1), "open.overnight");
        rest = list(
                rest,
                day.visits().stream()
                        .filter(OpeningView::stoodHere)
                        .map(this::stands)
                        .toList());
        rest = heading(rest.below(1), "open.expected");
        list(
                rest,
                day.visits().stream()
                        .filter(visit -> visit.state() == VisitState.BOOKED)
                        .sorted(Comparator.comparing(visit -> visit.intake().arrives()))
                        .map(visit -> Words.say(
                                "open.comes",
                                Names.of(day, visit),
                                Clocks.sayTime(day, visit.intake().arrives())))
                        .toList());
    }

    /** What was left open on an earlier day is said before anything is asked. */
    private Region leftOpen(Region region) {
        List<String> lines = new ArrayList<>();
        day.unsettled()
                .forEach(entry -> lines.add(Words.say(
                        "concern.UNSETTLED", day.nameOf(entry.personId()), Clocks.sayTime(day, entry.from()))));
        day.unclosed().ifPresent(date -> lines.add(Words.say("concern.DAY_NOT_CLOSED", date)));
        Region rest = region;
        for (String line : lines) {
            rest = canvas.paragraph(rest, line, Style.LATE);
        }
        return lines.isEmpty() ? rest : rest.below(1);
    }

    private static boolean stoodHere(Visit visit) {
        return visit.state().isHere();
    }

    private Region heading(Region region, String name) {
        canvas.text(region.row(0), Words.say(name), Style.STRONG);
        return region.below(1);
    }

    private void row(Region at, int row, String name, String said) {
        Style style = row == form.row() ? Style.SELECTED : Style.NORMAL;
        canvas.fill(at, style);
        Press.row(canvas, at, row, form.row(), Key.of(' '));
        if (row == form.row()) {
            canvas.fill(at.left(1), Glyphs.POINTER, style);
        }
        canvas.text(at.left(NAME).inside(1, 0), name, style);
        canvas.text(at.rightOf(NAME), said, style);
    }

    private String said(OpenForm.Who who) {
        return who.here()
                ? Words.say("open.here", Clocks.sayTime(day, who.from()), Clocks.sayTime(day, who.until()))
                : Words.say("open.away");
    }

    private String said(OpenForm.Hoist hoist) {
        if (hoist.lockedOut().isPresent()) {
            return Words.say("open.locked", hoist.lockedOut().get());
        }
        return hoist.checkedBy()
                .map(id -> Words.say("open.checked", day.shop().expectPerson(id).name()))
                .orElse(Words.say("open.unchecked"));
    }

    /** How it stands: in which place, raised or not, with what done last. */
    private String stands(Visit visit) {
        if (visit.standsIn().isEmpty()) {
            return Words.say("open.in_yard", Names.of(day, visit));
        }
        String last = visit.stays().get(visit.currentStay()).tasks().stream()
                .filter(Task::isDone)
                .map(Task::name)
                .reduce((one, other) -> other)
                .orElse(Words.say(visit.state()));
        boolean raised = visit.stays().get(visit.currentStay()).step() == Step.UNDERSIDE
                && visit.findTask("raise").filter(Task::isDone).isPresent();
        String how = raised ? Words.say("open.raised") + ", " + last : last;
        return Words.say("open.stands", Names.of(day, visit), visit.standsIn().get(), how);
    }

    private Region list(Region region, List<String> lines) {
        Region rest = region;
        for (String line : lines.isEmpty() ? List.of(Words.say("open.none")) : lines) {
            canvas.text(rest.row(0).inside(1, 0), line, Style.NORMAL);
            rest = rest.below(1);
        }
        return rest;
    }
}
