package org.shedboard.app.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shedboard.day.Day;
import org.shedboard.files.ReportPage;
import org.shedboard.report.Report;
import org.shedboard.report.ReportText;
import org.shedboard.report.ReportWriting;
import org.shedboard.shop.Visit;
import org.shedboard.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What was done and found in a visit, for its owner. */
@Command(name = "report")
final class ReportCommand implements Wish.OnTheDay {
    @Parameters(index = "0", paramLabel = "TAG", descriptionKey = "option.tag_or_visit")
    private String tag;

    @Option(names = "--html", paramLabel = "FILE")
    private Optional<Path> html;

    @Override
    public Reply reply(Seen seen) {
        Visit visit = seen.findVisit(tag).orElseGet(() -> new Asked(seen).visit(tag));
        Day day = seen.dayKnowing(visit.machineId());
        Report report = ReportWriting.of(day, visit);
        return html.<Reply>map(file -> new Reply.Write(file, new ReportPage(report).text(), written(file, visit)))
                .orElseGet(() -> new Reply.Tell(new Answer(ReportText.of(report), tree(report, visit))));
    }

    private static Answer written(Path file, Visit visit) {
        Tree tree = new Tree().put("visit", visit.id()).put("file", file.toString());
        return new Answer(List.of(Words.say("command.report.written", file)), tree.fields());
    }

    private static Map<String, Object> tree(Report report, Visit visit) {
        return new Tree()
                .put("visit", visit.id())
                .put("shop", report.shop())
                .put("title", report.title())
                .put("about", report.about())
                .put("warnings", report.warnings())
                .put(
                        "sections",
                        report.sections().stream()
                                .map(section -> new Tree()
                                        .put("about", section.kind())
                                        .put("heading", ReportText.heading(section.kind()))
                                        .put("lines", section.lines())
                                        .fields())
                                .toList())
                .put(
                        "measured",
                        report.measured().stream()
                                .map(row -> new Tree()
                                        .put("point", row.point())
                                        .put("value", row.value())
                                        .put("good", row.good())
                                        .put("wear", row.wear())
                                        .fields())
                                .toList())
                .put("cautions", report.cautions())
                .fields();
    }
}
