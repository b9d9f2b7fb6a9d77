package org.shedboard.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shedboard.board.Hand;
import org.shedboard.day.Outlook;
import org.shedboard.day.StoodStay;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Glyphs;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.pack.Plan;
import org.shedboard.words.Words;

/** What stood, stands and is to stand in one place, on the time axis. */
final class PlaceBars {
    private final Canvas canvas;
    private final Outlook outlook;
    private final TimeAxis axis;
    private final VisitPointing pointing;
    private final Optional<Hand> hand;

    /** @param hand the task that is held, whose stay is marked */
    PlaceBars(Canvas canvas, Outlook outlook, TimeAxis axis, VisitPointing pointing, Optional<Hand> hand) {
        this.canvas = canvas;
        this.outlook = outlook;
        this.axis = axis;
        this.pointing = pointing;
        this.hand = hand;
    }

    /** @param rows one, or two where there is room for who works on it */
    void draw(Region rows, String placeId) {
        Region row = rows.row(0);
        List<BarLabels.Bar> labels = new ArrayList<>();
        List<BarPeople.Under> people = new ArrayList<>();
        for (StoodStay stay : StoodStay.in(outlook, placeId)) {
            if (stay.to() > axis.from() && stay.from() < axis.to()) {
                labels.add(stood(row, stay));
                pointing.visit(
                        axis.between(rows, stay.from(), stay.to()), stay.visit().id());
            }
        }
        for (Plan.StayPlace stay : outlook.staysIn(placeId)) {
            if (stay.to() > axis.from() && stay.from() < axis.to()) {
                StayBar bar = new StayBar(outlook, axis, stay, isHeld(stay));
                bar.draw(canvas, row);
                pointing.visit(bar.columns(rows), stay.job());
                people.add(new BarPeople.Under(bar.columns(row), bar.people()));
                labels.add(bar.label(bar.columns(row)));
            }
        }
        int now = outlook.problem().now();
        canvas.fill(axis.columnAt(row, now), Glyphs.VERTICAL, Style.NOW);
        new BarLabels(canvas, axis.columns(row), axis.columnAt(row, now)).draw(labels);
        if (rows.height() > 1) {
            Region under = rows.row(1);
            new BarPeople(canvas, axis.columns(under), axis.columnAt(under, now)).draw(people);
        }
    }

    private boolean isHeld(Plan.StayPlace stay) {
        return hand.filter(
                        held -> held.visitId().equals(stay.job()) && held.lay().stay() == stay.stay())
                .isPresent();
    }

    private BarLabels.Bar stood(Region row, StoodStay stay) {
        Region columns = axis.between(row, stay.from(), stay.to());
        canvas.fill(columns, StayBar.FINISHED, Style.QUIET);
        String name = PlaceStatus.shortNameOf(outlook.day(), stay.visit());
        List<String> wordings = List.of(Words.say("bar.done", name), name);
        return BarLabels.Bar.of(columns, wordings, stay.visit().tag().isEmpty(), Style.QUIET);
    }
}
