package org.shedboard.forecast;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.shedboard.estimate.Catalogue;
import org.shedboard.estimate.Spreads;
import org.shedboard.hours.Tally;
import org.shedboard.learn.Clocked;
import org.shedboard.learn.Doubt;
import org.shedboard.learn.Drift;
import org.shedboard.learn.Expectation;
import org.shedboard.learn.Hindsight;
import org.shedboard.learn.Learned;
import org.shedboard.learn.Lesson;
import org.shedboard.learn.Said;
import org.shedboard.learn.Scorecard;
import org.shedboard.learn.Sort;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Person;
import org.shedboard.shop.Shop;
import org.shedboard.shop.Visit;

/**
 * What the shop has finished, and what that taught. All that was finished before today is learned from together; what is finished today
 * is added piece by piece, so that every terminal has learned the same.
 */
public final class Experience {
    private final Expectation expected;
    private final List<Lesson> lessons;
    /** What was learned from the first so many of them together. */
    private final Learned together;

    private final int count;
    private final Learned learned;
    /** The same work by what was clocked together, which tells the catalogue's figures apart; told when somebody asks for it. */
    private final Supplier<List<Clocked>> clocked;
    /** By which its minutes were measured; empty where none were. */
    private final Optional<Catalogue> measuredBy;
    /** Worked out when somebody asks for it; whoever works it out gets the same. */
    private volatile List<Said> hindsight;
    /** As the hindsight. */
    private volatile List<Doubt> doubts;

    private Experience(Expectation expected, List<Lesson> lessons, Learned together, int count) {
        this.clocked = List::of;
        this.measuredBy = Optional.empty();
        this.expected = expected;
        this.lessons = List.copyOf(lessons);
        this.together = together;
        this.count = count;
        Learned all = together;
        for (Lesson lesson : this.lessons.subList(count, this.lessons.size())) {
            all = all.after(lesson);
        }
        this.learned = all;
    }

    private Experience(Experience plain, Catalogue catalogue, Supplier<List<Clocked>> clocked) {
        this.measuredBy = Optional.of(catalogue);
        this.expected = plain.expected;
        this.lessons = plain.lessons;
        this.together = plain.together;
        this.count = plain.count;
        this.learned = plain.learned;
        this.clocked = clocked;
    }

    /** Of a shop that has finished nothing yet. */
    public static Experience none(Catalogue catalogue, List<Person> people) {
        return of(catalogue, people, List.of(), LocalDate.MIN);
    }

    /** @param lessons oldest first */
    public static Experience of(Catalogue catalogue, List<Person> people, List<Lesson> lessons, LocalDate today) {
        Expectation expected = expectation(catalogue.spreads(), people);
        int before = before(lessons, today);
        return new Experience(expected, lessons, Learned.of(expected, lessons.subList(0, before)), before);
    }

    /** As {@link #of}, without learning anew what this one has learned already. */
    public Experience grown(Catalogue catalogue, List<Person> people, List<Lesson> more, LocalDate today) {
        boolean isKnown = before(more, today) == count
                && more.subList(0, count).equals(lessons.subList(0, count))
                && expectation(catalogue.spreads(), people).equals(expected);
        return isKnown ? new Experience(expected, more, together, count) : of(catalogue, people, more, today);
    }

    private static int before(List<Lesson> lessons, LocalDate today) {
        int count = 0;
        while (count < lessons.size()
                && lessons.get(count).circumstances().date().isBefore(today)) {
            count++;
        }
        return count;
    }

    /** Whoever is slower than the catalogue is taken to be still learning. */
    private static Expectation expectation(Spreads spreads, List<Person> people) {
        Map<Sort, Double> bySort = new EnumMap<>(Sort.class);
        for (Sort sort : Sort.values()) {
            bySort.put(sort, whole(spreads.of(sort.kind()), spreads));
        }
        Set<String> learners = people.stream()
                .filter(person -> person.pacePercent() > 100)
                .map(Person::id)
                .collect(Collectors.toSet());
        return new Expectation(bySort, spreads.machine(), spreads.person(), learners);
    }

    /** What the work has for itself and what it shares, together. */
    private static double whole(double own, Spreads spreads) {
        return StrictMath.sqrt(own * own + spreads.machine() * spreads.machine() + spreads.person() * spreads.person());
    }

    public Expectation expected() {
        return expected;
    }

    /** Oldest first, those that are not learned from among them. */
    public List<Lesson> lessons() {
        return lessons;
    }

    /** With the same work by what was clocked together, which tells the catalogue's figures apart. */
    public Experience clocked(Catalogue catalogue, Shop shop, List<Machine> machines, List<Visit> visits, Tally tally) {
        return new Experience(this, catalogue, () -> Clockings.of(catalogue, shop, machines, visits, tally));
    }

    /** Whether what it says of figures is said of those of this catalogue. */
    boolean isMeasuredBy(Catalogue catalogue) {
        return measuredBy.equals(Optional.of(catalogue));
    }

    /** What it says of each figure of the catalogue that it was measured by. */
    List<Doubt> doubts() {
        List<Doubt> found = doubts;
        if (found == null) {
            found = Doubt.of(learned, expected, clocked.get());
            doubts = found;
        }
        return found;
    }

    public Learned learned() {
        return learned;
    }

    /** What would have been said of each piece of finished work by those of the days before, oldest first. */
    public List<Said> hindsight() {
        List<Said> known = hindsight;
        if (known == null) {
            known = Hindsight.of(expected, lessons);
            hindsight = known;
        }
        return known;
    }

    /** How right what would have been said was, of the last so many pieces. */
    public Scorecard scorecard(int last) {
        return Scorecard.of(hindsight(), learned.aside(), last);
    }

    /** What runs away from what is said of it. */
    public List<Drift> drifts() {
        return Scorecard.drifts(hindsight());
    }
}
