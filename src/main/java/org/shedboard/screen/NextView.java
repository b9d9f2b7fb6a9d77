package org.shedboard.screen;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.shedboard.board.Board;
import org.shedboard.board.Errands;
import org.shedboard.board.NextPoint;
import org.shedboard.board.PartWords;
import org.shedboard.board.Screen;
import org.shedboard.day.Clocks;
import org.shedboard.day.Day;
import org.shedboard.day.Figures;
import org.shedboard.day.LastTime;
import org.shedboard.day.Names;
import org.shedboard.day.Need;
import org.shedboard.day.Needs;
import org.shedboard.day.NextTask;
import org.shedboard.day.Outlook;
import org.shedboard.day.PointsDue;
import org.shedboard.day.Riding;
import org.shedboard.day.WashDowns;
import org.shedboard.day.Wear;
import org.shedboard.estimate.Point;
import org.shedboard.grid.BigLetters;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.hours.Activity;
import org.shedboard.hours.Errand;
import org.shedboard.register.Carried;
import org.shedboard.report.FindingWords;
import org.shedboard.report.WearWords;
import org.shedboard.shop.Person;
import org.shedboard.shop.Place;
import org.shedboard.shop.WorkKind;
import org.shedboard.words.Words;

/** One person's next machine, to be read from two metres: which, where, what first, by when. */
final class NextView {
    /** Blank columns beside what is written large. */
    private static final int BESIDE = 3;
    /** What machine it is needs so many columns beside its tag; else it stands below. */
    private static final int ABOUT = 20;

    /** From this height on a blank row parts the title from the rest. */
    private static final int ROOMY = 16;
    /** From these heights on there is room for what is written large, without and with a point to inspect below it. */
    private static final int LARGE = 11;

    private static final int LARGE_WITH_POINT = 17;

    /** Whoever has nothing to do for so long asks for something. */
    private static final int IDLE_MINUTES = 10;

    private final Canvas canvas;
    private final Board board;
    private final Screen.Next screen;
    private final Outlook outlook;
    private final Day day;
    private final Person person;

    NextView(Canvas canvas, Board board, Screen.Next screen) {
        this.canvas = canvas;
        this.board = board;
        this.screen = screen;
        this.outlook = board.expectOutlook();
        this.day = outlook.day();
        this.person = day.shop().expectPerson(screen.personId());
    }

    void draw(Region page) {
        Header.draw(canvas, page.row(0), board, title());
        drawBelow(page.below(page.height() >= ROOMY ? 2 : 1));
    }

    /** Whose it is, and whether they are on it. */
    String title() {
        Optional<NextTask> next = NextTask.of(outlook, person);
        boolean running = next.filter(NextTask::isRunning).isPresent();
        return next.isEmpty() ? person.name() : Words.say(running ? "next.on_it" : "next.your_next", person.name());
    }

    /** All but the title. */
    void drawBelow(Region page) {
        Optional<NextTask> next = NextTask.of(outlook, person);
        Region body = page.inside(2, 0);
        Optional<Activity.OtherWork> other = otherWork();
        if (other.isPresent()) {
            canvas.text(
                    body.row(0),
                    Words.say(
                            "next.other",
                            person.name(),
                            Words.say("otherWork." + other.get().kind())),
                    Style.STRONG);
            body = body.below(2);
        }
        for (Errand errand : day.errandsOf(person.id())) {
            body = line(body, Words.say("next.errand", Errands.say(day, errand)), Style.HELD);
        }
        if (next.isEmpty()) {
            canvas.paragraph(body, Words.say("next.nothing", person.name()), Style.STRONG);
        } else {
            task(body, next.get());
        }
    }

    private Optional<Activity.OtherWork> otherWork() {
        return day.openEntryOf(person.id())
                .map(entry -> entry.activity())
                .filter(Activity.OtherWork.class::isInstance)
                .map(Activity.OtherWork.class::cast);
    }

    private void task(Region body, NextTask next) {
        String tag = PlaceStatus.tagOf(next.visit());
        String name =
                next.visit().tag().isPresent() ? tag : day.ownerOf(next.visit()).name();
        boolean isLarge = body.height() >= (isWithPoint(next) ? LARGE_WITH_POINT : LARGE);
        int rows = isLarge ? BigLetters.ROWS : 1;
        Region rest = canvas.big(body.top(rows), name, Style.STRONG).rightOf(BESIDE);
        if (next.placeId().isPresent()) {
            rest = canvas.big(rest, next.placeId().get(), Style.NORMAL).rightOf(BESIDE);
        }
        Region below = body.below(isLarge ? rows + 1 : rows);
        if (rest.width() >= ABOUT && rest.height() > 1) {
            about(rest, next);
        } else {
            below = about(below, next);
        }
        below = what(below, next);
        below = parts(below, next);
        int gap = isLarge ? 1 : 0;
        if (isWithPoint(next)) {
            below = point(below.below(gap), next);
        }
        after(below.below(gap));
    }

    private boolean isWithPoint(NextTask next) {
        return next.isRunning() && !PointsDue.of(day, next.visit(), next.task()).isEmpty();
    }

