package org.shedboard.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shedboard.day.Names;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Column;
import org.shedboard.grid.Glyphs;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.tally.LineTally;
import org.shedboard.tally.SpanTally;
import org.shedboard.tally.TallyWords;
import org.shedboard.tally.VisitTally;
import org.shedboard.words.Words;

/** The hours of a day, machine by machine and line by line: what was estimated, worked, and charged to whom. */
final class MachineHours {
    private static final int NUMBER = 9;
    /** Columns of the bar that sets worked against estimated, where there is room and where there is little. */
    private static final int BAR = 24;

    private static final int SHORT_BAR = 10;
    private static final int ROOMY = 100;

    private final Canvas canvas;
    private final SpanTally tally;
    private final int scroll;
    /** What the longest bar stands for. */
    private final int mostMinutes;

    /** A row of the table, and the visit whose bar stands in it. */
    private record Row(List<String> texts, Style style, Optional<VisitTally> visit) {
        static Row of(String text, Style style) {
            return new Row(List.of(text), style, Optional.empty());
        }
    }

    MachineHours(Canvas canvas, SpanTally tally, int scroll) {
        this.canvas = canvas;
        this.tally = tally;
        this.scroll = scroll;
        this.mostMinutes = tally.visits().stream()
                .mapToInt(visit -> Math.max(visit.estimated(), visit.worked()))
                .max()
                .orElse(0);
    }

    void draw(Region body) {
        List<Row> rows = new ArrayList<>();
        tally.visits().forEach(visit -> add(rows, visit));
        List<String> notes = notes();
        Region table = body.above(notes.size() + 1);
        List<Column> columns = columns(body.width() < ROOMY ? SHORT_BAR : BAR);
        canvas.headings(table, columns);
        int first = Math.max(0, Math.min(scroll, rows.size() - 1));
        Region rest = table.below(1);
        for (Row row : rows.subList(first, rows.size())) {
            draw(rest.row(0), columns, row);
            rest = rest.below(1);
        }
        HoursView.lines(canvas, body.bottom(notes.size()), notes, Style.QUIET);
    }

    /** What is no row of figures may use the whole width. */
    private void draw(Region at, List<Column> columns, Row row) {
        if (row.texts().size() == 1) {
            canvas.text(at, row.texts().get(0), row.style());
            return;
        }
        canvas.entry(at, columns, row.texts(), row.style());
        row.visit().ifPresent(visit -> bar(Canvas.parts(at, columns).get(columns.size() - 1), visit));
    }

    private List<String> notes() {
        List<String> notes = new ArrayList<>();
        notes.add(Words.say("tally.charged_all", HoursView.hours(tally.chargeable())));
        notes.add(Words.say("tally.bar_legend", Glyphs.DARK, Glyphs.LIGHT, Glyphs.VERTICAL));
        return notes;
    }

    private static List<Column> columns(int bar) {
        return List.of(
                Column.left(Words.say("tally.visits"), 0),
                Column.right(Words.say("tally.estimated"), NUMBER),
                Column.right(Words.say("tally.worked"), NUMBER),
                Column.right(Words.say("tally.cleaning"), NUMBER),
                Column.right(Words.say("tally.charged"), NUMBER),
                Column.left("", bar));
    }

    private void add(List<Row> rows, VisitTally visit) {
        rows.add(new Row(
                List.of(
                        Names.of(tally.ledger().books(), visit.visit()),
                        minutes(visit.estimated()),
                        minutes(visit.worked()),
                        minutes(visit.cleaning()),
                        ""),
                Style.STRONG,
                Optional.of(visit)));
        for (LineTally line : visit.lines()) {
            rows.add(line(line));
        }
        rows.add(Row.of("  " + TallyWords.who(tally, visit), Style.QUIET));
    }

    private static Row line(LineTally line) {
        String charged = line.chargeable().isPresent()
                ? HoursView.hours(line.chargeable().getAsInt())
                : "";
        return new Row(
                List.of(
                        "  " + line.line().name() + ", " + Words.say(line.line().payer()),
                        minutes(line.estimated()),
                        minutes(line.worked()),
                        minutes(line.cleaning()),
                        charged),
                Style.NORMAL,
                Optional.empty());
    }

    private static String minutes(int minutes) {
        return String.valueOf(minutes);
    }

    /** Dark as far as was worked, light where the estimate had more; a stroke where the estimate ends. */
    private void bar(Region region, VisitTally visit) {
        Region bar = region.leftOf(1);
        int worked = columnsOf(visit.worked(), bar.width());
        int estimated = columnsOf(visit.estimated(), bar.width());
        canvas.fill(bar.left(Math.max(worked, estimated)), Glyphs.LIGHT, Style.UNATTENDED);
        canvas.fill(bar.left(worked), Glyphs.DARK, visit.worked() > visit.estimated() ? Style.LATE : Style.HANDS_ON);
        canvas.fill(region.rightOf(estimated).left(1), Glyphs.VERTICAL, Style.STRONG);
    }

    private int columnsOf(int minutes, int width) {
        return mostMinutes == 0 ? 0 : (int) Math.round((double) minutes * width / mostMinutes);
    }
}
