package org.shedboard.files;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.shedboard.hours.ClockEntry;
import org.shedboard.hours.Correction;
import org.shedboard.shop.Opening;
import org.shedboard.tally.HoursRow;
import org.shedboard.tally.Ledger;
import org.shedboard.tally.SpanTally;
import org.shedboard.tally.Stamps;
import org.shedboard.tally.TallyWords;
import org.shedboard.words.Words;

/** What stands on a sheet besides its figures: who closed the day, what is open, what was put right, by what rules. */
record SheetNotes(SpanTally tally) {
    /** The closings of more days than a week has are counted, not listed. */
    private static final int MOST_CLOSINGS = 7;

    /** Who closed the day, or each of the days, and when. */
    List<String> closings() {
        List<Opening> openings = tally.ledger().openings();
        if (openings.isEmpty()) {
            return List.of(Words.say("command.tally.empty"));
        }
        if (isOneDay()) {
            return List.of(closing(openings.get(0)));
        }
        List<Opening> listed = openings.stream()
                .filter(opening ->
                        openings.size() <= MOST_CLOSINGS || opening.closed().isEmpty())
                .toList();
        List<String> closings = new ArrayList<>();
        closings.add(Words.say("sheet.days", openings.size(), openings.size() - unclosed()));
        listed.forEach(
                opening -> closings.add(Words.say("sheet.closing", Stamps.date(opening.date()), closing(opening))));
        return closings;
    }

    private boolean isOneDay() {
        return tally.ledger().from().plusDays(1).equals(tally.ledger().until());
    }

    private long unclosed() {
        return tally.ledger().openings().stream()
                .filter(opening -> opening.closed().isEmpty())
                .count();
    }

    private String closing(Opening opening) {
        return opening.closed().map(closed -> TallyWords.closed(tally, closed)).orElse(Words.say("sheet.not_closed"));
    }

    Element open() {
        List<String> open = TallyWords.open(tally);
        return list("open", open.isEmpty() ? List.of(Words.say("sheet.nothing_open")) : open);
    }

    /** Hoists, promises and ratios. */
    Element shop() {
        return list("shop", TallyWords.shop(tally));
    }

    Element rules() {
        List<String> rules = TallyWords.rules(tally.ledger().books().hoursRules());
        return Element.of("p", String.join(" ", rules)).with("class", "rules");
    }

    private static Element list(String name, List<String> lines) {
        return Element.of("ul")
                .with("class", name)
                .addAll(lines.stream().map(line -> Element.of("li", line)).toList());
    }

    /** Every row that was put right, with what it says now and what it said before; none where nothing was. */
    List<Element> corrections() {
        Element body = Element.of("tbody");
        List<HoursRow> corrected = HoursRow.of(tally).stream()
                .filter(row -> row.entry().correction().isPresent())
                .toList();
        corrected.forEach(
                row -> body.add(correction(row, row.entry().correction().orElseThrow())));
        Element table = Cells.table(
                "corrections",
                Cells.head(
                        5,
                        Words.say("tally.people"),
                        Words.say("sheet.before"),
                        Words.say("sheet.after"),
                        Words.say("sheet.why"),
                        Words.say("sheet.by")));
        return corrected.isEmpty()
                ? List.of()
                : List.of(Element.of("h2", Words.say("sheet.corrections")), table.add(body));
    }

    private Element correction(HoursRow row, Correction correction) {
        Ledger ledger = tally.ledger();
        return Cells.row(Stream.of(
                        Cells.heading(ledger.books().nameOf(row.entry().personId())),
                        Cells.text("before", row.replaced().map(this::said).orElse(Words.say("sheet.not_there"))),
                        Cells.text("after", row.counts() ? said(row.entry()) : Words.say("sheet.struck")),
                        Cells.text("why", correction.why()),
                        Cells.text(
                                "by",
                                Words.say(
                                        "sheet.who_when",
                                        ledger.books().nameOf(correction.by()),
                                        Stamps.of(ledger, correction.at())))))
                .with("data-row", row.entry().id());
    }

    private String said(ClockEntry entry) {
        Ledger ledger = tally.ledger();
        return Words.say(
                "sheet.stretch",
                Stamps.of(ledger, entry.from()),
                entry.to().map(to -> Stamps.of(ledger, to)).orElse(Words.say("rows.goes_on")),
                TallyWords.on(tally, entry));
    }

    /** Where the foreman signs. */
    Element signatures() {
        return Element.of("p")
                .with("class", "signatures")
                .add(Element.of("span", Words.say("sheet.foreman")), Element.of("span", Words.say("sheet.date")));
    }
}
