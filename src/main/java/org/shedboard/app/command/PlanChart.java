package org.shedboard.app.command;

import java.time.DateTimeException;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.shedboard.grid.Glyphs;
import org.shedboard.grid.TextWidth;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.words.When;

/**
 * A plan drawn: a line for each person and each place, time from left to right. Minutes in which nobody works are left out of it,
 * so that nights and breaks take no room.
 */
final class PlanChart {
    /** What a column may stand for, so that the figures above it are easy. */
    private static final int[] MINUTES_A_COLUMN = {1, 2, 5, 10, 15, 20, 30, 60, 120, 240, 480, 720, 1440, 2880};

    private static final int LONGEST_NAME = 12;
    private static final int COLUMNS_A_FIGURE = 12;
    private static final char ROOM = ' ';

    private final Problem problem;
    private final Plan plan;
    private final int nameWidth;
    private final int columns;
    /** Every minute that is drawn, in order. */
    private final int[] minutes;

    private final int minutesAColumn;

    private PlanChart(Problem problem, Plan plan, int width) {
        this.problem = problem;
        this.plan = plan;
        nameWidth = Math.min(LONGEST_NAME, names().mapToInt(TextWidth::of).max().orElse(0));
        columns = Math.max(1, width - nameWidth - 1);
        minutes = drawnMinutes();
        minutesAColumn = scale();
    }

    /**
     * The lines; none where nothing is left to do.
     *
     * @param width columns that a line may have
     */
    static List<String> of(Problem problem, Plan plan, int width) {
        PlanChart chart = new PlanChart(problem, plan, width);
        return chart.minutes.length == 0 ? List.of() : chart.lines();
    }

    private Stream<String> names() {
        return Stream.concat(
                problem.people().stream().map(Problem.Person::id),
                problem.places().stream().map(Problem.Place::id));
    }

    private int[] drawnMinutes() {
        int end = lastMinute();
        boolean[] drawn = new boolean[end];
        plan.tasks().forEach(task -> fill(drawn, task.start(), task.start() + 1));
        for (Problem.Person person : problem.people()) {
            person.shifts().forEach(shift -> fill(drawn, shift.from(), shift.to()));
            person.overtime().forEach(window -> fill(drawn, window.from(), window.to()));
        }
        return IntStream.range(0, end).filter(minute -> drawn[minute]).toArray();
    }

    private void fill(boolean[] drawn, int from, int to) {
        for (int minute = Math.max(from, problem.now()); minute < Math.min(to, drawn.length); minute++) {
            drawn[minute] = true;
        }
    }

    private int lastMinute() {
        int tasks = plan.tasks().stream().mapToInt(Plan.TaskTime::end).max().orElse(0);
        int stays = plan.stays().stream().mapToInt(Plan.StayPlace::to).max().orElse(0);
        return Math.max(problem.now() + 1, Math.max(tasks, stays));
    }

    private int scale() {
        for (int scale : MINUTES_A_COLUMN) {
            if ((long) scale * columns >= minutes.length) {
                return scale;
            }
        }
        return (minutes.length + columns - 1) / columns;
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(figures());
        for (Problem.Person person : problem.people()) {
            List<Bar> bars = plan.tasks().stream()
                    .filter(task -> task.people().contains(person.id()))
                    .map(task -> new Bar(task.job(), task.start(), task.end()))
                    .toList();
            lines.add(line(person.id(), bars, Glyphs.DARK));
        }
        for (Problem.Place place : problem.places()) {
            List<Bar> bars = plan.stays().stream()
                    .filter(stay -> stay.place().equals(place.id()))
                    .map(stay -> new Bar(stay.job(), stay.from(), stay.to()))
                    .toList();
            lines.add(line(place.id(), bars, Glyphs.LIGHT));
        }
        return lines;
    }

    /** Something of one job, in minutes. */
    private record Bar(String job, int from, int to) {}

    private String line(String name, List<Bar> bars, char glyph) {
        char[] line = String.valueOf(ROOM).repeat(columns).toCharArray();
        int end = columns;
        List<Bar> all = joined(bars);
        for (int index = all.size() - 1; index >= 0; index--) {
            draw(line, all.get(index), end, glyph);
            end = columnOf(all.get(index).from);
        }
        String shown = TextWidth.clip(name, nameWidth);
        return (shown + " ".repeat(nameWidth - TextWidth.of(shown) + 1) + new String(line)).stripTrailing();
    }

    /** Bars of one job that touch are one; what was over before now is not to be seen. */
    private List<Bar> joined(List<Bar> bars) {
        List<Bar> joined = new ArrayList<>();
        for (Bar bar : bars.stream()
                .filter(bar -> bar.to > problem.now())
                .sorted(Comparator.comparingInt(Bar::from))
                .toList()) {
            Bar last = joined.isEmpty() ? bar : joined.get(joined.size() - 1);
            if (last != bar && last.job.equals(bar.job) && columnOf(bar.from) <= columnOf(last.to - 1) + 1) {
                joined.set(joined.size() - 1, new Bar(bar.job, last.from, Math.max(last.to, bar.to)));
            } else {
                joined.add(bar);
            }
        }
        return joined;
    }

    /**
     * Draws a bar with its name where that has room.
     *
     * @param end first column of the next bar, which has it even where this one does not end before
     */
    private void draw(char[] line, Bar bar, int end, char glyph) {
        int from = columnOf(bar.from);
        int to = Math.min(end, Math.max(from + 1, columnOf(bar.to - 1) + 1));
        String name = TextWidth.shown(bar.job);
        boolean fits = name.length() <= to - from && TextWidth.of(name) == name.length();
        for (int column = from; column < to; column++) {
            int letter = column - from;
            line[column] = fits && letter < name.length() ? name.charAt(letter) : glyph;
        }
    }

    /** The column that shows a minute, or the next one that is drawn. */
    private int columnOf(int minute) {
        int at = Arrays.binarySearch(minutes, minute);
        return Math.min(minutes.length - 1, at >= 0 ? at : -1 - at) / minutesAColumn;
    }

    /** When some columns begin: by the clock where the file says what minute 0 is, in minutes otherwise. */
    private String figures() {
        Optional<ZonedDateTime> origin = problem.origin().flatMap(PlanChart::moment);
        StringBuilder figures = new StringBuilder();
        for (int column = 0; column * minutesAColumn < minutes.length; column += COLUMNS_A_FIGURE) {
            int minute = minutes[column * minutesAColumn];
            String figure = origin.map(zero -> clock(zero, minute)).orElse(String.valueOf(minute));
            if (column + figure.length() <= columns) {
                figures.append(figure).append(" ".repeat(COLUMNS_A_FIGURE - figure.length()));
            }
        }
        return (" ".repeat(nameWidth + 1) + figures).stripTrailing();
    }

    private static String clock(ZonedDateTime zero, int minute) {
        return When.WEEKDAY_CLOCK.say(zero.plusMinutes(minute));
    }

    private static Optional<ZonedDateTime> moment(String text) {
        try {
            return Optional.of(ZonedDateTime.parse(text));
        } catch (DateTimeException unread) {
            return Optional.empty();
        }
    }
}
