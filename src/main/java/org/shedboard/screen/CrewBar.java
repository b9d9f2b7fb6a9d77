package org.shedboard.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shedboard.day.CrewDay;
import org.shedboard.day.Day;
import org.shedboard.day.Outlook;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Glyphs;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.hours.Errand;
import org.shedboard.pack.Plan;
import org.shedboard.shop.Visit;
import org.shedboard.words.Words;

/** One person's time on the axis of the bay board: work on machines with their tags, other work, and when they are off. */
final class CrewBar {
    /** Work that the plan has somebody do when they are asked to stay. */
    private static final char BEYOND = Glyphs.MEDIUM;
    /** Hours in which they may be asked to stay. */
    private static final char MAY_BE_ASKED = ':';

    private final Canvas canvas;
    private final Outlook outlook;
    private final TimeAxis axis;

    CrewBar(Canvas canvas, Outlook outlook, TimeAxis axis) {
        this.canvas = canvas;
        this.outlook = outlook;
        this.axis = axis;
    }

    void draw(Region row, CrewDay crew) {
        for (int column = 0; column < axis.columns().width(); column++) {
            cell(row, crew, axis.minuteAt(column));
        }
        errands(row, crew);
        int now = outlook.problem().now();
        canvas.fill(axis.columnAt(row, now), Glyphs.VERTICAL, Style.NOW);
        new BarLabels(canvas, axis.columns(row), axis.columnAt(row, now)).draw(labels(row, crew));
    }

    private void cell(Region row, CrewDay crew, int minute) {
        Region cell = axis.columnAt(row, minute);
        Optional<Plan.TaskTime> task = crew.tasks().stream()
                .filter(time -> outlook.handsFrom(time) < minute + axis.minutesPerColumn() && time.end() > minute)
                .reduce((first, later) -> later);
        int middle = minute + axis.minutesPerColumn() / 2;
        boolean beyond = !crew.isOnShift(middle) && crew.mayBeAsked(middle);
        boolean off = !crew.isOnShift(middle) && !beyond;
        if (task.isPresent() && (!off || isShort(task.get()))) {
            work(cell, task.get(), beyond, minute);
        } else if (off || beyond) {
            canvas.fill(cell, beyond ? MAY_BE_ASKED : Glyphs.DOT, Style.BREAK);
        }
    }

    /** Whether it may lie within one column, of which another part is off. */
    private boolean isShort(Plan.TaskTime time) {
        return time.end() - outlook.handsFrom(time) <= axis.minutesPerColumn();
    }

    private void work(Region cell, Plan.TaskTime time, boolean beyond, int minute) {
        if (outlook.taskOf(time).isDone()) {
            canvas.fill(cell, StayBar.FINISHED, Style.QUIET);
        } else if (beyond) {
            canvas.fill(cell, BEYOND, Style.LATE);
        } else {
            boolean over = minute + axis.minutesPerColumn() <= outlook.problem().now();
            canvas.fill(cell, Glyphs.DARK, over ? Style.QUIET : Style.HANDS_ON);
        }
    }

    /** Other work that is planned, told by the letter its word begins with. */
    private void errands(Region row, CrewDay crew) {
        Day day = outlook.day();
        for (Errand errand : day.errandsOf(crew.person().id())) {
            int from = day.minuteOf(errand.from());
            int to = day.minuteOf(errand.until());
            if (to > axis.from() && from < axis.to()) {
                canvas.fill(
                        axis.between(row, from, to),
                        Words.say("otherWork." + errand.kind()).charAt(0),
                        Style.NORMAL);
            }
        }
    }

    /** One for each run of work on the same machine. */
    private List<BarLabels.Bar> labels(Region row, CrewDay crew) {
        List<BarLabels.Bar> labels = new ArrayList<>();
        List<Plan.TaskTime> tasks = crew.tasks();
        int first = 0;
        for (int i = 0; i < tasks.size(); i++) {
            boolean goesOn = i + 1 < tasks.size() && isOneRun(tasks.get(i), tasks.get(i + 1));
            if (!goesOn) {
                int from = outlook.handsFrom(tasks.get(first));
                int to = tasks.get(i).end();
                if (to > axis.from() && from < axis.to()) {
                    labels.add(label(axis.between(row, from, to), tasks.subList(first, i + 1)));
                }
                first = i + 1;
            }
        }
        return labels;
    }

    private boolean isOneRun(Plan.TaskTime one, Plan.TaskTime next) {
        return one.job().equals(next.job()) && outlook.handsFrom(next) <= one.end() + axis.minutesPerColumn();
    }

    private BarLabels.Bar label(Region columns, List<Plan.TaskTime> run) {
        Visit visit = outlook.day().expectVisit(run.get(0).job());
        String name = PlaceStatus.shortNameOf(outlook.day(), visit);
        boolean done = run.stream().allMatch(time -> outlook.taskOf(time).isDone());
        return BarLabels.Bar.of(
                columns,
                done ? List.of(Words.say("bar.done", name), name) : List.of(name),
                visit.tag().isEmpty(),
                Style.STRONG);
    }

    static String legend() {
        return Words.say("crew.legend", Glyphs.DARK, BEYOND, StayBar.FINISHED, Glyphs.DOT, MAY_BE_ASKED);
    }
}
