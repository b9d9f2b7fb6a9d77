package org.shedboard.forecast;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.shedboard.estimate.Catalogue;
import org.shedboard.hours.Activity.OnStay;
import org.shedboard.hours.Tally;
import org.shedboard.learn.Circumstances;
import org.shedboard.learn.Lesson;
import org.shedboard.learn.Sort;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Person;
import org.shedboard.shop.Shop;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;

/**
 * Tells finished visits as lessons, one for each piece of work in them.
 *
 * <p>What a piece took are the minutes the tally has on it, all people together: corrections made, breaks left out, and what was worked
 * before and after a hold counted alike. Minutes clocked on a task are that task's; those clocked on a stay as a whole, and those of a
 * lent hand, are shared out over its pieces by their catalogue minutes. So work that was found on the way, which has catalogue minutes
 * of its own, takes its minutes away from the service it was found on.
 */
public final class Lessons {
    private final Today today;
    private final ZoneId zone;
    private final Map<String, Machine> machines = new HashMap<>();
    private final Map<String, Integer> paces;
    private final Worked worked;

    private Lessons(Catalogue catalogue, Shop shop, List<Machine> machines, Tally tally) {
        this.today = new Today(catalogue);
        this.zone = shop.zone();
        machines.forEach(machine -> this.machines.put(machine.id(), machine));
        this.paces = pacesOf(shop.people());
        this.worked = new Worked(tally);
    }

    /**
     * The lessons of all finished ones among these visits, oldest first.
     *
     * @param tally of all the days on which they were worked on
     */
    public static List<Lesson> of(
            Catalogue catalogue, Shop shop, List<Machine> machines, List<Visit> visits, Tally tally) {
        Lessons lessons = new Lessons(catalogue, shop, machines, tally);
        return visits.stream()
                .filter(visit -> visit.finished().isPresent())
                .sorted(Comparator.comparing((Visit visit) -> finished(visit)).thenComparing(Visit::id))
                .flatMap(lessons::of)
                .toList();
    }

    private static Instant finished(Visit visit) {
        return visit.finished().orElseThrow();
    }

    private Stream<Lesson> of(Visit visit) {
        return Optional.ofNullable(machines.get(visit.machineId())).stream()
                .flatMap(machine -> of(visit, machine).stream());
    }

    private List<Lesson> of(Visit visit, Machine machine) {
        Map<Piece, List<Task>> pieces = Piece.tasksOf(today.staysOf(machine.classId(), visit));
        Map<Piece, Map<String, Double>> minutes = new LinkedHashMap<>();
        worked.on(visit.id())
                .forEach((person, onStays) -> onStays.forEach((on, count) -> share(pieces, on, count)
                        .forEach((piece, share) -> minutes.computeIfAbsent(piece, absent -> new LinkedHashMap<>())
                                .merge(person, share, Double::sum))));
        LocalDate date = LocalDate.ofInstant(finished(visit), zone);
        List<Lesson> lessons = new ArrayList<>();
        pieces.forEach((piece, tasks) -> lessons.add(lesson(
                visit, machine, date, piece.sort(), Piece.minutesOf(tasks), minutes.getOrDefault(piece, Map.of()))));
        return lessons;
    }

    /** What of minutes clocked on something goes to each piece; nothing where the visit has no such step. */
    private static Map<Piece, Double> share(Map<Piece, List<Task>> pieces, OnStay on, int minutes) {
        Map<Piece, Integer> weights = new LinkedHashMap<>();
        pieces.forEach((piece, tasks) -> {
            if (tasks.stream().anyMatch(task -> on.taskId().equals(Optional.of(task.id())))) {
                weights.put(piece, 1);
            }
        });
        if (weights.isEmpty()) {
            pieces.forEach((piece, tasks) -> {
                if (piece.step() == on.step()) {
                    weights.put(piece, Piece.minutesOf(tasks));
                }
            });
        }
        double all = weights.values().stream().mapToInt(Integer::intValue).sum();
        Map<Piece, Double> shares = new LinkedHashMap<>();
        weights.forEach((piece, weight) -> shares.put(piece, minutes * weight / all));
        return shares;
    }

    private Lesson lesson(
            Visit visit, Machine machine, LocalDate date, Sort sort, int catalogue, Map<String, Double> people) {
        double all = people.values().stream().mapToDouble(each -> each).sum();
        Map<String, Double> shares = new LinkedHashMap<>();
        people.forEach((person, minutes) -> shares.put(person, minutes / all));
        Circumstances under = new Circumstances(
                machine.classId(),
                visit.intake().mud(),
                visit.intake().depth(),
                ageOf(machine, date),
                date,
                all > 0 ? shares : Map.of());
        double pace = shares.isEmpty() ? 1 : pace(paces, shares);
        return new Lesson(visit.id(), sort, under, catalogue * pace, all);
    }

    /** Hands-on minutes for one of the catalogue, where several share the work; of whoever is no longer here, one. */
    static double pace(Map<String, Integer> paces, Map<String, Double> shares) {
        double pace = 0;
        for (Map.Entry<String, Double> share : shares.entrySet()) {
            pace += share.getValue() * paces.getOrDefault(share.getKey(), 100) / 100.0;
        }
        return pace;
    }

    static OptionalInt ageOf(Machine machine, LocalDate date) {
        return machine.modelYear().isPresent()
                ? OptionalInt.of(
                        Math.max(0, date.getYear() - machine.modelYear().getAsInt()))
                : OptionalInt.empty();
    }

    static Map<String, Integer> pacesOf(List<Person> people) {
        Map<String, Integer> paces = new HashMap<>();
        people.forEach(person -> paces.put(person.id(), person.pacePercent()));
        return paces;
    }
}
