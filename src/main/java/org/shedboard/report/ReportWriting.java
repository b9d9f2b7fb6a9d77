package org.shedboard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.shedboard.day.Clocks;
import org.shedboard.day.Day;
import org.shedboard.day.Figures;
import org.shedboard.day.LastTime;
import org.shedboard.day.PointsDue;
import org.shedboard.day.Riding;
import org.shedboard.day.TakenHome;
import org.shedboard.day.Wear;
import org.shedboard.estimate.MachineClass;
import org.shedboard.estimate.Point;
import org.shedboard.register.Carried;
import org.shedboard.shop.Finding;
import org.shedboard.shop.Line;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Mark;
import org.shedboard.shop.OwnersWord;
import org.shedboard.shop.Part;
import org.shedboard.shop.Person;
import org.shedboard.shop.Step;
import org.shedboard.shop.Visit;
import org.shedboard.words.Words;

/** A report being written about one visit, whether it is over or not. */
public final class ReportWriting {
    private final Day day;
    private final Visit visit;
    private final Machine machine;
    private final MachineClass machineClass;

    private ReportWriting(Day day, Visit visit) {
        this.day = day;
        this.visit = visit;
        this.machine = day.machineOf(visit);
        this.machineClass = day.books().catalogue().expectClass(machine.classId());
    }

    /** @param day any day whose register knows what was read off at the machine */
    public static Report of(Day day, Visit visit) {
        return new ReportWriting(day, visit).report();
    }

    private Report report() {
        List<Report.Section> sections = new ArrayList<>();
        for (Report.Kind kind : Report.Kind.values()) {
            List<String> lines = lines(kind);
            if (!lines.isEmpty()) {
                sections.add(new Report.Section(kind, lines));
            }
        }
        return new Report(
                day.shop().name(),
                Words.say("report.title", machine.label(), day.ownerOf(visit).name()),
                about(),
                warnings(),
                sections,
                measured(),
                List.of(Words.say("report.caution"), Words.say("report.manual")));
    }

    private List<String> lines(Report.Kind kind) {
        return switch (kind) {
            case DONE -> done();
            case FOUND -> found();
            case LEFT -> left();
            case NEXT -> next();
        };
    }

    private List<String> about() {
        List<String> about = new ArrayList<>();
        about.add(machineClass.name());
        machine.modelYear().ifPresent(year -> about.add(String.valueOf(year)));
        if (!machine.number().isEmpty()) {
            about.add(machine.number());
        }
        visit.intake().meterHours().ifPresent(hours -> about.add(Words.say("sheet.meter", hours)));
        about.add(Words.say("report.came", Clocks.sayDate(day, visit.intake().arrives())));
        about.add(visit.finished()
                .map(at -> Words.say("report.finished", Clocks.sayDate(day, at)))
                .orElse(Words.say("report.not_finished")));
        return about;
    }

    private List<String> warnings() {
        List<String> warnings = new ArrayList<>();
        List<Point> stopped = Riding.stoppedBy(day, visit);
        if (!stopped.isEmpty()) {
            warnings.add(Words.say("report.do_not_ride", FindingWords.names(stopped)));
        }
        visit.handover().ifPresent(handover -> warnings.add(FindingWords.handover(day, handover)));
        return warnings;
    }

    private List<String> done() {
        List<String> lines = new ArrayList<>();
        visit.lines().forEach(line -> lines.add(done(line)));
        if (visit.stays().stream().anyMatch(stay -> stay.step() == Step.WASH && stay.isDone())) {
            lines.add(Words.say("report.washed", Words.say(visit.intake().mud())));
        }
        long good = count(Mark.GOOD);
        lines.add(Words.say(
                "report.looked",
                visit.findings().size() - count(Mark.NOT_REACHED),
                Words.say(visit.intake().depth()),
                good));
        long open = visit.tasks().stream()
                .mapToLong(task -> PointsDue.openOf(day, visit, task).size())
                .sum();
        if (open > 0) {
            lines.add(Words.say("report.open", open));
        }
        FindingWords.lookedAt(day, visit).map(ReportWriting::sentence).ifPresent(lines::add);
        lines.add(FindingWords.signature(visit)
                .map(signed -> Words.say(
                        "report.signed",
                        day.nameOf(signed.person().orElseThrow()),
                        role(signed.person().orElseThrow()),
                        Clocks.sayDate(day, signed.ended().orElseThrow())))
                .orElse(Words.say("report.not_signed")));
        return lines;
    }

    private String role(String personId) {
        return day.shop()
                .findPerson(personId)
                .map(Person::role)
                .filter(role -> !role.isBlank())
                .map(role -> " (" + role + ")")
                .orElse("");
    }

    private static String sentence(String said) {
        return said.substring(0, 1).toUpperCase(Locale.ROOT) + said.substring(1) + ".";
    }

