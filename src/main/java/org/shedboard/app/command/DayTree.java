package org.shedboard.app.command;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.shedboard.board.Yard;
import org.shedboard.day.Concern;
import org.shedboard.day.Concerns;
import org.shedboard.day.Day;
import org.shedboard.day.KnockOffChance;
import org.shedboard.day.Names;
import org.shedboard.day.Outlook;
import org.shedboard.shop.Attendance;
import org.shedboard.shop.Person;
import org.shedboard.shop.Place;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;

/** The whole day as JSON. */
final class DayTree {
    private final Outlook outlook;
    private final Day day;

    private DayTree(Outlook outlook) {
        this.outlook = outlook;
        this.day = outlook.day();
    }

    static Map<String, Object> of(Seen seen) {
        DayTree tree = new DayTree(seen.outlook());
        Day day = seen.day();
        return new Tree()
                .put("shop", day.shop().name())
                .put("date", day.date().toString())
                .put("at", Tree.time(day, seen.now()))
                .put("state", day.isClosed() ? "closed" : day.isOpened() ? "open" : "not-open")
                .put("here", tree.here())
                .put("knockOff", seen.knockOff().map(tree::knockOff))
                .put(
                        "concerns",
                        Concerns.of(seen.outlook()).stream().map(tree::concern).toList())
                .put("places", day.shop().places().stream().map(tree::place).toList())
                .put(
                        "visits",
                        Yard.of(seen.outlook()).stream()
                                .map(visit -> VisitTree.of(seen.outlook(), visit))
                                .toList())
                .put("tally", TallyTree.totals(seen.tally()))
                .fields();
    }

    /** Chances and points in a hundred; every error is a standard deviation, because only so many days were drawn. */
    private Map<String, Object> knockOff(KnockOffChance knockOff) {
        return new Tree()
                .put("at", Tree.time(day, knockOff.at()))
                .put("chance", knockOff.chance())
                .put("error", tenths(knockOff.error()))
                .put("hangsOn", knockOff.deciders().stream().map(this::decider).toList())
                .fields();
    }

    private Map<String, Object> decider(KnockOffChance.Decider decider) {
        Visit visit = day.expectVisit(decider.visitId());
        return new Tree()
                .put("visit", visit.id())
                .put("name", Names.of(day, visit))
                .put("step", decider.step())
                .put("points", decider.points())
                .put("error", tenths(decider.error()))
                .fields();
    }

    private static double tenths(double value) {
        return Math.round(10 * value) / 10.0;
    }

    private List<Map<String, Object>> here() {
        return day.opening().stream()
                .flatMap(opening -> opening.attendances().stream())
                .filter(attendance -> attendance.left().isEmpty())
                .map(this::attendance)
                .toList();
    }

    private Map<String, Object> attendance(Attendance attendance) {
        return new Tree()
                .put("person", attendance.personId())
                .put("name", day.shop().expectPerson(attendance.personId()).name())
                .put("until", Tree.time(day, attendance.until()))
                .fields();
    }

    private Map<String, Object> concern(Concern concern) {
        return new Tree()
                .put("kind", concern.kind())
                .put("visit", concern.visitId())
                .put("sentence", DayAnswer.sentence(concern))
                .fields();
    }

    private Map<String, Object> place(Place place) {
        Optional<Visit> standing = day.standingIn(place.id());
        List<Task> running = standing.stream()
                .flatMap(visit -> visit.tasks().stream())
                .filter(task -> task.progress().isRunning())
                .toList();
        return new Tree()
                .put("id", place.id())
                .put("name", place.name())
                .put("kind", place.kind())
                .put("ratedKg", place.isHoist() ? OptionalInt.of(place.ratedKg()) : OptionalInt.empty())
                .put("visit", standing.map(Visit::id))
                .put("tag", standing.map(Visit::tag).orElse(OptionalInt.empty()))
                .put("people", running.stream().map(this::worker).toList())
                .put("minutesLeft", minutesLeft(standing, running))
                .put("status", DayAnswer.statusOf(outlook, place))
                .fields();
    }

    private String worker(Task task) {
        return task.progress()
                .person()
                .flatMap(day.shop()::findPerson)
                .map(Person::name)
                .orElse("");
    }

    private OptionalInt minutesLeft(Optional<Visit> standing, List<Task> running) {
        return running.stream()
                .flatMap(task -> outlook.timeOf(standing.orElseThrow().id(), task.id()).stream())
                .mapToInt(time -> time.end() - outlook.problem().now())
                .max();
    }
}
