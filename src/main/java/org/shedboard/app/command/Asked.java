package org.shedboard.app.command;

import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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
import org.shedboard.register.Finder;
import org.shedboard.register.Grade;
import org.shedboard.shop.Attendance;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Owner;
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

    /** The id of the person named, where somebody is. */
    Optional<String> idOf(Optional<String> name) {
        return name.map(this::person).map(Person::id);
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
                : machines(text, hit -> hit.grade() != Grade.FORGIVEN).stream()
                        .flatMap(machine -> Found.visitOf(day, machine).stream())
                        .toList();
        if (found.size() > 1) {
            throw ambiguous(
                    text, found.stream().map(visit -> Names.of(day, visit)).toList());
        }
        return found.stream().findFirst().orElseThrow(() -> unknown("visit_unknown", text));
    }

    /** The task with this id, or the only name of a task of the visit with these words in it; the first such task that is not done. */
    Task task(Visit visit, String text) {
        List<Task> found = visit.tasks().stream()
                .filter(task -> task.id().equalsIgnoreCase(text))
                .toList();
        if (found.isEmpty()) {
            String words = text.toLowerCase(Locale.ROOT);
            found = visit.tasks().stream()
                    .filter(task -> task.name().toLowerCase(Locale.ROOT).contains(words))
                    .toList();
        }
        List<String> names = found.stream().map(Task::name).distinct().toList();
        if (names.size() > 1) {
            throw ambiguous(text, names);
        }
        return found.stream()
                .min(Comparator.comparing(Task::isDone))
                .orElseThrow(() -> new CannotDo("task_unknown", text, Names.of(day, visit)));
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
        List<Machine> found = machines(text, hit -> hit.grade() != Grade.FORGIVEN);
        if (found.size() > 1) {
            throw ambiguous(text, found.stream().map(this::nameOf).toList());
        }
        return found.stream().findFirst().orElseThrow(() -> unknown("machine_unknown", text));
    }

    private List<Machine> machines(String text, Predicate<Finder.Hit> suits) {
        return Found.by(Found.finder(day), day, text).stream()
                .filter(suits)
                .flatMap(hit -> hit.machine().stream())
                .toList();
    }

    /** A command does nothing to a machine that only a typing mistake leads to, but it names it. */
    private CannotDo unknown(String name, String text) {
        List<String> meant = machines(text, hit -> hit.grade() == Grade.FORGIVEN).stream()
                .map(this::nameOf)
                .toList();
        return meant.isEmpty() ? new CannotDo(name, text) : new CannotDo("command.perhaps", text, some(meant));
    }

    /** The owner with this id or whole name, or the only one whose name has these words in it. */
    Owner owner(String text) {
        Optional<Owner> named = day.books()
                .findOwner(text)
                .or(() -> day.books().owners().stream()
                        .filter(owner -> owner.name().equalsIgnoreCase(text))
                        .findFirst());
        if (named.isPresent()) {
            return named.get();
        }
        List<Owner> found = Finder.of(day.books().owners(), List.of(), List.of()).find(text, Map.of()).stream()
                .filter(hit -> hit.grade() != Grade.FORGIVEN)
                .map(Finder.Hit::owner)
                .toList();
        if (found.size() > 1) {
            throw ambiguous(text, found.stream().map(Owner::name).toList());
        }
        return found.stream().findFirst().orElseThrow(() -> new CannotDo("owner_unknown", text));
    }

    /** The machine that this names; empty where it names none. */
    Optional<Machine> findMachine(String text) {
        return machines(text, hit -> hit.grade() != Grade.FORGIVEN).isEmpty()
                        && day.books().findMachine(text).isEmpty()
                ? Optional.empty()
                : Optional.of(machine(text));
    }

    private String nameOf(Machine machine) {
        return day.books().expectOwner(machine.ownerId()).name() + ", " + machine.label();
    }

    private static CannotDo ambiguous(String text, List<String> names) {
        return new CannotDo("command.ambiguous", text, names.size(), some(names));
    }

    private static String some(List<String> names) {
        String some = names.stream().limit(NAMED_AT_MOST).collect(Collectors.joining("; "));
        return some + (names.size() > NAMED_AT_MOST ? "; …" : "");
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
