package org.shedboard.screen;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.shedboard.board.Board;
import org.shedboard.board.LoanWords;
import org.shedboard.board.NumberWords;
import org.shedboard.board.PinText;
import org.shedboard.board.Screen;
import org.shedboard.day.Clocks;
import org.shedboard.day.Day;
import org.shedboard.day.LastTime;
import org.shedboard.day.Outlook;
import org.shedboard.day.PointsDue;
import org.shedboard.day.Riding;
import org.shedboard.day.WashDowns;
import org.shedboard.day.Wear;
import org.shedboard.estimate.Point;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Column;
import org.shedboard.grid.Glyphs;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.grid.TextWidth;
import org.shedboard.register.Loan;
import org.shedboard.register.Notice;
import org.shedboard.report.FindingWords;
import org.shedboard.report.WearWords;
import org.shedboard.shop.Finding;
import org.shedboard.shop.Line;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Promise;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;
import org.shedboard.tally.VisitTally;
import org.shedboard.words.Words;

/** Everything of one visit. The points of an inspection are listed under it while the cursor is on it. */
final class SheetView {
    /** Beyond this width the eye would lose the line between a task and who did it. */
    private static final int WIDEST = 118;

    private final Canvas canvas;
    private final Board board;
    private final Screen.Sheet screen;
    private final Outlook outlook;
    private final Day day;
    private final Visit visit;
    private final List<Row> rows = new ArrayList<>();
    /** The line that each task begins in. */
    private final List<Integer> taskRows = new ArrayList<>();

    private int selectedRow;
    private int selectedEnd;

    /** One line of the list: its columns, or one running text where there is only one. */
    private record Row(List<String> texts, List<Column> columns, Style style) {
        Row(String text, Style style) {
            this(List.of(text), List.of(), style);
        }
    }

    private static final List<Column> TASK =
            List.of(Column.left("", 2), Column.left("", 0), Column.right("", 7), Column.left("", 22));

    private static final List<Column> POINT = List.of(
            Column.left("", 2), Column.left("", 0), Column.right("", 9), Column.left("", 11), Column.left("", 8));

    /** What stands below a point is set in by so many columns. */
    private static final int POINT_INDENT = 4;

    SheetView(Canvas canvas, Board board, Screen.Sheet screen) {
        this.canvas = canvas;
        this.board = board;
        this.screen = screen;
        this.outlook = board.expectOutlook();
        this.day = outlook.day();
        this.visit = day.expectVisit(screen.visitId());
    }

    void draw(Region page) {
        Machine machine = day.machineOf(visit);
        String tag = visit.tag().isPresent() ? String.valueOf(visit.tag().getAsInt()) : Words.say("sheet.no_tag");
        Header.draw(canvas, page.row(0), board, tag + "   " + day.ownerOf(visit).name() + "   " + machine.label());
        Region rest = head(page.below(1).inside(1, 0), machine);
        list(rest.left(WIDEST));
    }

    private Region head(Region region, Machine machine) {
        Region rest = region;
        if (Riding.isStopped(day, visit)) {
            String points =
                    Riding.stoppedBy(day, visit).stream().map(Point::name).collect(Collectors.joining(", "));
            rest = line(rest, Words.say("board.do_not_ride") + ": " + points, Style.DANGER);
        }
        List<String> about = new ArrayList<>();
        about.add(day.books().catalogue().expectClass(machine.classId()).name());
        machine.modelYear().ifPresent(year -> about.add(String.valueOf(year)));
        if (!machine.number().isEmpty()) {
            about.add(NumberWords.marked(machine.number()));
        }
        machine.meterHours().ifPresent(hours -> about.add(Words.say("sheet.meter", hours)));
        about.add(day.ownerOf(visit).phone());
        rest = flow(rest, about, Style.NORMAL);
        rest = flow(rest, state(), Style.NORMAL);
        rest = washDown(rest);
        rest = promise(rest);
        for (Line wanted : visit.lines()) {
            rest = wanted(rest, wanted);
        }
        rest = new SheetParts(canvas, outlook, visit).draw(rest);
        for (Loan loan : day.books().register().loans().stream()
                .filter(each -> each.visitId().equals(visit.id()))
                .toList()) {
            rest = canvas.paragraph(rest, LoanWords.of(day, loan), loan.isOut() ? Style.HELD : Style.NORMAL);
        }
        if (!visit.intake().note().isBlank()) {
            rest = canvas.paragraph(rest, Words.say("sheet.note", visit.intake().note()), Style.NORMAL);
        }
        return line(people(rest), clocked(), Style.QUIET);
    }

