package org.shedboard.app.command;

import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.shedboard.board.ClockTyping;
import org.shedboard.board.Found;
import org.shedboard.board.Times;
import org.shedboard.day.Day;
import org.shedboard.day.Mornings;
import org.shedboard.day.Names;
import org.shedboard.estimate.Item;
import org.shedboard.estimate.MachineClass;
import org.shedboard.estimate.Work;
import org.shedboard.hours.ClockEntry;
import org.shedboard.shop.Attendance;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Person;
import org.shedboard.shop.Place;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;

/** Finds what the words of a command line name: people, machines, places, work, times. */
final class Asked {
    /** More names than this in one sentence are no help. */
    private static final int NAMED_AT_MOST = 5;

    private final Day day;
    private final Instant now;

    Asked(Seen seen) {
        this.day = seen.day();
        this.now = seen.now();
    }

    Person person(String nameOrId) {
        return day.shop().findPersonCalled(nameOrId).orElseThrow(() -> new CannotDo("person_unknown", nameOrId));
    }

    /** The id of the person named, else of whoever is taken to act. */
    String personIdOr(Optional<String> name) {
        return name.map(this::person).map(Person::id).orElseGet(day::inCharge);
    }

    Place place(String nameOrId) {
        return find(nameOrId, place -> true).orElseThrow(() -> new CannotDo("place_unknown", nameOrId));
    }

    Place hoist(String nameOrId) {
        return find(nameOrId, Place::isHoist).orElseThrow(() -> new CannotDo("hoist_unknown", nameOrId));
    }

    private Optional<Place> find(String nameOrId, Predicate<Place> suits) {
        return day.shop().places().stream()
                .filter(suits)
                .filter(place ->
                        place.id().equalsIgnoreCase(nameOrId) || place.name().equalsIgnoreCase(nameOrId))
                .findFirst();
    }

    /** The visit with this tag or id, or the only one whose owner, label or number has these words in it. */
    Visit visit(String text) {
        Optional<Visit> named = byTag(text)
                .or(() -> day.visits().stream()
                        .filter(visit -> visit.id().equalsIgnoreCase(text))
                        .findFirst());
        if (named.isPresent()) {
            return named.get();
        }
        List<Visit> found = isTag(text)
                ? List.of()
                : Found.by(day, text).stream()
                        .flatMap(machine -> Found.visitOf(day, machine).stream())
                        .toList();
        if (found.size() > 1) {
            throw ambiguous(
                    text, found.stream().map(visit -> Names.of(day, visit)).toList());
        }
        return found.stream().findFirst().orElseThrow(() -> new CannotDo("visit_unknown", text));
    }

    private Optional<Visit> byTag(String text) {
        return isTag(text) ? day.findByTag(Integer.parseInt(text)) : Optional.empty();
    }

    private static boolean isTag(String text) {
        return text.matches("[0-9]{1,3}");
    }

    /** The machine with this id or tag, or the only one whose owner, label or number has these words in it. */
    Machine machine(String text) {
        Optional<Machine> named =
                day.books().findMachine(text).or(() -> byTag(text).map(day::machineOf));
        if (named.isPresent()) {
            return named.get();
        }
        List<Machine> found = Found.by(day, text);
        if (found.size() > 1) {
            throw ambiguous(text, found.stream().map(this::nameOf).toList());
        }
        return found.stream().findFirst().orElseThrow(() -> new CannotDo("machine_unknown", text));
    }

    private String nameOf(Machine machine) {
        return day.books().expectOwner(machine.ownerId()).name() + ", " + machine.label();
    }

    private static CannotDo ambiguous(String text, List<String> names) {
        String some = names.stream().limit(NAMED_AT_MOST).collect(Collectors.joining("; "));
        String more = names.size() > NAMED_AT_MOST ? "; …" : "";
        return new CannotDo("command.ambiguous", text, names.size(), some + more);
    }

    MachineClass machineClass(String idOrName) {
        return day.books().catalogue().classes().stream()
                .filter(each ->
                        each.id().equalsIgnoreCase(idOrName) || each.name().equalsIgnoreCase(idOrName))
                .findFirst()
                .orElseThrow(() -> new CannotDo("class_unknown", idOrName));
    }

    /** Work for machines of one class, by its key or id. */
    Work work(String classId, String keyOrId) {
        return day.books().catalogue().worksFor(classId).stream()
                .filter(work ->
                        work.key().equalsIgnoreCase(keyOrId) || work.id().equalsIgnoreCase(keyOrId))
                .findFirst()
                .orElseThrow(() -> new CannotDo("command.work_unknown", keyOrId, worksOf(classId)));
    }

    private String worksOf(String classId) {
        return day.books().catalogue().worksFor(classId).stream()
                .map(work -> work.key() + " " + work.id())
                .collect(Collectors.joining(", "));
    }

    /** The item with this id or name. */
    Item item(String idOrName) {
        return day.books().catalogue().items().stream()
                .filter(item ->
                        item.id().equalsIgnoreCase(idOrName) || item.name().equalsIgnoreCase(idOrName))
                .findFirst()
                .orElseThrow(() -> new CannotDo("item_unknown", idOrName));
    }

    /** A time as people type it; of a date such as 2026-05-14, when the shop's day begins on it. */
    Instant dateOrTime(String typed) {
        try {
            return Mornings.of(day.shop(), LocalDate.parse(typed));
        } catch (DateTimeParseException noDate) {
            return time(typed);
        }
    }

    /** What a person is on. */
    Day.Running running(Person person) {
        return day.runningOf(person.id()).orElseThrow(() -> new CannotDo("command.on_nothing", person.name()));
    }

    /** The task of a visit that somebody is on. */
    Task running(Visit visit) {
        return visit.tasks().stream()
                .filter(task -> task.progress().isRunning())
                .findFirst()
                .orElseThrow(() -> new CannotDo("command.nobody_on", Names.of(day, visit)));
    }

    /** When somebody went off what they are on; of who is on nothing, when they left. */
    Instant ended(Person person, String typed) {
        Instant began = day.openEntryOf(person.id())
                .map(ClockEntry::from)
                .or(() -> day.opening()
                        .flatMap(opened -> opened.attendanceOf(person.id()))
                        .map(Attendance::from))
                .orElse(now);
        ClockTyping.Read<Instant> read = ClockTyping.ended(typed, began, day.zone());
        return read.value().orElseThrow(() -> new CannotDo(read.fault().orElseThrow()));
    }

    Instant time(String typed) {
        return Times.parse(typed, now, day.zone()).orElseThrow(() -> new WrongUse("form.time_unread", typed));
    }
}
