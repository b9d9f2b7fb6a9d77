package org.shedboard.screen;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Column;
import org.shedboard.grid.Glyphs;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.hours.PersonDay;
import org.shedboard.hours.Stretch.Use;
import org.shedboard.hours.Tally.PersonHours;
import org.shedboard.tally.SpanTally;
import org.shedboard.tally.TallyWords;
import org.shedboard.words.Words;

/** The hours of a week: each person's days in a row, and each day of the shop as a bar. */
final class WeekHours {
    private static final int NUMBER = 6;
    private static final int NAME = 12;

    private final Canvas canvas;
    private final SpanTally tally;

    WeekHours(Canvas canvas, SpanTally tally) {
        this.canvas = canvas;
        this.tally = tally;
    }

    void draw(Region body) {
        List<List<String>> rows = new ArrayList<>();
        tally.hours().people().forEach(person -> rows.add(row(person)));
        Region rest = canvas.columns(body, columns(), rows, Style.NORMAL);
        canvas.entry(rest.row(0), columns(), together(), Style.STRONG);
        rest = bars(rest.below(2));
        rest = HoursView.lines(canvas, rest, TallyWords.open(tally), Style.LATE);
        HoursView.lines(canvas, rest, TallyWords.shop(tally), Style.NORMAL);
    }

    private List<LocalDate> dates() {
        return tally.ledger().from().datesUntil(tally.ledger().until()).toList();
    }

    private List<Column> columns() {
        List<Column> columns = new ArrayList<>();
        columns.add(Column.left(Words.say("tally.people"), 0));
        dates().forEach(date -> columns.add(Column.right(HoursView.weekday(date), NUMBER)));
        columns.add(Column.right(Words.say("tally.all"), 8));
        columns.add(Column.right(Words.say("tally.rounding"), 8));
        return columns;
    }

    private List<String> row(PersonHours person) {
        List<String> row = new ArrayList<>();
        row.add(tally.ledger().books().nameOf(person.personId()));
        dates().forEach(date -> row.add(hoursOf(date, day -> day.personId().equals(person.personId()))));
        row.add(HoursView.hours(person.attended()));
        row.add(TallyWords.signed(person.rounding()));
        return row;
    }

    private List<String> together() {
        List<String> row = new ArrayList<>();
        row.add(Words.say("tally.all"));
        dates().forEach(date -> row.add(hoursOf(date, day -> true)));
        row.add(HoursView.hours(tally.hours().attended()));
        row.add(TallyWords.signed(tally.hours().rounding()));
        return row;
    }

    /** Attended hours of these people on a date; blank where nobody of them was here. */
    private String hoursOf(LocalDate date, Predicate<PersonDay> who) {
        int minutes = tally.hours().days().stream()
                .filter(day -> day.date().equals(date))
                .filter(who)
                .mapToInt(PersonDay::attended)
                .sum();
        return minutes == 0 ? "" : HoursView.hours(minutes);
    }

    private Region bars(Region region) {
        Region rest = region;
        int most = dates().stream()
                .mapToInt(date -> minutes(date, Use::isAttended))
                .max()
                .orElse(0);
        for (LocalDate date : dates()) {
            if (minutes(date, Use::isAttended) > 0) {
                canvas.text(rest.row(0).left(NAME - 1), HoursView.date(date), Style.NORMAL);
                bar(rest.row(0).rightOf(NAME), date, most);
                rest = rest.below(1);
            }
        }
        canvas.text(
                rest.row(0),
                Words.say("tally.week_legend", Glyphs.DARK, Glyphs.MEDIUM, Glyphs.HORIZONTAL, Glyphs.LIGHT),
                Style.QUIET);
        return rest.below(2);
    }

    private void bar(Region region, LocalDate date, int most) {
        Map<Character, Integer> parts = new LinkedHashMap<>();
        parts.put(Glyphs.DARK, minutes(date, use -> use == Use.ON_MACHINE));
        parts.put(Glyphs.MEDIUM, minutes(date, use -> use == Use.OTHER_WORK));
        parts.put(Glyphs.HORIZONTAL, minutes(date, Use::isRest));
        parts.put(Glyphs.LIGHT, minutes(date, use -> use == Use.UNACCOUNTED));
        int before = 0;
        for (Map.Entry<Character, Integer> part : parts.entrySet()) {
            int from = columnOf(before, most, region.width());
            before += part.getValue();
            int to = columnOf(before, most, region.width());
            Style style = part.getKey() == Glyphs.DARK ? Style.HANDS_ON : Style.QUIET;
            canvas.fill(region.rightOf(from).left(to - from), part.getKey(), style);
        }
    }

    private static int columnOf(int minutes, int most, int width) {
        return (int) ((long) minutes * width / most);
    }

    private int minutes(LocalDate date, Predicate<Use> which) {
        return tally.hours().days().stream()
                .filter(day -> day.date().equals(date))
                .mapToInt(day -> day.minutes(which))
                .sum();
    }
}
