package org.shedboard.files;

import java.util.ArrayList;
import java.util.List;
import org.shedboard.tally.SpanTally;
import org.shedboard.tally.Stamps;
import org.shedboard.tally.TallyWords;
import org.shedboard.words.Words;

/**
 * The tally as a page in HTML to print on A4 and put into the folder. It needs nothing but itself: no script, no file beside it,
 * no network. A day of a dozen machines fits on one side.
 */
public record TallySheet(SpanTally tally) {
    private static final String STYLE = """
            @page { size: A4 portrait; margin: 9mm 12mm }
            * { box-sizing: border-box }
            html { background: #fff; color: #000 }
            body { width: 186mm; margin: 0 auto; font: 7pt/1.12 Arial, "Liberation Sans", "DejaVu Sans Condensed", sans-serif }
            @media screen { body { margin: 10mm auto } }
            header { display: flex; justify-content: space-between; align-items: flex-end; gap: 6mm; border-bottom: 0.5mm solid #000 }
            h1 { font-size: 13pt; margin: 0 0 1mm }
            h1 small { display: block; font-size: 9pt; font-weight: normal }
            header ul { text-align: right }
            h2 { font-size: 8pt; margin: 1.8mm 0 0.5mm; break-after: avoid }
            p { margin: 0.6mm 0 }
            ul { list-style: none; margin: 0 0 0.8mm; padding: 0 }
            li { overflow-wrap: anywhere }
            table { border-collapse: collapse; width: 100% }
            th, td { padding: 0.2mm 0.8mm; text-align: left; vertical-align: top; overflow-wrap: anywhere }
            thead { display: table-header-group }
            thead th { border-bottom: 0.3mm solid #000; vertical-align: bottom; overflow-wrap: normal }
            tbody th { font-weight: normal }
            tr { break-inside: avoid }
            .people tbody tr, .machines tbody, .charges tbody tr, .corrections tbody tr { border-bottom: 0.1mm solid #999 }
            .machines tbody { break-inside: avoid }
            tfoot { display: table-row-group; font-weight: bold }
            tfoot th { font-weight: bold }
            .figure { text-align: right; font-variant-numeric: tabular-nums }
            td.figure { white-space: nowrap; overflow-wrap: normal }
            small { display: block; font-size: 6.2pt }
            .people, .machines, .charges, .corrections { table-layout: fixed }
            .people thead th:first-child, .people thead th:last-child { width: 24mm }
            .charges thead th:nth-child(1) { width: 48mm }
            .corrections thead th:nth-child(1) { width: 20mm }
            .corrections thead th:nth-child(2), .corrections thead th:nth-child(3) { width: 46mm }
            .corrections thead th:nth-child(5) { width: 28mm }
            .machines thead th { width: 13mm }
            .machines thead th:nth-child(1) { width: 57mm }
            .machines thead th:nth-child(2) { width: 50mm }
            .machines thead th:nth-child(3) { width: 15mm }
            .machines thead th:nth-child(6) { width: 17mm }
            .machines thead th:nth-child(7) { width: 21mm; padding-left: 2mm }
            .machines .bar { padding-left: 2mm }
            .days { margin-top: 1.5mm }
            .days th { width: 28mm; vertical-align: middle; border: 0 }
            .days th { padding: 0 0.8mm }
            .days td { padding: 0 }
            svg { display: block; overflow: visible }
            svg text { font-size: 2.5px; text-anchor: middle; fill: #000; stroke: #fff; stroke-width: 0.7px; paint-order: stroke }
            .patterns { position: absolute; width: 0; height: 0 }
            .legend { display: flex; flex-wrap: wrap; gap: 0.6mm 5mm; font-size: 6.6pt }
            .legend span { display: flex; align-items: center; gap: 1.2mm }
            .halves { display: grid; grid-template-columns: 86mm 1fr; gap: 0 6mm; align-items: start }
            .rules { font-size: 6.4pt }
            .signatures { display: flex; gap: 10mm; margin-top: 8mm; break-inside: avoid; break-before: avoid }
            .signatures span { flex: 1; border-top: 0.3mm solid #000; padding-top: 0.5mm }
            """;

    public String text() {
        String title = TallyWords.title(tally);
        String shop = tally.ledger().books().shop().name();
        Element head = Element.of("head")
                .add(
                        Element.of("meta").with("charset", "utf-8"),
                        Element.of("meta").with("name", "viewport").with("content", "width=device-width"),
                        Element.of("title", Words.say("sheet.title", shop, title)),
                        Element.of("style", STYLE));
        return Element.of("html")
                .with("lang", Words.say("sheet.language"))
                .add(
                        head,
                        Element.of("body")
                                .add(Picture.patterns(), header(shop, title))
                                .addAll(sections()))
                .page();
    }

    private Element header(String shop, String title) {
        List<Element> notes = new ArrayList<>();
        new SheetNotes(tally)
                .closings()
                .forEach(line -> notes.add(Element.of("li", line).with("class", "closed")));
        notes.add(Element.of(
                "li",
                Words.say(
                        "sheet.seen", Stamps.full(tally.ledger(), tally.ledger().now()))));
        return Element.of("header")
                .add(
                        Element.of("h1")
                                .add(Element.of("small").add(Cells.typed(shop)))
                                .text(title),
                        Element.of("ul").addAll(notes));
    }

    private List<Element> sections() {
        SheetPeople people = new SheetPeople(tally);
        SheetMachines machines = new SheetMachines(tally);
        SheetNotes notes = new SheetNotes(tally);
        List<Element> sections = new ArrayList<>();
        sections.add(heading("sheet.people"));
        sections.add(people.figures());
        sections.addAll(people.bars());
        sections.add(heading("sheet.machines"));
        sections.add(machines.lines());
        sections.add(SheetLegend.ofEstimates());
        sections.add(Element.of("div")
                .with("class", "halves")
                .add(
                        Element.of("section").add(heading("sheet.charges"), machines.charges()),
                        Element.of("section")
                                .add(
                                        heading("sheet.shop"),
                                        notes.shop(),
                                        heading("sheet.open"),
                                        notes.open(),
                                        heading("sheet.rules"),
                                        notes.rules())));
        sections.addAll(notes.corrections());
        sections.add(notes.signatures());
        return sections;
    }

    private static Element heading(String name) {
        return Element.of("h2", Words.say(name));
    }
}