    private Region about(Region region, NextTask next) {
        Region rest = canvas.paragraph(region, day.ownerOf(next.visit()).name(), Style.NORMAL);
        rest = canvas.paragraph(rest, day.machineOf(next.visit()).label(), Style.NORMAL);
        if (Riding.isStopped(day, next.visit())) {
            rest = line(rest, Words.say("board.do_not_ride"), Style.DANGER);
        }
        String where = next.placeId()
                .map(id -> day.shop().expectPlace(id))
                .map(Place::name)
                .orElse(Words.say("next.anywhere"));
        return line(rest, Words.say("next.where", where), Style.STRONG);
    }

    private Region what(Region region, NextTask next) {
        String what = Words.say(
                next.isRunning() ? "next.now" : "next.first", next.task().name());
        String when = next.isRunning()
                ? left(next) + "  " + Words.say("next.by", Clocks.sayTime(day, next.until()))
                : Words.say("next.from", Clocks.sayTime(day, next.from())) + "  "
                        + Words.say("next.by", Clocks.sayTime(day, next.until())) + "  "
                        + Words.say(
                                "next.minutes",
                                Duration.between(next.from(), next.until()).toMinutes());
        Region rest = line(region, what, Style.STRONG);
        rest = line(rest, when, Style.NORMAL);
        if (!next.isRunning() && Duration.between(outlook.at(), next.from()).toMinutes() >= IDLE_MINUTES) {
            rest = line(rest, Words.say("next.not_before", Clocks.sayTime(day, next.from())), Style.LATE);
        }
        if (WashDowns.isAwaited(next.visit())) {
            rest = canvas.paragraph(rest, Words.say("next.wash_down"), Style.DANGER);
        }
        return next.task().caution().isEmpty()
                ? rest
                : canvas.paragraph(rest, Words.say("next.caution", next.task().caution()), Style.CAUTION);
    }

    /** What to look for on this machine, and what to renew rather than clean. */
    private Region parts(Region region, NextTask next) {
        Region rest = region;
        for (Need need : Needs.of(day, next.visit(), next.task())) {
            if (need.isOpen()) {
                rest = canvas.paragraph(rest, PartWords.toCheck(day, need), Style.HELD);
            } else if (need.line().isEmpty()) {
                rest = canvas.paragraph(
                        rest, Words.say("part.renew_with", need.part().name()), Style.HELD);
            }
        }
        return rest;
    }

    /** Minutes until the plan has it over, which knows who works on it; over, once the minutes are used up. */
    private String left(NextTask next) {
        int over = outlook.minutesOver(next.task());
        long left = Math.max(0, Duration.between(outlook.at(), next.until()).toMinutes());
        return over > 0 ? Words.say("next.over", over) : Words.say("next.left", left);
    }

    private Region point(Region region, NextTask next) {
        Optional<NextPoint> now = NextPoint.of(board, screen);
        if (now.isEmpty()) {
            int count = PointsDue.of(day, next.visit(), next.task()).size();
            return next.task().kind() == WorkKind.SIGN_OFF
                    ? canvas.paragraph(region, Words.say("next.fixes_stand", count), Style.DANGER)
                    : line(region, Words.say("next.points_done", count), Style.GOOD);
        }
        Point point = now.get().point();
        canvas.look(region);
        Region rest = canvas.paragraph(
                region, Words.say("next.point", now.get().number(), now.get().count(), point.name()), Style.SELECTED);
        rest = line(rest, Words.say("next.point_where", point.where()), Style.NORMAL);
        if (point.measure().isPresent()) {
            var measure = point.measure().get();
            rest = line(
                    rest,
                    Words.say("next.measure", measure.unit(), Figures.say(measure.low()), Figures.say(measure.high())),
                    Style.NORMAL);
        }
        Optional<Carried> carried = LastTime.at(day, next.visit(), point.id());
        if (carried.isPresent()) {
            rest = canvas.paragraph(rest, FindingWords.lastTime(day, point, carried.get()), Style.STRONG);
        }
        Optional<String> wear = WearWords.of(Wear.of(day, next.visit(), point));
        if (wear.isPresent()) {
            rest = canvas.paragraph(rest, wear.get(), Style.QUIET);
        }
        if (point.renewedWith().isPresent()) {
            rest = line(rest, Words.say("part.renew_if_dirty"), Style.NORMAL);
        }
        var before = next.visit().findingAt(point.id());
        if (before.isPresent()) {
            rest = line(
                    rest, Words.say("next.point_again", Words.say(before.get().mark())), Style.NORMAL);
        }
        return point.caution().isEmpty()
                ? rest
                : canvas.paragraph(rest, Words.say("next.caution", point.caution()), Style.CAUTION);
    }

    private void after(Region region) {
        List<NextTask> all = NextTask.all(outlook, person);
        String then = all.size() > 1 ? then(all.get(0), all.get(1)) : Words.say("next.none_after");
        canvas.paragraph(region, Words.say("next.after", then), Style.QUIET);
    }

    /** The task that follows, with its machine where that is another one. */
    private String then(NextTask now, NextTask then) {
        return now.visit().id().equals(then.visit().id())
                ? then.task().name()
                : Words.say(
                        "next.other_machine",
                        Names.of(day, then.visit()),
                        then.task().name());
    }

    private Region line(Region region, String text, Style style) {
        canvas.text(region.row(0), text, style);
        return region.below(1);
    }
}