    /** Who signed, who looked, who handed it over. */
    private Region people(Region region) {
        List<String> parts = new ArrayList<>();
        FindingWords.signed(day, visit).ifPresent(parts::add);
        FindingWords.lookedAt(day, visit).ifPresent(parts::add);
        Region rest = parts.isEmpty() ? region : flow(region, parts, Style.NORMAL);
        return visit.handover()
                .map(handover -> canvas.paragraph(rest, FindingWords.handover(day, handover), Style.HELD))
                .orElse(rest);
    }

    private Region washDown(Region region) {
        if (WashDowns.isAwaited(visit)) {
            return line(region, Words.say("sheet.wash_down_awaited"), Style.DANGER);
        }
        return WashDowns.signed(visit)
                .map(by -> Words.say(
                        "sheet.wash_down_signed",
                        name(by.person().orElseThrow()),
                        time(by.ended().orElseThrow())))
                .map(said -> line(region, said, Style.NORMAL))
                .orElse(region);
    }

    private List<String> state() {
        List<String> parts = new ArrayList<>();
        parts.add(Words.say(visit.state()));
        visit.standsIn().ifPresent(place -> parts.add(Words.say("sheet.place", place)));
        visit.hold()
                .ifPresent(hold ->
                        parts.add(Words.say("sheet.waits", Words.say(hold.reason()), time(hold.until()), hold.note())
                                .strip()));
        String arrival = visit.state() == VisitState.BOOKED ? "sheet.expected" : "sheet.came";
        parts.add(Words.say(arrival, time(visit.intake().arrives())));
        parts.add(Words.say("sheet.mud", Words.say(visit.intake().mud())));
        parts.add(Words.say("sheet.depth", Words.say(visit.intake().depth())));
        if (!visit.intake().condition().drives()) {
            parts.add(Words.say("sheet.pushed"));
        }
        return parts;
    }

    private Region promise(Region region) {
        List<String> parts = new ArrayList<>();
        parts.add(visit.promise().map(this::said).orElse(Words.say("sheet.no_promise")));
        outlook.chanceOfPromise(visit).ifPresent(chance -> parts.add(Words.say("sheet.chance", chance)));
        outlook.readyAt(visit.id()).ifPresent(at -> parts.add(Words.say("sheet.ready", time(at))));
        outlook.rangeLeft(visit.id())
                .ifPresent(range -> parts.add(Words.say("sheet.likely", range.likely(), range.safe())));
        Region rest = flow(region, parts, Style.STRONG);
        Optional<String> why = WhyLine.of(outlook, visit);
        if (why.isPresent()) {
            rest = canvas.paragraph(rest, why.get(), Style.QUIET);
        }
        for (Promise promise : visit.promises()) {
            if (!promise.why().isEmpty()) {
                rest = line(
                        rest, Words.say("sheet.promise_changed", time(promise.saidAt()), promise.why()), Style.QUIET);
            }
        }
        return rest;
    }

    private String said(Promise promise) {
        return Words.say("sheet.promised", time(promise.at()), name(promise.by()), promise.to());
    }

    private Region wanted(Region region, Line wanted) {
        String parts = wanted.parts().stream()
                .map(part -> SheetParts.say(day, visit, wanted, part))
                .collect(Collectors.joining(", "));
        String all = parts.isEmpty() ? "" : "   " + Words.say("sheet.parts", parts);
        String payer = "   " + Words.say("sheet.paid_by", Words.say(wanted.payer()));
        return canvas.paragraph(
                region, Glyphs.BULLET + " " + wanted.name() + payer + notice(wanted) + all, Style.NORMAL);
    }

    /** Which maker's notice asks for the line. */
    private String notice(Line wanted) {
        return day.books().register().takenOn(visit.id()).stream()
                .filter(taken -> taken.lineId().equals(wanted.id()))
                .map(taken -> "   "
                        + Words.say(
                                "sheet.notice",
                                taken.noticeId(),
                                day.books()
                                        .register()
                                        .findNotice(taken.noticeId())
                                        .map(Notice::title)
                                        .orElse("")))
                .collect(Collectors.joining());
    }

