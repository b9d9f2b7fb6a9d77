package org.shedboard.screen;

import java.util.ArrayList;
import java.util.List;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Column;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.hours.PersonDay;
import org.shedboard.hours.Stretch;
import org.shedboard.hours.Tally.PersonHours;
import org.shedboard.tally.SpanTally;
import org.shedboard.tally.TallyWords;
import org.shedboard.words.Words;

/** The hours of a day, person by person: as figures, and as a bar on the day's own axis. */
final class PeopleHours {
    private static final int NAME = 12;

    private final Canvas canvas;
    private final SpanTally tally;
    private final int scroll;

    /** @param scroll rows that the lines below the bars are moved up */
    PeopleHours(Canvas canvas, SpanTally tally, int scroll) {
        this.canvas = canvas;
        this.tally = tally;
        this.scroll = scroll;
    }

    /** The table alone; gives the rows left below it. */
    Region table(Region body) {
        List<PersonHours> people = tally.hours().people();
        List<List<String>> rows = people.stream().map(this::row).toList();
        Region rest = canvas.columns(body, columns(), rows, Style.NORMAL);
        canvas.entry(rest.row(0), columns(), together(people), Style.STRONG);
        return rest.below(1);
    }

    void draw(Region body) {
        Region rest = bars(table(body).below(1));
        // what does not fit is reached by moving these lines up
        Region unmoved = rest;
        Region below = new Region(unmoved.left(), unmoved.top() - scroll, unmoved.width(), unmoved.height() + scroll);
        Canvas lines = canvas.within(unmoved);
        below = HoursView.lines(lines, below, TallyWords.open(tally), Style.LATE);
        below = HoursView.lines(lines, below, TallyWords.shop(tally), Style.NORMAL);
        HoursView.lines(lines, below.below(1), TallyWords.kinds(tally), Style.QUIET);
    }

    private static List<Column> columns() {
        return List.of(
                Column.left(Words.say("tally.people"), 0),
                Column.right(Words.say("tally.attended"), 9),
                Column.right(Words.say("tally.on_machines"), 11),
                Column.right(Words.say("tally.other"), 10),
                Column.right(Words.say("tally.rests"), 7),
                Column.right(Words.say("tally.unaccounted"), 11),
                Column.right(Words.say("tally.rounding"), 9));
    }

    private List<String> row(PersonHours hours) {
        return List.of(
                tally.ledger().books().nameOf(hours.personId()),
                HoursView.hours(hours.attended()),
                HoursView.hours(hours.onMachines()),
                HoursView.hours(hours.otherMinutes()),
                HoursView.hours(hours.rests()),
                HoursView.hours(hours.unaccounted()),
                TallyWords.signed(hours.rounding()));
    }

    private List<String> together(List<PersonHours> people) {
        return List.of(
                Words.say("tally.all"),
                HoursView.hours(tally.hours().attended()),
                HoursView.hours(tally.hours().onMachines()),
                HoursView.hours(
                        people.stream().mapToInt(PersonHours::otherMinutes).sum()),
                HoursView.hours(tally.hours().minutes(Stretch.Use::isRest)),
                HoursView.hours(tally.hours().minutes(use -> use == Stretch.Use.UNACCOUNTED)),
                TallyWords.signed(tally.hours().rounding()));
    }

    private Region bars(Region region) {
        List<PersonDay> days = new ArrayList<>(tally.hours().days());
        days.removeIf(day -> day.stretches().isEmpty());
        if (days.isEmpty()) {
            return region;
        }
        PersonBar bar = new PersonBar(canvas, tally, PersonBar.axis(region.rightOf(NAME), tally));
        new TimeScale(
                        bar.axis(),
                        tally.ledger().from(),
                        tally.ledger().books().shop().zone(),
                        PersonBar.minuteOf(tally, tally.ledger().now()))
                .draw(canvas, region.row(0));
        Region rest = region.below(1);
        for (PersonDay day : days) {
            canvas.text(rest.row(0).left(NAME - 1), tally.ledger().books().nameOf(day.personId()), Style.NORMAL);
            bar.draw(rest.row(0), day);
            rest = rest.below(1);
        }
        canvas.text(rest.row(0), PersonBar.legend(), Style.QUIET);
        return rest.below(2);
    }
}
