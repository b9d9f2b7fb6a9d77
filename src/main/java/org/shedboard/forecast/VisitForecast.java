package org.shedboard.forecast;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shedboard.estimate.Estimate;
import org.shedboard.fit.Combined;
import org.shedboard.fit.LogNormal;
import org.shedboard.fit.Normal;
import org.shedboard.learn.Circumstances;
import org.shedboard.learn.Sort;
import org.shedboard.learn.Story;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Person;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;

/**
 * What one visit takes, as a distribution: that of each piece of work as it was learned, all of them together with what they share. Who
 * will do what has not begun is not known: it is taken to be whoever does such work here.
 */
public final class VisitForecast {
    /** Scatter that a task keeps however much of what was learned is taken for shared; an invented figure. */
    private static final double LEAST_OWN = 0.05;

    private final Grounds grounds;
    private final Machine machine;
    private final Visit visit;
    private final LocalDate date;
    private final Map<Piece, List<Task>> pieces;
    /** Who usually does each sort of work that is in it. */
    private final Map<Sort, Map<String, Double>> usual = new EnumMap<>(Sort.class);

    private final Map<Piece, Shown> shown;

    private VisitForecast(Grounds grounds, Machine machine, Visit visit, LocalDate date) {
        this.grounds = grounds;
        this.machine = machine;
        this.visit = visit;
        this.date = date;
        this.pieces = Piece.tasksOf(visit.stays());
        for (Sort sort : Sort.values()) {
            usual.put(sort, grounds.usualPeople(sort));
        }
        this.shown = Shown.of(pieces, mud(), depth(), work(), belief());
    }

    /** @param date on which it is worked on */
    public static VisitForecast of(Grounds grounds, Machine machine, Visit visit, LocalDate date) {
        return new VisitForecast(grounds, machine, visit, date);
    }

    private Mud mud() {
        return visit.intake().mud();
    }

    private Depth depth() {
        return visit.intake().depth();
    }

    Visit visit() {
        return visit;
    }

    Machine machine() {
        return machine;
    }

    Grounds grounds() {
        return grounds;
    }

    /** All hands-on tasks of the visit by the piece they are of. */
    Map<Piece, List<Task>> pieces() {
        return pieces;
    }

    /** What the catalogue of today has for the pieces of this work on a machine of some mud, looked at to some depth. */
    Shown.Work work() {
        Today today = new Today(grounds.catalogue());
        return (mud, depth) ->
                today.piecesOf(machine.classId(), visit.intake().withMud(mud).withDepth(depth), visit.lines());
    }

    /** What is believed of such a piece when whoever usually does such work does it. */
    Shown.Belief belief() {
        return (piece, minutes, mud, depth) -> believed(piece.sort(), minutes, under(usual(piece), mud, depth));
    }

    private Map<String, Double> usual(Piece piece) {
        return usual.get(piece.sort());
    }

    Circumstances under(Map<String, Double> people, Mud mud, Depth depth) {
        return new Circumstances(machine.classId(), mud, depth, Lessons.ageOf(machine, date), date, people);
    }

    LogNormal believed(Sort sort, double minutes, Circumstances under) {
        return grounds.learned().minutes(sort, minutes * grounds.pace(under.people()), under);
    }

    /** By the catalogue, at the pace of who does it. */
    double catalogueMinutes() {
        return pieces.entrySet().stream()
                .mapToDouble(entry -> Piece.minutesOf(entry.getValue()) * grounds.pace(peopleOf(entry.getKey())))
                .sum();
    }

    /** The likely minutes of a piece told part by part, as they are believed. */
    Story story(Piece piece, int catalogueMinutes, Map<String, Double> people) {
        return grounds.learned()
                .story(piece.sort(), catalogueMinutes * grounds.pace(people), under(people, mud(), depth()));
    }

    /** Minutes that half of such visits, and four out of five such visits, stay within. */
    public Estimate.Range range() {
        return rangeOf(visit.tasks());
    }

    /** The same of some tasks of the visit, as of those it has left. */
    public Estimate.Range rangeOf(List<Task> some) {
        return together(some)
                .map(minutes -> new Estimate.Range(
                        (int) Math.round(minutes.median()), (int) Math.round(minutes.quantile(Shown.SAFE))))
                .orElse(new Estimate.Range(0, 0));
    }

    /** The minutes of some tasks of the visit together; empty where nothing of them is hands-on. */
    Optional<LogNormal> together(List<Task> some) {
        List<LogNormal> parts = new ArrayList<>();
        List<Map<String, Double>> people = new ArrayList<>();
        pieces.forEach((piece, tasks) -> {
            List<Task> counted = tasks.stream().filter(some::contains).toList();
            if (!counted.isEmpty()) {
                Map<String, Double> shares = peopleOf(piece, counted);
                parts.add(minutesOf(piece, Piece.minutesOf(counted), shares));
                people.add(shares);
            }
        });
        return parts.isEmpty() ? Optional.empty() : Optional.of(Combined.of(parts, shared(people)));
    }

