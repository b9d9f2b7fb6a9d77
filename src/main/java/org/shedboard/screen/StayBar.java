package org.shedboard.screen;

import java.util.List;
import java.util.stream.Collectors;
import org.shedboard.day.Outlook;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Glyphs;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.grid.TextWidth;
import org.shedboard.pack.Plan;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;

/** One planned stay on the time axis: dark where somebody has hands on it, light where it drains, soaks or waits. */
final class StayBar {
    private final Canvas canvas;
    private final Outlook outlook;
    private final TimeAxis axis;
    private final Plan.StayPlace stay;
    private final Visit visit;
    private final List<Plan.TaskTime> tasks;

    StayBar(Canvas canvas, Outlook outlook, TimeAxis axis, Plan.StayPlace stay) {
        this.canvas = canvas;
        this.outlook = outlook;
        this.axis = axis;
        this.stay = stay;
        this.visit = outlook.day().expectVisit(stay.job());
        this.tasks = outlook.plan().tasks().stream()
                .filter(time -> time.job().equals(stay.job()) && time.stay() == stay.stay())
                .toList();
    }

    void draw(Region rows) {
        Region bar = axis.between(rows.row(0), stay.from(), stay.to());
        Region now = axis.columnAt(bar, outlook.problem().now());
        for (int i = 0; i < bar.width(); i++) {
            int minute = axis.minuteAt(bar.left() + i - axis.columns().left());
            Region cell = new Region(bar.left() + i, bar.top(), 1, 1);
            if (!cell.equals(now)) {
                canvas.fill(cell, glyph(minute), style(minute));
            }
        }
        label(bar, now);
        if (rows.height() > 1) {
            people(axis.between(rows.row(1), stay.from(), stay.to()));
        }
    }

    /** Which machine it is, beside the mark of the present minute and never over it; a number is whole or not there. */
    private void label(Region bar, Region now) {
        String label = name() + (isLate() ? "!" : "");
        boolean hidesNow = !now.intersect(bar.left(TextWidth.of(label))).isEmpty();
        Region room = hidesNow ? bar.rightOf(now.left() + 1 - bar.left()) : bar;
        if (TextWidth.of(label) < room.width() || visit.tag().isPresent() && TextWidth.of(label) == room.width()) {
            canvas.text(room, label, isLate() ? Style.LATE : Style.STRONG);
        } else if (visit.tag().isEmpty() && room.width() > 1) {
            canvas.text(room.leftOf(1), label, Style.STRONG);
        }
    }

    private String name() {
        return PlaceStatus.shortNameOf(outlook.day(), visit);
    }

    /** Who works on it from now on, under the bar. */
    private void people(Region under) {
        String names = tasks.stream()
                .filter(time -> !outlook.taskOf(time).isDone())
                .flatMap(time -> time.people().stream())
                .distinct()
                .map(id -> PlacesView.nameOf(outlook.day(), id))
                .collect(Collectors.joining(" "));
        canvas.text(under.leftOf(1), names, Style.QUIET);
    }

    private char glyph(int minute) {
        if (visit.state() == VisitState.HELD) {
            return Glyphs.HORIZONTAL;
        }
        return isHandsOn(minute) ? Glyphs.DARK : Glyphs.LIGHT;
    }

    private Style style(int minute) {
        if (visit.state() == VisitState.HELD) {
            return Style.HELD;
        }
        if (minute + axis.minutesPerColumn() <= outlook.problem().now()) {
            return Style.QUIET;
        }
        return isHandsOn(minute) ? Style.HANDS_ON : Style.UNATTENDED;
    }

    private boolean isHandsOn(int minute) {
        int end = minute + axis.minutesPerColumn();
        return tasks.stream().anyMatch(time -> time.start() < end && time.end() > minute);
    }

    /** Whether the plan has the machine ready after its promise. */
    private boolean isLate() {
        return visit.promise()
                .flatMap(promise -> outlook.readyAt(visit.id()).map(ready -> ready.isAfter(promise.at())))
                .orElse(false);
    }
}