    private long count(Mark mark) {
        return visit.findings().stream()
                .filter(finding -> finding.mark() == mark)
                .count();
    }

    private String done(Line line) {
        String said = Words.say(
                visit.isDone(line) ? "report.line_done" : "report.line_not_done", line.name(), Words.say(line.payer()));
        String parts = line.parts().stream().map(ReportWriting::part).collect(Collectors.joining(", "));
        return parts.isEmpty() ? said : Words.say("report.parts", said, parts);
    }

    private static String part(Part part) {
        return part.quantity() + " " + part.name();
    }

    private List<String> found() {
        List<String> lines = new ArrayList<>();
        for (Mark mark : List.of(Mark.FIX, Mark.WATCH)) {
            marked(mark).forEach(finding -> lines.add(found(finding)));
        }
        marked(Mark.GOOD).stream()
                .filter(finding -> finding.word().isPresent())
                .forEach(finding -> lines.add(Words.say("report.mended", name(finding))));
        if (lines.isEmpty()) {
            lines.add(Words.say("report.nothing_found"));
        }
        return lines;
    }

    private List<Finding> marked(Mark mark) {
        return visit.findings().stream()
                .filter(finding -> finding.mark() == mark)
                .toList();
    }

    private String found(Finding finding) {
        boolean isMended = TakenHome.isMended(day, visit, finding);
        String what = isMended ? "report.mended" : finding.isFix() ? "report.fix" : "report.watch";
        return withNote(Words.say(what, name(finding)), finding.note());
    }

    private static String withNote(String said, String note) {
        return note.isBlank() ? said : said + " " + Words.say("report.note", note);
    }

    private String name(Finding finding) {
        return machineClass
                .findPoint(finding.pointId())
                .map(point ->
                        point.where().isBlank() ? point.name() : Words.say("report.point", point.name(), point.where()))
                .orElse(finding.pointId());
    }

    private List<Report.Row> measured() {
        return visit.findings().stream()
                .filter(finding -> finding.measured().isPresent())
                .flatMap(finding -> machineClass.findPoint(finding.pointId()).stream()
                        .map(point -> row(point, finding.measured().getAsDouble())))
                .toList();
    }

    private Report.Row row(Point point, double value) {
        String good = point.measure()
                .map(measure -> Words.say(
                        "report.good", Figures.say(measure.low()), Figures.say(measure.high()), measure.unit()))
                .orElse("");
        return new Report.Row(
                point.name(),
                FindingWords.value(point, value),
                good,
                WearWords.of(Wear.of(day, visit, point)).orElse(""));
    }

    private List<String> left() {
        List<String> lines = new ArrayList<>();
        marked(Mark.NOT_REACHED)
                .forEach(finding -> lines.add(Words.say("report.not_reached", name(finding), finding.note())));
        unmended().forEach(finding -> lines.add(left(finding)));
        before().forEach(carried -> lines.add(Words.say(
                "report.still_open",
                name(carried.finding()),
                Words.say(carried.finding().mark()))));
        return lines;
    }

    private List<Finding> unmended() {
        return marked(Mark.FIX).stream()
                .filter(finding -> !TakenHome.isMended(day, visit, finding))
                .toList();
    }

    private String left(Finding finding) {
        Optional<OwnersWord> word = finding.word();
        return word.map(said -> Words.say(
                        "report.word." + said.answer(),
                        name(finding),
                        said.of(),
                        Clocks.sayDate(day, said.at()),
                        day.nameOf(said.by())))
                .orElse(Words.say("report.not_fixed", name(finding)));
    }

    /** What was left last time where nobody has looked again. */
    private List<Carried> before() {
        return visit.state().isHere()
                ? LastTime.of(day, visit).stream()
                        .filter(carried ->
                                visit.findingAt(carried.finding().pointId()).isEmpty())
                        .toList()
                : List.of();
    }

    private List<String> next() {
        List<String> lines = new ArrayList<>();
        unmended().forEach(finding -> lines.add(Words.say("report.next_fix", name(finding))));
        marked(Mark.NOT_REACHED).forEach(finding -> lines.add(Words.say("report.next_reach", name(finding))));
        marked(Mark.WATCH).forEach(finding -> lines.add(Words.say("report.next_watch", name(finding))));
        before().forEach(carried -> lines.add(Words.say("report.next_reach", name(carried.finding()))));
        machineClass.points().stream()
                .filter(point -> visit.findingAt(point.id()).isPresent())
                .map(point -> Wear.of(day, visit, point))
                .filter(Wear::isWithin)
                .forEach(wear -> wear.limit().ifPresent(limit -> lines.add(planned(wear, limit))));
        if (lines.isEmpty()) {
            lines.add(Words.say("report.next_nothing"));
        }
        return lines;
    }

    private static String planned(Wear wear, Wear.Limit limit) {
        return Words.say("report.next_limit", wear.point().name(), WearWords.when(limit.at()));
    }
}
