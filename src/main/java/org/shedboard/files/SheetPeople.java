package org.shedboard.files;

import java.util.List;
import java.util.stream.Stream;
import org.shedboard.hours.PersonDay;
import org.shedboard.hours.Stretch.Use;
import org.shedboard.hours.Tally;
import org.shedboard.hours.Tally.PersonHours;
import org.shedboard.tally.SpanTally;
import org.shedboard.tally.Stamps;
import org.shedboard.words.Words;

/** The people of a sheet: their hours as figures, and each day as a bar. */
record SheetPeople(SpanTally tally) {
    /** The bars of more days would fill pages. */
    private static final int MOST_DAYS = 7;

    Element figures() {
        Element body = Element.of("tbody");
        tally.hours().people().forEach(person -> body.add(person(person)));
        return Cells.table(
                        "people",
                        Cells.head(
                                1,
                                Words.say("tally.people"),
                                Words.say("tally.attended"),
                                Words.say("tally.on_machines"),
                                Words.say("tally.other"),
                                Words.say("tally.rests"),
                                Words.say("tally.unaccounted"),
                                Words.say("tally.rounding"),
                                Words.say("tally.paid"),
                                Words.say("tally.free")))
                .add(body, Element.of("tfoot").add(together()));
    }

    private Element person(PersonHours hours) {
        return Cells.row(Stream.of(
                        Cells.heading(tally.ledger().books().nameOf(hours.personId())),
                        Cells.hours("attended", hours.attended()),
                        Cells.hours("on-machines", hours.onMachines()),
                        Cells.hours("other", hours.otherMinutes()),
                        Cells.hours("rests", hours.rests()),
                        Cells.hours("unaccounted", hours.unaccounted()),
                        Cells.signed("rounding", hours.rounding()),
                        Cells.hours("paid", hours.paid()),
                        Cells.hours("free", hours.free())))
                .with("data-person", hours.personId());
    }

    private Element together() {
        Tally hours = tally.hours();
        return Cells.row(Stream.of(
                Cells.heading(Words.say("tally.all")),
                Cells.hours("attended", hours.attended()),
                Cells.hours("on-machines", hours.onMachines()),
                Cells.hours("other", hours.minutes(use -> use == Use.OTHER_WORK)),
                Cells.hours("rests", hours.minutes(Use::isRest)),
                Cells.hours("unaccounted", hours.minutes(use -> use == Use.UNACCOUNTED)),
                Cells.signed("rounding", hours.rounding()),
                Cells.hours("paid", hours.attended() + hours.rounding()),
                Cells.hours("free", hours.minutes(use -> use == Use.FREE))));
    }

    /** One for each person and day on which they were here; none for a span longer than a week. */
    List<Element> bars() {
        List<PersonDay> days = tally.hours().days().stream()
                .filter(day -> !day.stretches().isEmpty())
                .toList();
        boolean isLong = tally.ledger()
                .from()
                .plusDays(MOST_DAYS)
                .isBefore(tally.ledger().until());
        if (isLong || days.isEmpty()) {
            return List.of();
        }
        DayAxis axis = DayAxis.of(tally);
        Element table = Cells.table(
                "days",
                Element.of("tr")
                        .add(
                                Element.of("th", Words.say("sheet.day")).with("scope", "col"),
                                Element.of("td").add(axis.names())));
        Element body = Element.of("tbody");
        for (int i = 0; i < days.size(); i++) {
            Element bar = new DayBar(tally, axis).draw(days.get(i), "day-" + i);
            body.add(Cells.row(Stream.of(
                            Cells.heading(label(days.get(i))), Element.of("td").add(bar)))
                    .with("data-person", days.get(i).personId())
                    .with("data-date", days.get(i).date().toString()));
        }
        return List.of(table.add(body), SheetLegend.ofDays(tally));
    }

    private String label(PersonDay day) {
        String name = tally.ledger().books().nameOf(day.personId());
        boolean isOne = tally.ledger().from().plusDays(1).equals(tally.ledger().until());
        return isOne ? name : Words.say("sheet.label", name, Stamps.weekday(day.date()));
    }
}
