package org.shedboard.screen;

import java.util.List;
import org.shedboard.day.Clocks;
import org.shedboard.day.Outlook;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Glyphs;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.pack.Plan;
import org.shedboard.shop.Hold;
import org.shedboard.shop.Visit;
import org.shedboard.words.Words;

/**
 * One planned stay on the time axis: dark where somebody has hands on it, light where it drains, soaks or waits, low where the
 * work is done.
 */
final class StayBar {
    /** What finished work looks like. */
    static final char FINISHED = Glyphs.LOWER_HALF;

    private final Outlook outlook;
    private final TimeAxis axis;
    private final Plan.StayPlace stay;
    private final Visit visit;
    private final List<Plan.TaskTime> tasks;

    private final boolean isHeld;

    /** @param isHeld whether one of its tasks is in the foreman's hand */
    StayBar(Outlook outlook, TimeAxis axis, Plan.StayPlace stay, boolean isHeld) {
        this.isHeld = isHeld;
        this.outlook = outlook;
        this.axis = axis;
        this.stay = stay;
        this.visit = outlook.day().expectVisit(stay.job());
        this.tasks = outlook.plan().tasks().stream()
                .filter(time -> time.job().equals(stay.job()) && time.stay() == stay.stay())
                .toList();
    }

    Region columns(Region row) {
        return axis.between(row, stay.from(), stay.to());
    }

    void draw(Canvas canvas, Region row) {
        Region bar = columns(row);
        for (int i = 0; i < bar.width(); i++) {
            int minute = axis.minuteAt(bar.left() + i - axis.columns().left());
            canvas.fill(new Region(bar.left() + i, bar.top(), 1, 1), glyph(minute), style(minute));
        }
    }

    /** Which machine it is, and what is the matter with it; a number is whole or not there. */
    BarLabels.Bar label(Region columns) {
        String name = marked(PlaceStatus.shortNameOf(outlook.day(), visit));
        boolean isName = visit.tag().isEmpty();
        if (visit.hold().isPresent()) {
            return BarLabels.Bar.of(columns, held(name, visit.hold().get()), isName, Style.STRONG);
        }
        int late = minutesLate();
        if (late > 0) {
            List<String> wordings = List.of(Words.say("bar.late_short", name), name);
            BarLabels.Bar bar = BarLabels.Bar.of(columns, wordings, isName, Style.LATE);
            return isLast() ? bar.followedBy(Words.say("bar.late_by", late)) : bar;
        }
        List<String> wordings = isDone() ? List.of(Words.say("bar.done", name), name) : List.of(name);
        return BarLabels.Bar.of(columns, wordings, isName, Style.STRONG);
    }

    /** A task of it that is pinned is seen on the bar, and so is one in hand. */
    private String marked(String name) {
        boolean isPinned = visit.stays().get(stay.stay()).tasks().stream()
                .anyMatch(task -> !task.hasBegun() && task.pin().isPresent());
        String pinned = isPinned ? Words.say("bar.pinned", name) : name;
        return isHeld ? Words.say("bar.in_hand", pinned) : pinned;
    }

    private List<String> held(String name, Hold hold) {
        String why = Words.say("board.held", name, Words.say(hold.reason()));
        String until = Words.say("board.held_until", Clocks.sayTime(outlook.day(), hold.until()));
        return List.of(Words.say("bar.held", why, until), why, name);
    }

    /** Who works on it from now on. */
    List<String> people() {
        return tasks.stream()
                .filter(time -> !outlook.taskOf(time).isDone())
                .flatMap(time -> time.people().stream())
                .distinct()
                .map(id -> PlacesView.nameOf(outlook.day(), id))
                .toList();
    }

    private char glyph(int minute) {
        if (isHandsOn(minute)) {
            return isToDo(minute) ? Glyphs.DARK : FINISHED;
        }
        return visit.hold().isPresent() ? Glyphs.HORIZONTAL : Glyphs.LIGHT;
    }

    private Style style(int minute) {
        if (isHandsOn(minute)) {
            boolean ahead = isToDo(minute)
                    && minute + axis.minutesPerColumn() > outlook.problem().now();
            return ahead ? Style.HANDS_ON : Style.QUIET;
        }
        if (visit.hold().isPresent()) {
            return Style.HELD;
        }
        return minute + axis.minutesPerColumn() > outlook.problem().now() ? Style.UNATTENDED : Style.QUIET;
    }

    private boolean isHandsOn(int minute) {
        return tasks.stream().anyMatch(time -> touches(time, minute));
    }

    private boolean isToDo(int minute) {
        return tasks.stream()
                .anyMatch(time -> touches(time, minute) && !outlook.taskOf(time).isDone());
    }

    private boolean touches(Plan.TaskTime time, int minute) {
        return outlook.handsFrom(time) < minute + axis.minutesPerColumn() && time.end() > minute;
    }

    private boolean isDone() {
        return visit.stays().get(stay.stay()).isDone();
    }

    /** Whether it stands in no other place after this one; a last drive takes none. */
    private boolean isLast() {
        return outlook.plan().stays().stream()
                .noneMatch(other -> other.job().equals(stay.job()) && other.stay() > stay.stay());
    }

    /** By how much the plan has the machine ready after its promise. */
    private int minutesLate() {
        return visit.promise()
                .flatMap(promise -> outlook.readyAt(visit.id())
                        .map(ready ->
                                outlook.day().minuteOf(ready) - outlook.day().minuteOf(promise.at())))
                .orElse(0);
    }
}
