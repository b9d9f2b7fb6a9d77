package org.shedboard.app.command;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shedboard.board.PartWords;
import org.shedboard.day.Clocks;
import org.shedboard.day.Day;
import org.shedboard.day.Need;
import org.shedboard.day.Needs;
import org.shedboard.day.NextTask;
import org.shedboard.day.Outlook;
import org.shedboard.day.Riding;
import org.shedboard.estimate.Point;
import org.shedboard.files.Fields;
import org.shedboard.hours.Activity;
import org.shedboard.screen.YardEntry;
import org.shedboard.shop.Person;
import org.shedboard.shop.Place;
import org.shedboard.words.Words;

/** What one person is on or goes to next, said. */
final class NextAnswer {
    private final Outlook outlook;
    private final Day day;
    private final Person person;
    private final List<NextTask> all;

    private NextAnswer(Outlook outlook, Person person) {
        this.outlook = outlook;
        this.day = outlook.day();
        this.person = person;
        this.all = NextTask.all(outlook, person);
    }

    static Answer of(Outlook outlook, Person person) {
        NextAnswer answer = new NextAnswer(outlook, person);
        return new Answer(answer.lines(), answer.tree());
    }

    private Optional<NextTask> next() {
        return all.stream().findFirst();
    }

    private Optional<Activity.OtherWork> otherWork() {
        return day.openEntryOf(person.id())
                .map(entry -> entry.activity())
                .filter(Activity.OtherWork.class::isInstance)
                .map(Activity.OtherWork.class::cast);
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>();
        otherWork().ifPresent(other -> lines.add(Words.say("next.other", person.name(), kindOf(other))));
        if (next().isEmpty()) {
            lines.add(Words.say("next.nothing", person.name()));
            return lines;
        }
        NextTask next = next().get();
        lines.add(Words.say(next.isRunning() ? "next.on_it" : "next.your_next", person.name()));
        about(lines, next);
        next.openPoints().forEach(point -> lines.add("  " + said(point)));
        lines.add(Words.say("next.after", then()));
        return lines;
    }

    private static String kindOf(Activity.OtherWork other) {
        return Words.say("otherWork." + other.kind());
    }

    private void about(List<String> lines, NextTask next) {
        YardEntry entry = new YardEntry(outlook, next.visit());
        String label = day.machineOf(next.visit()).label();
        String owner = label.isBlank() ? entry.owner() : entry.owner() + ", " + label;
        lines.add("  " + entry.tag() + "  " + owner);
        if (entry.isStopped()) {
            lines.add("  " + Words.say("board.do_not_ride"));
        }
        lines.add("  " + placeOf(next));
        lines.add("  "
                + Words.say(
                        next.isRunning() ? "next.now" : "next.first",
                        next.task().name()));
        lines.add("  " + times(next));
        if (!next.task().caution().isEmpty()) {
            lines.add("  " + Words.say("next.caution", next.task().caution()));
        }
        toCheck(next).forEach(sentence -> lines.add("  " + sentence));
    }

    /** Which part to look for on the machine, for each of which that is open. */
    private List<String> toCheck(NextTask next) {
        return Needs.of(day, next.visit(), next.task()).stream()
                .filter(Need::isOpen)
                .map(need -> PartWords.toCheck(day, need))
                .toList();
    }

    private String placeOf(NextTask next) {
        return next.placeId()
                .map(id -> id + " " + day.shop().findPlace(id).map(Place::name).orElse(""))
                .orElse(Words.say("next.anywhere"));
    }

    private String times(NextTask next) {
        String by = Words.say("next.by", Clocks.sayTime(day, next.until()));
        if (next.isRunning()) {
            return Words.say("next.left", minutes(outlook, next)) + ", " + by;
        }
        return Words.say("next.from", Clocks.sayTime(day, next.from())) + ", " + by;
    }

    /** Minutes until the plan has it over: from now where it runs, else from its planned start. */
    private static long minutes(Outlook outlook, NextTask next) {
        return Duration.between(next.isRunning() ? outlook.at() : next.from(), next.until())
                .toMinutes();
    }

    private static String said(Point point) {
        String caution = point.caution().isEmpty() ? "" : ". " + Words.say("next.caution", point.caution());
        return Words.say("command.next.point", point.id(), point.name(), point.where()) + caution;
    }

    private String then() {
        if (all.size() < 2) {
            return Words.say("next.none_after");
        }
        NextTask after = all.get(1);
        return new YardEntry(outlook, after.visit()).tag() + " " + after.task().name();
    }

    private Map<String, Object> tree() {
        return new Tree()
                .put("person", person.id())
                .put("name", person.name())
                .put("otherWork", otherWork().map(other -> Fields.nameOf(other.kind())))
                .put("task", next().map(this::task))
                .put(
                        "after",
                        all.stream()
                                .skip(1)
                                .map(this::briefly)
                                .map(Tree::fields)
                                .toList())
                .fields();
    }

    private Map<String, Object> task(NextTask next) {
        return briefly(next)
                .put("owner", day.ownerOf(next.visit()).name())
                .put("machine", day.machineOf(next.visit()).label())
                .put("running", next.isRunning())
                .put("minutes", minutes(outlook, next))
                .put("caution", next.task().caution())
                .put("check", toCheck(next))
                .put("notToBeRidden", Riding.isStopped(day, next.visit()))
                .put("points", next.openPoints().stream().map(NextAnswer::point).toList())
                .fields();
    }

    private Tree briefly(NextTask next) {
        return new Tree()
                .put("visit", next.visit().id())
                .put("tag", next.visit().tag())
                .put("task", next.task().id())
                .put("name", next.task().name())
                .put("place", next.placeId())
                .put("from", Tree.time(day, next.from()))
                .put("until", Tree.time(day, next.until()));
    }

    private static Map<String, Object> point(Point point) {
        return new Tree()
                .put("point", point.id())
                .put("name", point.name())
                .put("where", point.where())
                .put("caution", point.caution())
                .put("unit", point.measure().map(Point.Measure::unit))
                .put("low", point.measure().map(Point.Measure::low))
                .put("high", point.measure().map(Point.Measure::high))
                .fields();
    }
}
