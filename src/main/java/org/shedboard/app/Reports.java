package org.shedboard.app;

import java.nio.file.Path;
import org.shedboard.day.Day;
import org.shedboard.day.Names;
import org.shedboard.files.ReportPage;
import org.shedboard.report.ReportWriting;
import org.shedboard.shop.Visit;
import org.shedboard.words.Words;

/** The reports for owners that the board writes, one page a visit, in the shop's home. */
final class Reports {
    private Reports() {}

    /** A sentence that says where it is. */
    static String write(Workshop workshop, String visitId) {
        Day day = workshop.day();
        Visit visit = day.expectVisit(visitId);
        Path file = workshop.home().resolve("reports").resolve(visit.id() + ".html");
        Output.write(file, new ReportPage(ReportWriting.of(day, visit)).text());
        return Words.say("report.written", Names.of(day, visit), file.toAbsolutePath());
    }
}