    private String clocked() {
        Optional<VisitTally> today = board.seen().orElseThrow().tally().visits().stream()
                .filter(tally -> tally.visit().id().equals(visit.id()))
                .findFirst();
        return Words.say(
                "sheet.clocked",
                today.map(VisitTally::worked).orElse(0),
                today.map(VisitTally::estimated).orElse(0));
    }

    private void list(Region region) {
        int index = 0;
        for (Stay stay : visit.stays()) {
            String place =
                    stay.placeId().map(id -> " " + Words.say("sheet.place", id)).orElse("");
            rows.add(new Row(Words.say(stay.step()) + place, Style.TITLE));
            for (Task task : stay.tasks()) {
                task(task, index == screen.task(), region.width());
                index++;
            }
        }
        int shown = Math.max(0, Math.min(selectedRow, selectedEnd - region.height() + 1));
        int last = Math.max(shown, rows.size() - region.height());
        int first = Math.min(last, shown + screen.scroll());
        for (int row = 0; row < region.height() && first + row < rows.size(); row++) {
            Row each = rows.get(first + row);
            Region at = region.row(row);
            if (each.texts().size() == 1) {
                canvas.text(region.row(row), each.texts().get(0), each.style());
            } else {
                canvas.entry(region.row(row), each.columns(), each.texts(), each.style());
            }
            taskAt(first + row).ifPresent(task -> Press.row(canvas, at, task, screen.task()));
            if (first + row == selectedRow) {
                canvas.fill(new Region(region.left() - 1, region.top() + row, 1, 1), Glyphs.POINTER, Style.SELECTED);
            }
        }
    }

    /** Which task a line of the list belongs to, counted through all stays; none for the headings. */
    private Optional<Integer> taskAt(int row) {
        int task = -1;
        for (int began : taskRows) {
            task += began <= row ? 1 : 0;
        }
        return rows.get(row).style() == Style.TITLE || task < 0 ? Optional.empty() : Optional.of(task);
    }

    private void task(Task task, boolean selected, int width) {
        taskRows.add(rows.size());
        Style style = selected ? Style.SELECTED : task.isDone() ? Style.QUIET : Style.NORMAL;
        if (selected) {
            selectedRow = rows.size();
        }
        String unattended = task.unattended() > 0 ? ", " + Words.say("sheet.unattended", task.unattended()) : "";
        List<Point> points = PointsDue.of(day, visit, task);
        Optional<String> pinned = PinText.of(outlook, visit, task);
        rows.add(new Row(
                List.of(mark(task), task.name() + unattended, Words.say("sheet.minutes", task.handsOn()), status(task)),
                TASK,
                style));
        pinned.ifPresent(text -> rows.add(new Row("  " + text, Style.STRONG)));
        if (!points.isEmpty()) {
            rows.add(new Row("  " + pointsSummary(points), Style.QUIET));
        }
        if (selected) {
            if (!task.caution().isEmpty()) {
                TextWidth.wrap(Words.say("next.caution", task.caution()), width - 4)
                        .forEach(text -> rows.add(new Row("  " + text, Style.CAUTION)));
            }
            points.forEach(point -> point(point, width));
            selectedEnd = rows.size() - 1;
        }
    }

    private static String mark(Task task) {
        return switch (task.progress().status()) {
            case DONE -> String.valueOf(Glyphs.TICK);
            case RUNNING -> String.valueOf(Glyphs.DISC);
            case PAUSED -> String.valueOf(Glyphs.CIRCLE);
            case TO_DO -> "";
        };
    }

    private String status(Task task) {
        return switch (task.progress().status()) {
            case DONE ->
                Words.say(
                        "sheet.done_by",
                        name(task.progress().person().orElseThrow()),
                        time(task.progress().began().orElseThrow()),
                        ended(task));
            case RUNNING ->
                Words.say(
                        "sheet.running",
                        name(task.progress().person().orElseThrow()),
                        time(task.progress().since().orElseThrow()));
            case PAUSED -> Words.say("sheet.paused");
            case TO_DO ->
                outlook.timeOf(visit.id(), task.id())
                        .map(planned -> Words.say(
                                "sheet.planned",
                                time(day.instantOf(planned.start())),
                                planned.person().map(this::name).orElse("")))
                        .orElse(Words.say("sheet.todo"));
        };
    }

