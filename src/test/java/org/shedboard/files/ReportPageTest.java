package org.shedboard.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.day.Act;
import org.shedboard.day.Shed;
import org.shedboard.report.Report;
import org.shedboard.report.ReportText;
import org.shedboard.report.ReportWriting;
import org.shedboard.shop.Mark;
import org.shedboard.shop.OwnersWord;
import org.shedboard.testing.Browser;

/** The report on a quad whose pads the owner would not have changed. */
class ReportPageTest {
    private static final String ODD = "<b>\"&' worn & thin</b>";

    @TempDir
    Path folder;

    private final Shed shed = Shed.open();
    private final String quad = shed.quad();

    private Report declined() {
        shed.does(Shed.measured(quad, "pads", Mark.FIX, 1.1));
        shed.does(new Act.Tick("cy", quad, "battery", Mark.WATCH, OptionalDouble.of(12.1), ODD));
        shed.does(Shed.notReached(quad, "steering"));
        shed.does(Shed.ownerSaid(quad, "pads", OwnersWord.Answer.NO));
        shed.worksThrough("ada", quad).works("bo", quad, "sign-off");
        shed.does(new Act.Collect(quad, Optional.of(Shed.handed())));
        return ReportWriting.of(shed.day(), shed.visit(quad));
    }

    @Test
    void it_tells_what_was_done_found_measured_and_left_and_what_comes_next() {
        List<String> lines = ReportText.of(declined());
        assertEquals("The shed", lines.get(0));
        assertTrue(lines.contains("NOT TO BE RIDDEN until this is put right: pads"), lines.toString());
        assertTrue(
                lines.stream()
                        .anyMatch(line -> line.startsWith("Handed over by Ada to Tarn at ")
                                && line.endsWith(", who was told: not to be ridden: the pads are gone")),
                lines.toString());
        assertTrue(lines.contains("  oil change: done. Paid by the owner."), lines.toString());
        assertTrue(lines.contains("  Looked at by Ada (2), Cy (1, may not sign off)."), lines.toString());
        assertTrue(lines.contains("  Signed off by Bo on 12 May."), lines.toString());
        assertTrue(lines.contains("  pads must be fixed."), lines.toString());
        assertTrue(lines.contains("  pads: 1.1 mm (good 1.5 to 10 mm); outside its limits"), lines.toString());
        assertTrue(lines.contains("  steering was not looked at: no time."), lines.toString());
        assertTrue(
                lines.contains("  pads: Tarn said no to having it fixed on 12 May (asked by Ada)."), lines.toString());
        assertTrue(lines.contains("  Have this fixed: pads."), lines.toString());
        assertTrue(lines.contains("  Look at this first: steering."), lines.toString());
        assertTrue(lines.contains("  Look at this again: battery."), lines.toString());
        assertEquals("The maker's manual, local codes and licensed people come first.", lines.get(lines.size() - 1));
    }

    @Test
    void a_machine_at_which_all_is_good_says_so() {
        shed.worksThrough("ada", quad).works("bo", quad, "sign-off");
        List<String> lines = ReportText.of(ReportWriting.of(shed.day(), shed.visit(quad)));
        assertTrue(lines.contains("  Nothing that needs doing."), lines.toString());
        assertTrue(lines.contains("  Nothing but the usual service."), lines.toString());
        assertFalse(lines.contains("What was left"), lines.toString());
    }

    @Test
    void work_done_for_a_fix_is_told_as_fixed_once_it_was_looked_at_again() {
        shed.does(Shed.tick(quad, "pads", Mark.FIX));
        shed.does(Shed.ownerSaid(quad, "pads", OwnersWord.Answer.YES));
        shed.worksThrough("ada", quad);
        shed.does(new Act.Tick("bo", quad, "pads", Mark.GOOD, OptionalDouble.of(9), ""));
        List<String> lines = ReportText.of(ReportWriting.of(shed.day(), shed.visit(quad)));
        assertTrue(lines.contains("  pads was found bad and has been fixed."), lines.toString());
        assertFalse(lines.stream().anyMatch(line -> line.contains("NOT TO BE RIDDEN")), lines.toString());
    }

    @Test
    void the_page_prints_on_one_side_with_all_of_it_and_what_was_typed_as_it_was_typed() throws Exception {
        Browser.demand();
        Report report = declined();
        Path page = Files.writeString(folder.resolve("report.html"), new ReportPage(report).text());
        try (PDDocument printed = Loader.loadPDF(Browser.pdf(page))) {
            assertEquals(1, printed.getNumberOfPages());
            String text = new PDFTextStripper().getText(printed).replaceAll("\\s+", " ");
            assertTrue(text.contains(ODD), text);
            for (String line : ReportText.of(report)) {
                String plain = line.strip().replaceAll("\\s+", " ");
                boolean isTable = plain.startsWith("pads: 1.1 mm") || plain.startsWith("battery: 12.1 V");
                assertTrue(isTable || text.contains(plain), plain + " is not in " + text);
            }
            assertTrue(text.contains("pads 1.1 mm 1.5 to 10 mm outside its limits"), text);
        }
    }
}