    LogNormal minutesOf(Piece piece, int catalogueMinutes, Map<String, Double> people) {
        double likely = catalogueMinutes
                * grounds.pace(people)
                * grounds.learned().factor(piece.sort(), under(people, mud(), depth()));
        Shown as = shown.get(piece);
        return new LogNormal(StrictMath.log(likely) + as.shift(), as.sigma());
    }

    /** Who did, does or will do the work of a piece; of one that the visit has not, whoever usually does such work. */
    Map<String, Double> peopleOf(Piece piece) {
        return pieces.containsKey(piece) ? peopleOf(piece, pieces.get(piece)) : usual(piece);
    }

    /** Who did, does or will do these tasks, by the catalogue minutes of each. */
    private Map<String, Double> peopleOf(Piece piece, List<Task> tasks) {
        Map<String, Double> shares = new LinkedHashMap<>();
        double all = Piece.minutesOf(tasks);
        for (Task task : tasks) {
            Map<String, Double> who =
                    task.progress().person().map(person -> Map.of(person, 1.0)).orElse(usual(piece));
            who.forEach((person, share) -> shares.merge(person, share * task.handsOn() / all, Double::sum));
        }
        return shares;
    }

    /** All pieces share what comes from the machine; what comes from a person, as far as the same one does both. */
    double[][] shared(List<Map<String, Double>> people) {
        double machines = grounds.learned().machine() * grounds.learned().machine();
        double persons = grounds.learned().person() * grounds.learned().person();
        double[][] shared = new double[people.size()][people.size()];
        for (int i = 0; i < shared.length; i++) {
            for (int j = 0; j < shared.length; j++) {
                shared[i][j] = machines + persons * sameDoer(people.get(i), people.get(j));
            }
        }
        return shared;
    }

    private static double sameDoer(Map<String, Double> one, Map<String, Double> other) {
        return one.entrySet().stream()
                .mapToDouble(share -> share.getValue() * other.getOrDefault(share.getKey(), 0.0))
                .sum();
    }

    /** Hands-on minutes that half of such tasks stay within when this person does them; 0 for one that needs nobody. */
    public int minutes(Task task, Person person) {
        return atLeastOne(task, likely(task, Map.of(person.id(), 1.0)));
    }

    /** The same where it is not known who does it. */
    public int minutes(Task task) {
        return atLeastOne(task, likely(task, Map.of()));
    }

    /**
     * Hands-on minutes that so many in a hundred such tasks stay within.
     *
     * @param minutes those that half of them stay within
     */
    public int within(Task task, int minutes, int percent) {
        double deviation = StrictMath.sqrt(square(spreadOf(task))
                + square(grounds.learned().machine())
                + square(grounds.learned().person()));
        return atLeastOne(task, minutes * StrictMath.exp(deviation * Normal.quantile(percent / 100.0)));
    }

    private double likely(Task task, Map<String, Double> people) {
        if (task.handsOn() == 0) {
            return 0;
        }
        Piece piece = pieceOf(task);
        return minutesOf(piece, task.handsOn(), people).median();
    }

    private static int atLeastOne(Task task, double minutes) {
        return task.handsOn() == 0 ? 0 : Math.max(1, (int) Math.round(minutes));
    }

    private Piece pieceOf(Task task) {
        Stay stay = visit.stayOf(task.id()).orElseThrow();
        return Piece.of(stay, task);
    }

    /**
     * Standard deviation of the logarithm of a task's minutes that it shares with no other. The tasks of a piece scatter apart from each
     * other in a replay: each gets so much that all of them together scatter as the piece does.
     */
    public double spreadOf(Task task) {
        if (task.handsOn() == 0) {
            return 0;
        }
        Piece piece = pieceOf(task);
        double own = square(shown.get(piece).sigma())
                - square(grounds.learned().machine())
                - square(grounds.learned().person());
        return StrictMath.sqrt(Math.max(square(LEAST_OWN), own) * apart(pieces.get(piece)));
    }

    /** Square of a sum over the sum of squares: 1 for one task, 3 for three of one length. */
    private static double apart(List<Task> tasks) {
        double sum = Piece.minutesOf(tasks);
        double squares =
                tasks.stream().mapToDouble(task -> square(task.handsOn())).sum();
        return sum * sum / squares;
    }

    private static double square(double value) {
        return value * value;
    }
}
