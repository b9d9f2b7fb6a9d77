package org.shedboard.report;

import java.util.ArrayList;
import java.util.List;
import org.shedboard.words.Words;

/** A report as plain lines. */
public final class ReportText {
    private ReportText() {}

    public static List<String> of(Report report) {
        List<String> lines = new ArrayList<>();
        lines.add(report.shop());
        lines.add(report.title());
        lines.add(String.join(", ", report.about()));
        if (!report.warnings().isEmpty()) {
            lines.add("");
            lines.addAll(report.warnings());
        }
        for (Report.Section section : report.sections()) {
            lines.add("");
            lines.add(heading(section.kind()));
            section.lines().forEach(line -> lines.add("  " + line));
            if (section.kind() == Report.Kind.FOUND) {
                measured(report, lines);
            }
        }
        lines.add("");
        lines.addAll(report.cautions());
        return lines;
    }

    public static String heading(Report.Kind kind) {
        return Words.say("report.section." + kind);
    }

    private static void measured(Report report, List<String> lines) {
        if (report.measured().isEmpty()) {
            return;
        }
        lines.add("");
        lines.add(Words.say("report.measured"));
        for (Report.Row row : report.measured()) {
            String said = Words.say("report.row", row.point(), row.value(), row.good());
            lines.add("  " + (row.wear().isEmpty() ? said : said + "; " + row.wear()));
        }
    }
}
