package org.shedboard.files;

import java.util.ArrayList;
import java.util.List;
import org.shedboard.report.Report;
import org.shedboard.report.ReportText;
import org.shedboard.words.Words;

/**
 * A report to an owner as a page in HTML to print on A4. It needs nothing but itself: no script, no file beside it, no network. Most
 * fit on one side.
 */
public record ReportPage(Report report) {
    private static final String STYLE = """
            @page { size: A4 portrait; margin: 14mm 16mm }
            * { box-sizing: border-box }
            html { background: #fff; color: #000 }
            body { width: 178mm; margin: 0 auto; font: 10pt/1.3 Arial, "Liberation Sans", "DejaVu Sans", sans-serif }
            @media screen { body { margin: 10mm auto } }
            header { border-bottom: 0.5mm solid #000; padding-bottom: 2mm }
            h1 { font-size: 16pt; margin: 0 }
            h1 small { display: block; font-size: 10pt; font-weight: normal }
            h2 { font-size: 11.5pt; margin: 4.5mm 0 1mm; break-after: avoid }
            p { margin: 1mm 0 }
            ul { margin: 0; padding-left: 5mm }
            li { margin: 0.6mm 0; break-inside: avoid }
            h1, p, li, td { overflow-wrap: anywhere }
            .warning { border: 0.8mm solid #000; padding: 2mm 3mm; margin-top: 4mm; font-weight: bold; break-inside: avoid }
            table { border-collapse: collapse; width: 100%; table-layout: fixed }
            th, td { padding: 0.6mm 1.5mm; text-align: left; vertical-align: top }
            thead { display: table-header-group }
            thead th { border-bottom: 0.3mm solid #000 }
            tbody tr { border-bottom: 0.1mm solid #999; break-inside: avoid }
            th:nth-child(1) { width: 52mm }
            th:nth-child(2) { width: 20mm }
            th:nth-child(3) { width: 30mm }
            .cautions { margin-top: 6mm; border-top: 0.3mm solid #000; padding-top: 1.5mm; font-size: 9pt; break-inside: avoid }
            """;

    public String text() {
        Element head = Element.of("head")
                .add(
                        Element.of("meta").with("charset", "utf-8"),
                        Element.of("meta").with("name", "viewport").with("content", "width=device-width"),
                        Element.of("title", Words.say("sheet.title", report.shop(), report.title())),
                        Element.of("style", STYLE));
        return Element.of("html")
                .with("lang", Words.say("sheet.language"))
                .add(head, Element.of("body").addAll(body()))
                .page();
    }

    private List<Element> body() {
        List<Element> body = new ArrayList<>();
        body.add(header());
        if (!report.warnings().isEmpty()) {
            body.add(paragraphs("warning", report.warnings()));
        }
        for (Report.Section section : report.sections()) {
            body.add(Element.of("h2", ReportText.heading(section.kind())));
            body.add(list(section.lines()));
            if (section.kind() == Report.Kind.FOUND && !report.measured().isEmpty()) {
                body.add(Element.of("h2", Words.say("report.measured")));
                body.add(measured());
            }
        }
        body.add(paragraphs("cautions", report.cautions()));
        return body;
    }

    private Element header() {
        return Element.of("header")
                .add(
                        Element.of("h1")
                                .add(Element.of("small").add(Cells.typed(report.shop())))
                                .add(Cells.typed(report.title())),
                        Element.of("p").add(Cells.typed(String.join(", ", report.about()))));
    }

    private static Element paragraphs(String kind, List<String> lines) {
        return Element.of("div")
                .with("class", kind)
                .addAll(lines.stream()
                        .map(line -> Element.of("p").add(Cells.typed(line)))
                        .toList());
    }

    private static Element list(List<String> lines) {
        return Element.of("ul")
                .addAll(lines.stream()
                        .map(line -> Element.of("li").add(Cells.typed(line)))
                        .toList());
    }

    private Element measured() {
        Element heads = Element.of("tr")
                .add(
                        Element.of("th", Words.say("report.column_point")),
                        Element.of("th", Words.say("report.column_value")),
                        Element.of("th", Words.say("report.column_good")),
                        Element.of("th", Words.say("report.column_wear")));
        return Element.of("table")
                .add(
                        Element.of("thead").add(heads),
                        Element.of("tbody")
                                .addAll(report.measured().stream()
                                        .map(ReportPage::row)
                                        .toList()));
    }

    private static Element row(Report.Row row) {
        return Element.of("tr")
                .addAll(List.of(row.point(), row.value(), row.good(), row.wear()).stream()
                        .map(text -> Element.of("td").add(Cells.typed(text)))
                        .toList());
    }
}
