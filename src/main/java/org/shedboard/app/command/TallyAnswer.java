package org.shedboard.app.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.shedboard.day.Day;
import org.shedboard.day.DayTally;
import org.shedboard.day.Names;
import org.shedboard.hours.DecimalHours;
import org.shedboard.hours.Tally;
import org.shedboard.shop.Person;
import org.shedboard.shop.Visit;
import org.shedboard.words.Words;

/** The hours of a day said, per person and per visit. */
final class TallyAnswer {
    private final Day day;
    private final Tally tally;
    private final DayTally.Promises promises;

    private TallyAnswer(Seen seen) {
        this.day = seen.day();
        this.tally = DayTally.of(day, seen.now());
        this.promises = DayTally.promises(day, seen.now());
    }

    static Answer of(Seen seen) {
        TallyAnswer answer = new TallyAnswer(seen);
        return new Answer(answer.lines(), answer.tree());
    }

    /** One line, or none while the day is not open. */
    static List<String> summary(Seen seen) {
        return seen.day().isOpened() ? List.of(new TallyAnswer(seen).line()) : List.of();
    }

    static Map<String, Object> totals(Seen seen) {
        return new TallyAnswer(seen).totals().fields();
    }

    private String line() {
        return Words.say(
                "command.tally.line",
                DecimalHours.of(tally.attended()),
                DecimalHours.of(tally.onMachines()),
                DecimalHours.of(other()),
                DecimalHours.of(unaccounted()),
                promises.due(),
                promises.kept());
    }

    private int other() {
        return tally.people().stream().mapToInt(Tally.PersonHours::otherMinutes).sum();
    }

    private int unaccounted() {
        return tally.people().stream().mapToInt(Tally.PersonHours::unaccounted).sum();
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(Words.say("tally.title", DayAnswer.DATE.format(day.date())));
        if (!day.isOpened()) {
            lines.add(Words.say("command.tally.empty"));
            return lines;
        }
        lines.addAll(people().lines());
        lines.addAll(visits().lines());
        lines.add(Words.say("tally.promises", promises.due(), promises.kept()));
        if (day.isClosed()) {
            lines.add(Words.say("tally.closed"));
        }
        return lines;
    }

    private Table people() {
        Table table = new Table("lrrrr");
        table.row(
                Words.say("tally.people"),
                Words.say("tally.attended"),
                Words.say("tally.on_machines"),
                Words.say("tally.other"),
                Words.say("tally.unaccounted"));
        for (Tally.PersonHours hours : tally.people()) {
            add(
                    table,
                    nameOf(hours.personId()),
                    hours.attended(),
                    hours.onMachines(),
                    hours.otherMinutes(),
                    hours.unaccounted());
        }
        add(table, Words.say("tally.all"), tally.attended(), tally.onMachines(), other(), unaccounted());
        return table;
    }

    private static void add(Table table, String who, int attended, int onMachines, int other, int unaccounted) {
        table.row(who, hours(attended), hours(onMachines), hours(other), hours(unaccounted));
    }

    private static String hours(int minutes) {
        return Words.say("tally.hours", DecimalHours.of(minutes));
    }

    private Table visits() {
        Table table = new Table("lrrrl");
        table.row(
                Words.say("tally.visits"),
                Words.say("tally.estimated"),
                Words.say("tally.worked"),
                Words.say("tally.cleaning"),
                Words.say("tally.who"));
        for (Tally.VisitHours hours : tally.visits()) {
            day.findVisit(hours.visitId()).ifPresent(visit -> add(table, hours, visit));
        }
        return table;
    }

    private void add(Table table, Tally.VisitHours hours, Visit visit) {
        table.row(
                Names.of(day, visit),
                Words.say("tally.minutes", DayTally.estimatedOf(day, visit)),
                Words.say("tally.minutes", hours.worked()),
                Words.say("tally.minutes", hours.cleaning()),
                hours.people().stream().map(this::nameOf).collect(Collectors.joining(", ")));
    }

    private String nameOf(String personId) {
        return day.shop().findPerson(personId).map(Person::name).orElse(personId);
    }

    private Map<String, Object> tree() {
        return totals().put("date", day.date().toString())
                .put("state", day.isClosed() ? "closed" : day.isOpened() ? "open" : "not-open")
                .put("people", tally.people().stream().map(this::person).toList())
                .put(
                        "visits",
                        tally.visits().stream()
                                .flatMap(hours ->
                                        day.findVisit(hours.visitId()).map(visit -> visit(hours, visit)).stream())
                                .toList())
                .fields();
    }

    private Tree totals() {
        return new Tree()
                .put("attended", tally.attended())
                .put("onMachines", tally.onMachines())
                .put("other", other())
                .put("unaccounted", unaccounted())
                .put("promisesDue", promises.due())
                .put("promisesKept", promises.kept());
    }

    private Map<String, Object> person(Tally.PersonHours hours) {
        return new Tree()
                .put("person", hours.personId())
                .put("name", nameOf(hours.personId()))
                .put("attended", hours.attended())
                .put("onMachines", hours.onMachines())
                .put("other", hours.otherMinutes())
                .put("unaccounted", hours.unaccounted())
                .fields();
    }

    private Map<String, Object> visit(Tally.VisitHours hours, Visit visit) {
        return new Tree()
                .put("visit", hours.visitId())
                .put("name", Names.of(day, visit))
                .put("estimated", DayTally.estimatedOf(day, visit))
                .put("worked", hours.worked())
                .put("cleaning", hours.cleaning())
                .put("people", hours.people().stream().map(this::nameOf).toList())
                .fields();
    }
}
