package org.shedboard.app.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.shedboard.day.Clocks;
import org.shedboard.day.Day;
import org.shedboard.day.Wear;
import org.shedboard.fit.StraightLine;
import org.shedboard.register.Measured;
import org.shedboard.report.FindingWords;
import org.shedboard.report.WearWords;
import org.shedboard.shop.Machine;
import org.shedboard.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** What was measured at a machine over its visits, how it wears and when it reaches its limits. */
@Command(name = "wear")
final class WearCommand implements Wish.OnTheDay {
    @Parameters(index = "0", paramLabel = "MACHINE", descriptionKey = "option.machine_any")
    private String machine;

    @Override
    public Reply reply(Seen seen) {
        Machine asked = new Asked(seen).machine(machine);
        Day day = seen.dayKnowing(asked.id());
        List<Wear> all = day.books().catalogue().expectClass(asked.classId()).points().stream()
                .map(point -> Wear.of(point, day.books().register().measuredAt(asked.id(), point.id())))
                .filter(wear -> wear.newest().isPresent())
                .toList();
        return new Reply.Tell(new Answer(lines(day, asked, all), tree(day, asked, all)));
    }

    private static List<String> lines(Day day, Machine machine, List<Wear> all) {
        List<String> lines = new ArrayList<>();
        lines.add(Words.say(
                "command.wear.title", day.books().expectOwner(machine.ownerId()).name(), machine.label()));
        if (all.isEmpty()) {
            lines.add(Words.say("command.wear.nothing"));
        }
        for (Wear wear : all) {
            lines.add(WearWords.line(wear));
            wear.values().forEach(each -> lines.add("  " + said(day, wear, each)));
        }
        return lines;
    }

    private static String said(Day day, Wear wear, Measured measured) {
        String hours = measured.meterHours().isPresent()
                ? Words.say("sheet.meter", measured.meterHours().getAsInt())
                : Words.say("command.wear.no_meter");
        return Words.say(
                "command.wear.value",
                Clocks.sayDate(day, measured.finding().at()),
                hours,
                FindingWords.value(wear.point(), measured.value()),
                day.nameOf(measured.finding().by()));
    }

    private static Map<String, Object> tree(Day day, Machine machine, List<Wear> all) {
        return new Tree()
                .put("machine", machine.id())
                .put("label", machine.label())
                .put("points", all.stream().map(wear -> point(day, wear)).toList())
                .fields();
    }

    private static Map<String, Object> point(Day day, Wear wear) {
        Tree tree = new Tree()
                .put("point", wear.point().id())
                .put("name", wear.point().name())
                .put("unit", wear.point().measure().map(measure -> measure.unit()))
                .put("low", wear.point().measure().map(measure -> measure.low()))
                .put("high", wear.point().measure().map(measure -> measure.high()))
                .put("within", wear.isWithin())
                .put("perHundredHours", wear.line().map(StraightLine::perHundredHours))
                .put("limit", wear.limit().map(Wear.Limit::value))
                .put("reachedAtHours", wear.limit().map(limit -> limit.at().likely()));
        wear.limit().ifPresent(limit -> {
            limit.at().early().ifPresent(hours -> tree.put("earliestHours", hours));
            limit.at().late().ifPresent(hours -> tree.put("latestHours", hours));
        });
        return tree.put(
                        "values",
                        wear.values().stream().map(each -> value(day, each)).toList())
                .fields();
    }

    private static Map<String, Object> value(Day day, Measured measured) {
        return new Tree()
                .put("visit", measured.visitId())
                .put("at", Tree.time(day, measured.finding().at()))
                .put("meterHours", measured.meterHours())
                .put("value", measured.value())
                .put("by", measured.finding().by())
                .fields();
    }
}
