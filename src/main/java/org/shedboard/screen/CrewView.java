package org.shedboard.screen;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.shedboard.board.Board;
import org.shedboard.board.Screen;
import org.shedboard.board.Sight;
import org.shedboard.day.CrewDay;
import org.shedboard.day.Day;
import org.shedboard.day.Outlook;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Glyphs;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.grid.TextWidth;
import org.shedboard.pack.Span;
import org.shedboard.shop.Person;
import org.shedboard.shop.Skill;
import org.shedboard.words.Words;

/** The crew: each person's day on the axis of the bay board, and who may do what. */
final class CrewView {
    private static final int NAME = 9;
    /** What somebody is doing takes so many columns, two fifths of the screen between these. */
    private static final int LEAST_STATUS = 38;

    private static final int MOST_STATUS = 56;
    private static final int SKILL = 12;
    /** Rows that say more of the chosen person. */
    private static final int CHOSEN = 2;

    private final Canvas canvas;
    private final Board board;
    private final Screen.Crew screen;
    private final Outlook outlook;
    private final Day day;
    private final List<CrewDay> crew;

    CrewView(Canvas canvas, Board board, Screen.Crew screen) {
        this.canvas = canvas;
        this.board = board;
        this.screen = screen;
        this.outlook = board.expectOutlook();
        this.day = outlook.day();
        this.crew = day.shop().people().stream()
                .map(person -> CrewDay.of(outlook, person))
                .toList();
    }

    void draw(Region page) {
        Header.draw(canvas, page.row(0), board, PlacesView.title(board), SightWords.of(board.sight()));
        Region body = page.below(1);
        int rows = Math.max(0, Math.min(crew.size(), body.height() - 1 - CHOSEN));
        people(body.top(1 + rows));
        Region below = body.below(1 + rows);
        chosen(below.top(CHOSEN));
        skills(below.below(CHOSEN + 1));
    }

    private int row() {
        return Math.min(screen.row(), crew.size() - 1);
    }

    private void people(Region region) {
        int status = Math.max(LEAST_STATUS, Math.min(MOST_STATUS, region.width() * 2 / 5));
        Sight.Extent extent = Sight.Extent.of(outlook);
        TimeAxis axis = TimeAxis.over(
                region.rightOf(status),
                board.sight().from(extent),
                board.sight().to(extent));
        TimeScale scale = TimeScale.of(axis, day, outlook.problem().now());
        canvas.text(region.row(0).left(status - 1).inside(1, 0), Words.say("crew.people"), Style.STRONG);
        scale.drawWithNow(canvas, region.row(0));
        Region rows = region.below(1);
        int first = Math.max(0, row() - rows.height() + 1);
        for (int i = 0; i < rows.height() && first + i < crew.size(); i++) {
            person(rows.row(i).left(status), crew.get(first + i), first + i == row());
            Press.row(canvas, rows.row(i), first + i, row());
            scale.drawMidnights(canvas, rows.row(i));
            new CrewBar(canvas, outlook, axis).draw(rows.row(i), crew.get(first + i));
        }
    }

    private void person(Region row, CrewDay one, boolean selected) {
        CrewStatus status = CrewStatus.of(one);
        canvas.text(row.inside(1, 0).left(NAME - 1), one.person().name(), Style.STRONG);
        Region room = row.leftOf(1).rightOf(1 + NAME);
        String text = status.parts().get(0);
        for (String part : status.parts().subList(1, status.parts().size())) {
            String longer = Words.say("crew.and", text, part);
            text = TextWidth.of(longer) <= room.width() ? longer : text;
        }
        canvas.text(room, text, status.style());
        if (selected) {
            canvas.restyle(row.leftOf(1), Style.SELECTED);
            canvas.fill(row.left(1), Glyphs.POINTER, Style.SELECTED);
        }
    }

    /** What there is to know of the chosen person: their hours, and what they may do. */
    private void chosen(Region lines) {
        if (crew.isEmpty()) {
            return;
        }
        CrewDay one = crew.get(row());
        String hours = one.shifts().stream()
                .filter(this::isToday)
                .map(span -> hours(one, span))
                .collect(Collectors.joining(" "));
        String free = Words.say("crew.free_minutes", one.freeMinutes());
        String text = Words.say(
                "crew.chosen",
                one.person().name(),
                one.person().role(),
                hours.isEmpty() ? Words.say("crew.no_shift") : hours,
                free);
        canvas.text(lines.row(0).inside(1, 0), text, Style.NORMAL);
        String may = Words.say("crew.chosen_may", skillsOf(one.person()));
        canvas.text(lines.row(1).inside(1, 0), may, Style.NORMAL);
    }

    private boolean isToday(Span span) {
        return LocalDate.ofInstant(day.instantOf(span.from()), day.zone()).equals(day.date());
    }

    private static String hours(CrewDay one, Span span) {
        return Words.say("crew.hours", CrewStatus.time(one, span.from()), CrewStatus.time(one, span.to()));
    }

    private static String skillsOf(Person person) {
        return Stream.of(Skill.values()).filter(person::may).map(Words::say).collect(Collectors.joining(", "));
    }

    /** Who may do what, skill by skill; whoever is not here is in brackets. */
    private void skills(Region region) {
        Skill[] skills = Skill.values();
        if (region.height() <= skills.length) {
            return;
        }
        canvas.text(region.row(0).inside(1, 0), Words.say("crew.may_do"), Style.STRONG);
        for (int i = 0; i < skills.length; i++) {
            Region row = region.row(1 + i).inside(1, 0);
            canvas.text(row.left(SKILL), Words.say(skills[i]), Style.QUIET);
            canvas.text(row.rightOf(SKILL), whoMay(skills[i]), Style.NORMAL);
        }
        canvas.text(region.row(2 + skills.length).inside(1, 0), CrewBar.legend(), Style.QUIET);
    }

    private String whoMay(Skill skill) {
        String names = day.shop().people().stream()
                .filter(person -> person.may(skill))
                .map(person -> day.isHere(person) ? person.name() : Words.say("crew.in_brackets", person.name()))
                .collect(Collectors.joining(", "));
        return names.isEmpty() ? Words.say("crew.nobody") : names;
    }
}
