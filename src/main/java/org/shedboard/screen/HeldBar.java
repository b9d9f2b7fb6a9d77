package org.shedboard.screen;

import java.util.Optional;
import org.shedboard.board.Hand;
import org.shedboard.day.Clocks;
import org.shedboard.day.Day;
import org.shedboard.day.Outlook;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Glyphs;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.pack.Plan;
import org.shedboard.shop.Task;
import org.shedboard.words.Words;

/** The one task in hand on a row of its own under the places, with its time beside it. */
final class HeldBar {
    private HeldBar() {}

    /** @param status columns left of the axis */
    static void draw(Canvas canvas, Region row, int status, Outlook outlook, Hand hand, TimeAxis axis) {
        Day day = outlook.day();
        Task task = day.expectVisit(hand.visitId()).findTask(hand.taskId()).orElseThrow();
        String who = hand.person()
                .map(day::nameOf)
                .map(name -> ", " + Words.say("pin.person", name))
                .orElse("");
        canvas.text(row.row(0).left(status - 1).inside(1, 0), task.name() + who, Style.SELECTED);
        Optional<Plan.TaskTime> time = outlook.timeOf(hand.visitId(), hand.taskId());
        int minutes = time.map(each -> each.end() - each.start()).orElse(1);
        int from = day.minuteOf(hand.start(day));
        Region bar = axis.between(row.row(0), from, from + Math.max(1, minutes));
        canvas.fill(bar, Glyphs.DARK, Style.SELECTED);
        Region behind = axis.columns(row.row(0))
                .rightOf(bar.rightEdge() - axis.columns().left());
        canvas.text(behind, " " + Clocks.sayTime(day, hand.start(day)), Style.STRONG);
    }
}
