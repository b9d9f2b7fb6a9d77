package org.shedboard.files;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.shedboard.day.Books;
import org.shedboard.shop.Owner;
import org.shedboard.shop.Payer;
import org.shedboard.shop.Visit;
import org.shedboard.tally.LineTally;
import org.shedboard.tally.SpanTally;
import org.shedboard.tally.TallyWords;
import org.shedboard.tally.VisitTally;
import org.shedboard.words.Words;

/** The machines of a sheet, line by line, and what is charged to whom. */
record SheetMachines(SpanTally tally) {
    /** Whom something is charged to. */
    private record Account(Owner owner, Payer payer) {}

    Element lines() {
        Element table = Cells.table(
                "machines",
                Cells.head(
                                2,
                                Words.say("tally.visits"),
                                Words.say("sheet.line"),
                                Words.say("tally.estimated"),
                                Words.say("tally.worked"),
                                Words.say("tally.cleaning"),
                                Words.say("sheet.charged_hours"))
                        .add(Element.of("th", Words.say("sheet.beside")).with("scope", "col")));
        EstimateBar bar = EstimateBar.of(tally);
        tally.visits().forEach(visit -> table.add(visit(visit, bar)));
        return table.add(Element.of("tfoot").add(together()));
    }

    private Element visit(VisitTally tallied, EstimateBar bar) {
        Visit visit = tallied.visit();
        String owner = books().ownerOf(visit).name();
        Element group = Element.of("tbody").with("data-visit", visit.id());
        for (int i = 0; i < tallied.lines().size(); i++) {
            List<Element> cells = new ArrayList<>();
            if (i == 0) {
                cells.add(spanning(Element.of("th").with("scope", "rowgroup"), tallied)
                        .addAll(name(tallied, owner)));
            }
            cells.addAll(line(tallied.lines().get(i)));
            if (i == 0) {
                cells.add(spanning(Element.of("td").with("class", "bar"), tallied)
                        .add(bar.draw(tallied, owner, "estimate-" + visit.id())));
            }
            group.add(Cells.row(cells.stream())
                    .with("data-line", tallied.lines().get(i).line().id()));
        }
        return group;
    }

    private static Element spanning(Element cell, VisitTally visit) {
        return cell.with("rowspan", visit.lines().size());
    }

    private List<Element> name(VisitTally tallied, String owner) {
        Visit visit = tallied.visit();
        List<Element> name = new ArrayList<>();
        if (visit.tag().isPresent()) {
            name.add(Element.of("b", visit.tag().getAsInt() + " "));
        }
        name.add(Cells.typed(owner).with("class", "owner"));
        name.add(Element.of("small")
                .add(Cells.typed(books().machineOf(visit).label()))
                .text(who(tallied)));
        return name;
    }

    private String who(VisitTally visit) {
        String who = TallyWords.who(tally, visit);
        return who.isEmpty() ? "" : ": " + who;
    }

    private static List<Element> line(LineTally line) {
        return List.of(
                Element.of("td")
                        .with("class", "line")
                        .add(Cells.typed(line.line().name()))
                        .text(", " + Words.say(line.line().payer())),
                Cells.minutes("estimated", line.estimated()),
                Cells.minutes("worked", line.worked()),
                Cells.minutes("cleaning", line.cleaning()),
                line.chargeable().isPresent()
                        ? Cells.hours("charged", line.chargeable().getAsInt())
                        : Cells.none());
    }

    private Element together() {
        return Cells.row(Stream.of(
                Cells.heading(Words.say("tally.all")),
                Cells.none(),
                Cells.minutes("estimated", tally.estimated()),
                Cells.minutes(
                        "worked",
                        tally.visits().stream().mapToInt(VisitTally::worked).sum()),
                Cells.minutes(
                        "cleaning",
                        tally.visits().stream().mapToInt(VisitTally::cleaning).sum()),
                Cells.hours("charged", tally.chargeable()),
                Cells.none()));
    }

    /** The sum for each owner and payer of what is charged for machines that are done. */
    Element charges() {
        Element body = Element.of("tbody");
        sums().forEach((account, minutes) -> body.add(Cells.row(Stream.of(
                        Cells.heading(account.owner().name()),
                        Cells.text("payer", Words.say(account.payer())),
                        Cells.hours("charged", minutes)))
                .with("data-owner", account.owner().id())
                .with("data-payer", Fields.nameOf(account.payer()))));
        Element together = Cells.row(Stream.of(
                Cells.heading(Words.say("tally.all")), Cells.none(), Cells.hours("charged", tally.chargeable())));
        return Cells.table(
                        "charges",
                        Cells.head(2, Words.say("sheet.owner"), Words.say("sheet.payer"), Words.say("tally.charged")))
                .add(body, Element.of("tfoot").add(together));
    }

    private Map<Account, Integer> sums() {
        Map<Account, Integer> sums = new LinkedHashMap<>();
        for (VisitTally visit : tally.visits()) {
            for (LineTally line : visit.lines()) {
                Account account =
                        new Account(books().ownerOf(visit.visit()), line.line().payer());
                line.chargeable().ifPresent(minutes -> sums.merge(account, minutes, Integer::sum));
            }
        }
        return sums;
    }

    private Books books() {
        return tally.ledger().books();
    }
}
