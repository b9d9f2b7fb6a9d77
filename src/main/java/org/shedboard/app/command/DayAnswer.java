package org.shedboard.app.command;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.shedboard.board.Errands;
import org.shedboard.board.Yard;
import org.shedboard.day.Clocks;
import org.shedboard.day.Concern;
import org.shedboard.day.Concerns;
import org.shedboard.day.Day;
import org.shedboard.day.KnockOffChance;
import org.shedboard.day.Names;
import org.shedboard.day.Outlook;
import org.shedboard.hours.Errand;
import org.shedboard.screen.PlaceStatus;
import org.shedboard.screen.YardEntry;
import org.shedboard.shop.Place;
import org.shedboard.shop.Visit;
import org.shedboard.words.When;
import org.shedboard.words.Words;

/** The whole day said: what needs the foreman, each place, the yard in planned order, the hours. */
public final class DayAnswer {
    private final Seen seen;
    private final Outlook outlook;
    private final Day day;

    private DayAnswer(Seen seen) {
        this.seen = seen;
        this.outlook = seen.outlook();
        this.day = seen.day();
    }

    public static Answer of(Seen seen) {
        return new Answer(new DayAnswer(seen).lines(), DayTree.of(seen));
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(Words.say(
                "command.day.title",
                day.shop().name(),
                When.WEEKDAY_FULL_DATE.say(day.date()),
                Clocks.sayTime(day, seen.now()),
                state()));
        seen.knockOff().ifPresent(chance -> lines.add(knockOff(chance)));
        lines.add(Words.say("board.needs_you"));
        lines.addAll(concerns());
        lines.add(Words.say("board.places"));
        lines.addAll(places());
        lines.add(Words.say("command.day.yard"));
        lines.addAll(yard());
        lines.addAll(errands());
        lines.addAll(TallyAnswer.summary(seen));
        return lines;
    }

    private List<String> errands() {
        return day.errands().stream()
                .filter(Errand::isOpen)
                .map(errand -> Words.say(
                        "command.day.errand", errand.id(), day.nameOf(errand.personId()), Errands.say(day, errand)))
                .toList();
    }

    private String state() {
        if (day.isClosed()) {
            return Words.say("board.closed");
        }
        long here = day.shop().people().stream().filter(day::isHere).count();
        return day.isOpened() ? Words.say("board.here", here) : Words.say("command.day.not_open");
    }

    private String knockOff(KnockOffChance chance) {
        String at = Clocks.sayTime(day, chance.at());
        String deciders = chance.deciders().stream()
                .map(decider -> Words.say(
                        "command.day.decider",
                        Names.of(day, day.expectVisit(decider.visitId())),
                        Words.say(decider.step()),
                        decider.points()))
                .collect(Collectors.joining("; "));
        return deciders.isEmpty()
                ? Words.say("command.day.knock_off", at, chance.chance())
                : Words.say("command.day.knock_off_hangs_on", at, chance.chance(), deciders);
    }

    private List<String> concerns() {
        List<Concern> concerns = Concerns.of(outlook);
        return concerns.isEmpty()
                ? List.of("  " + Words.say("board.nothing"))
                : concerns.stream().map(concern -> "  " + sentence(concern)).toList();
    }

    /** The concern's sentence; one that names a key of the full screen is put differently here. */
    static String sentence(Concern concern) {
        String name = concern.kind() == Concern.Kind.HOIST_UNCHECKED
                ? "command.hoist_unchecked"
                : "concern." + concern.kind();
        return Words.say(name, concern.values());
    }

    private List<String> places() {
        Table table = new Table("lll");
        for (Place place : day.shop().places()) {
            table.row(place.id(), place.name(), statusOf(outlook, place));
        }
        return table.lines();
    }

    static String statusOf(Outlook outlook, Place place) {
        PlaceStatus status = PlaceStatus.of(outlook, place);
        return status.more().isEmpty() ? status.text() : status.text() + ", " + status.more();
    }

    private List<String> yard() {
        List<Visit> listed = Yard.of(outlook);
        if (listed.isEmpty()) {
            return List.of("  " + Words.say("command.day.empty"));
        }
        Table table = new Table("rllllrlrrr");
        table.row(
                Words.say("board.tag"),
                Words.say("board.owner"),
                Words.say("board.machine"),
                Words.say("board.mud"),
                Words.say("board.depth"),
                Words.say("board.likely"),
                Words.say("board.next"),
                Words.say("board.ready"),
                Words.say("board.promise"),
                Words.say("board.chance"));
        listed.forEach(visit -> add(table, new YardEntry(outlook, visit)));
        return table.lines();
    }

    private static String warning(YardEntry entry) {
        return entry.isStopped() ? Words.say("board.do_not_ride") + " " : "";
    }

    private static void add(Table table, YardEntry entry) {
        table.row(
                entry.tag(),
                warning(entry) + entry.owner(),
                entry.label(),
                entry.mud(),
                entry.depth(),
                entry.minutes(),
                entry.where(),
                entry.ready(),
                entry.promise(),
                entry.chance());
    }
}
