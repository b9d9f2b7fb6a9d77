package org.shedboard.app.command;

import java.util.ArrayList;
import java.util.List;
import org.shedboard.day.Names;
import org.shedboard.hours.DecimalHours;
import org.shedboard.hours.Stretch.Use;
import org.shedboard.hours.Tally.PersonHours;
import org.shedboard.tally.LineTally;
import org.shedboard.tally.SpanTally;
import org.shedboard.tally.TallyWords;
import org.shedboard.tally.VisitTally;
import org.shedboard.words.Words;

/** The hours of a day or a span said: per person, per machine and line, and of the shop. */
final class TallyAnswer {
    private final SpanTally tally;
    private final List<PersonHours> people;

    private TallyAnswer(SpanTally tally) {
        this.tally = tally;
        this.people = tally.hours().people();
    }

    static Answer of(SpanTally tally) {
        return new Answer(new TallyAnswer(tally).lines(), TallyTree.of(tally));
    }

    /** One line, or none while the day is not open. */
    static List<String> summary(Seen seen) {
        return seen.day().isOpened() ? List.of(new TallyAnswer(seen.tally()).line()) : List.of();
    }

    private String line() {
        return Words.say(
                "command.tally.line",
                DecimalHours.of(tally.hours().attended()),
                DecimalHours.of(tally.hours().onMachines()),
                DecimalHours.of(tally.hours().minutes(use -> use == Use.OTHER_WORK)),
                DecimalHours.of(tally.hours().minutes(use -> use == Use.UNACCOUNTED)),
                tally.promises().due(),
                tally.promises().kept());
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(TallyWords.title(tally));
        if (tally.ledger().openings().isEmpty() && tally.hours().days().isEmpty()) {
            lines.add(Words.say("command.tally.empty"));
            return lines;
        }
        lines.addAll(TallyWords.open(tally));
        lines.addAll(people().lines());
        lines.addAll(TallyWords.kinds(tally));
        lines.addAll(machines().lines());
        lines.addAll(TallyWords.shop(tally));
        lines.add(Words.say("tally.charged_all", DecimalHours.of(tally.chargeable())));
        lines.addAll(TallyWords.rules(tally.ledger().books().hoursRules()));
        if (tally.isClosed()) {
            lines.add(closed());
        }
        return lines;
    }

    private String closed() {
        return tally.ledger().openings().stream()
                .filter(opening ->
                        opening.date().plusDays(1).equals(tally.ledger().until()))
                .flatMap(opening -> opening.closed().stream())
                .map(closed -> TallyWords.closed(tally, closed))
                .findFirst()
                .orElse(Words.say("tally.closed"));
    }

    private Table people() {
        Table table = new Table("lrrrrrrrr");
        table.row(
                Words.say("tally.people"),
                Words.say("tally.attended"),
                Words.say("tally.on_machines"),
                Words.say("tally.other"),
                Words.say("tally.rests"),
                Words.say("tally.unaccounted"),
                Words.say("tally.rounding"),
                Words.say("tally.paid"),
                Words.say("tally.free"));
        people.forEach(person -> person(table, person));
        int rounding = tally.hours().rounding();
        table.row(
                Words.say("tally.all"),
                hours(tally.hours().attended()),
                hours(tally.hours().onMachines()),
                hours(tally.hours().minutes(use -> use == Use.OTHER_WORK)),
                hours(tally.hours().minutes(Use::isRest)),
                hours(tally.hours().minutes(use -> use == Use.UNACCOUNTED)),
                TallyWords.signed(rounding),
                hours(tally.hours().attended() + rounding),
                hours(tally.hours().minutes(use -> use == Use.FREE)));
        return table;
    }

    private void person(Table table, PersonHours hours) {
        table.row(
                tally.ledger().books().nameOf(hours.personId()),
                hours(hours.attended()),
                hours(hours.onMachines()),
                hours(hours.otherMinutes()),
                hours(hours.rests()),
                hours(hours.unaccounted()),
                TallyWords.signed(hours.rounding()),
                hours(hours.paid()),
                hours(hours.free()));
    }

    private Table machines() {
        Table table = new Table("lrrrrl");
        table.row(
                Words.say("tally.visits"),
                Words.say("tally.estimated"),
                Words.say("tally.worked"),
                Words.say("tally.cleaning"),
                Words.say("tally.charged"),
                Words.say("tally.who"));
        tally.visits().forEach(visit -> machine(table, visit));
        return table;
    }

    private void machine(Table table, VisitTally visit) {
        table.row(
                Names.of(tally.ledger().books(), visit.visit()),
                minutes(visit.estimated()),
                minutes(visit.worked()),
                minutes(visit.cleaning()),
                "",
                TallyWords.who(tally, visit));
        for (LineTally line : visit.lines()) {
            table.row(
                    "  " + line.line().name() + ", " + Words.say(line.line().payer()),
                    minutes(line.estimated()),
                    minutes(line.worked()),
                    minutes(line.cleaning()),
                    line.chargeable().isPresent() ? hours(line.chargeable().getAsInt()) : "",
                    "");
        }
    }

    private static String hours(int minutes) {
        return Words.say("tally.hours", DecimalHours.of(minutes));
    }

    private static String minutes(int minutes) {
        return Words.say("tally.minutes", minutes);
    }
}