    /** When it ended; the weekday is said once where it began on the same day. */
    private String ended(Task task) {
        String began = time(task.progress().began().orElseThrow());
        String ended = time(task.progress().ended().orElseThrow());
        int weekday = ended.indexOf(' ') + 1;
        return began.startsWith(ended.substring(0, weekday)) ? ended.substring(weekday) : ended;
    }

    private String pointsSummary(List<Point> points) {
        List<String> counts = new ArrayList<>();
        for (Mark mark : Mark.values()) {
            long count = points.stream()
                    .filter(point -> visit.findingAt(point.id())
                            .filter(each -> each.mark() == mark)
                            .isPresent())
                    .count();
            if (count > 0) {
                counts.add(count + " " + Words.say(mark));
            }
        }
        long open = points.stream()
                .filter(point -> visit.findingAt(point.id()).isEmpty())
                .count();
        if (open > 0) {
            counts.add(Words.say("sheet.points_open", open));
        }
        return Words.say("sheet.points", points.size(), String.join(", ", counts));
    }

    private void point(Point point, int width) {
        var finding = visit.findingAt(point.id());
        String mark = finding.map(each -> Words.say(each.mark())).orElse("");
        String value = finding.filter(each -> each.measured().isPresent())
                .map(each -> FindingWords.value(point, each.measured().getAsDouble()))
                .orElse("");
        String by = finding.map(each -> name(each.by())).orElse("");
        String note = finding.map(Finding::note)
                .filter(text -> !text.isEmpty())
                .map(text -> "  " + text)
                .orElse("");
        rows.add(new Row(
                List.of(
                        "",
                        point.name() + " (" + point.where() + ")" + note + renewed(point, finding),
                        value,
                        mark,
                        by),
                POINT,
                styleOf(finding.map(Finding::mark))));
        besides(point, finding)
                .forEach(text -> TextWidth.wrap(text, width - POINT_INDENT)
                        .forEach(row -> rows.add(new Row(" ".repeat(POINT_INDENT) + row, Style.QUIET))));
    }

    /** What there is to know of a point beyond its finding: what was left last time, how it wears, what the owner said. */
    private List<String> besides(Point point, Optional<Finding> finding) {
        List<String> texts = new ArrayList<>();
        LastTime.at(day, visit, point.id()).ifPresent(carried -> texts.add(FindingWords.lastTime(day, point, carried)));
        WearWords.of(Wear.of(day, visit, point)).ifPresent(texts::add);
        finding.flatMap(Finding::word).ifPresent(word -> texts.add(FindingWords.word(day, word)));
        return texts;
    }

    private static String renewed(Point point, Optional<Finding> finding) {
        return point.renewedWith().isPresent()
                        && finding.filter(Finding::isDirt).isPresent()
                ? "  " + Words.say("part.renew")
                : "";
    }

    private static Style styleOf(Optional<Mark> mark) {
        if (mark.isEmpty()) {
            return Style.QUIET;
        }
        return switch (mark.get()) {
            case GOOD -> Style.NORMAL;
            case WATCH -> Style.STRONG;
            case FIX -> Style.DANGER;
            case NOT_REACHED -> Style.HELD;
        };
    }

    /** Short texts one after the other, in as many rows as they need; each is whole where a row can hold it. */
    private Region flow(Region region, List<String> parts, Style style) {
        Region rest = region;
        String row = "";
        for (String part : parts) {
            String longer = row.isEmpty() ? part : row + "   " + part;
            if (!row.isEmpty() && TextWidth.of(longer) > region.width()) {
                rest = canvas.paragraph(rest, row, style);
                longer = part;
            }
            row = longer;
        }
        return canvas.paragraph(rest, row, style);
    }

    private Region line(Region region, String text, Style style) {
        canvas.text(region.row(0), text, style);
        return region.below(1);
    }

    private String time(Instant at) {
        return Clocks.sayTime(day, at);
    }

    private String name(String personId) {
        return PlacesView.nameOf(day, personId);
    }
}
