package org.shedboard.forecast;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import org.shedboard.day.Books;
import org.shedboard.estimate.Catalogue;
import org.shedboard.estimate.Estimator;
import org.shedboard.estimate.MachineClass;
import org.shedboard.estimate.Work;
import org.shedboard.files.Seed;
import org.shedboard.hours.Activity.OnStay;
import org.shedboard.hours.ClockEntry;
import org.shedboard.hours.HoursRules;
import org.shedboard.learn.Clocked;
import org.shedboard.shop.Condition;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Intake;
import org.shedboard.shop.Line;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Owner;
import org.shedboard.shop.Payer;
import org.shedboard.shop.Person;
import org.shedboard.shop.Shop;
import org.shedboard.shop.Skill;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Step;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;
import org.shedboard.shop.Window;

/**
 * A year of a shop whose truth is known: visits drawn by the demonstration's catalogue, some of whose figures are wrong there, and some
 * of whose people are slower or faster than they are taken to be.
 */
final class DrawnYard {
    static final ZoneId ZONE = ZoneId.of("Pacific/Auckland");
    static final Catalogue CATALOGUE = Seed.catalogue();
    static final Instant TODAY =
            LocalDate.of(2027, 1, 4).atTime(9, 0).atZone(ZONE).toInstant();
    private static final LocalDate FIRST = LocalDate.of(2026, 1, 5);
    private static final double OWN = 0.3;
    private static final double MACHINE = 0.18;
    private static final double PERSON = 0.1;
    private static final int MACHINES = 120;
    /** The first works of each class, which are every other visit's. */
    private static final int SERVICES = 3;

    private final Random random;
    private final Map<String, Double> truths = new HashMap<>();
    private final Map<String, Double> slow = new HashMap<>();
    private final Map<String, Instant> busy = new HashMap<>();
    private final List<Visit> visits = new ArrayList<>();
    private final List<ClockEntry> entries = new ArrayList<>();
    private final List<Machine> machines = new ArrayList<>();
    private final Shop shop = new Shop(
            "Drawn",
            ZONE,
            EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.SUNDAY),
            List.of(),
            List.of(person("P1", 100), person("P2", 95), person("P3", 120), person("P4", 150)));

    private boolean isByTask = true;
    private Optional<String> washer = Optional.empty();
    private double pace = 1;

    DrawnYard(long seed) {
        random = new Random(seed);
        for (int i = 0; i < MACHINES; i++) {
            MachineClass each = CATALOGUE.classes().get(i % CATALOGUE.classes().size());
            machines.add(new Machine(
                    "M" + i,
                    "O",
                    each.id(),
                    "M" + i,
                    OptionalInt.of(2010 + random.nextInt(16)),
                    "",
                    each.massKg(),
                    OptionalInt.empty()));
        }
    }

    private static Person person(String id, int pace) {
        List<Window> day = List.of(new Window(LocalTime.of(7, 0), LocalTime.of(16, 0)));
        return new Person(id, id, "", EnumSet.allOf(Skill.class), pace, day, List.of());
    }

    /** What a figure stands for takes so many times what it says. */
    DrawnYard wrong(String figure, double factor) {
        truths.put(figure, factor);
        return this;
    }

    /** A person takes so many times their own pace. */
    DrawnYard slow(String person, double factor) {
        slow.put(person, factor);
        return this;
    }

    /** All work takes so many times what the catalogue says. */
    DrawnYard paced(double factor) {
        pace = factor;
        return this;
    }

    /** Only this person washes. */
    DrawnYard washedBy(String person) {
        washer = Optional.of(person);
        return this;
    }

    /** People are on the clock by stay, and no task is named. */
    DrawnYard clockedByStay() {
        isByTask = false;
        return this;
    }

    DrawnYard visits(int count) {
        for (int i = 0; i < count; i++) {
            visit(FIRST.plusDays(i * 360L / count));
        }
        return this;
    }

    private void visit(LocalDate date) {
        String id = "V" + visits.size();
        Machine machine = machines.get(random.nextInt(machines.size()));
        List<Work> works = CATALOGUE.worksFor(machine.classId());
        Work work = works.get(random.nextInt(random.nextBoolean() ? SERVICES : works.size()));
        List<Line> lines = List.of(new Line("L1", work.id(), work.name(), Payer.OWNER, List.of()));
        Depth depth = Depth.values()[random.nextInt(3)];
        Instant came = date.atTime(7, 0).atZone(ZONE).toInstant();
        Intake intake = new Intake(came, Mud.of(random.nextInt(4)), depth, Condition.SOUND, "");
        List<Stay> stays = new Estimator(CATALOGUE)
                .estimate(machine.classId(), intake, lines)
                .stays();
        Visit visit = new Visit(
                id,
                machine.id(),
                OptionalInt.empty(),
                VisitState.GONE,
                intake,
                lines,
                stays,
                List.of(),
                List.of(),
                Optional.empty(),
                Optional.of(came));
        double ofMachine = MACHINE * random.nextGaussian();
        List<Stay> done = new ArrayList<>();
        stays.forEach(stay -> done.add(worked(visit, machine, stay, ofMachine)));
        Instant end = busy.values().stream().max(Instant::compareTo).orElse(came);
        visits.add(visit.withStays(done).finishedAt(end).withState(VisitState.GONE));
    }

    private Stay worked(Visit visit, Machine machine, Stay stay, double ofMachine) {
        String person = stay.step() == Step.WASH && washer.isPresent() ? washer.get() : "P" + (1 + random.nextInt(4));
        double day = PERSON * random.nextGaussian();
        List<Task> done = new ArrayList<>();
        for (Task task : stay.tasks()) {
            Instant from = from(visit, person);
            double takes =
                    truth(visit, machine, stay, task, person) * Math.exp(ofMachine + day + OWN * random.nextGaussian());
            Instant to = from.plus(Duration.ofSeconds(Math.max(1, Math.round(takes * 60))));
            busy.put(person, to);
            Optional<String> named = isByTask ? Optional.of(task.id()) : Optional.empty();
            if (task.handsOn() > 0) {
                entries.add(new ClockEntry(
                        "C" + entries.size(),
                        person,
                        new OnStay(visit.id(), stay.step(), named),
                        from,
                        Optional.of(to)));
            }
            done.add(task.with(task.progress().started(person, from, 0).done(person, to)));
        }
        return stay.withTasks(done);
    }

    /** A person's days are as long as their work. */
    private Instant from(Visit visit, String person) {
        Instant came = visit.intake().arrives();
        Instant free = busy.getOrDefault(person, came);
        return free.isAfter(came) ? free : came;
    }

    private double truth(Visit visit, Machine machine, Stay stay, Task task, String person) {
        Clocked.Part part = new PartNames(CATALOGUE).partOf(machine.classId(), visit, stay.step(), task);
        double minutes = part.minutes() * truths.getOrDefault(part.figure(), 1.0);
        int percent = shop.expectPerson(person).pacePercent();
        return pace * minutes * percent / 100.0 * slow.getOrDefault(person, 1.0);
    }

    /** All of it as measured by a catalogue. */
    Books books(Catalogue catalogue) {
        Books books = new Books(
                shop, catalogue, List.of(new Owner("O", "Tarn", "0000 1")), machines, HoursRules.USUAL, Set.of());
        return books.learningFrom(visits, entries, TODAY);
    }

    List<Suggestion> suggestions() {
        return suggestions(CATALOGUE);
    }

    List<Suggestion> suggestions(Catalogue catalogue) {
        return Suggestions.of(catalogue, books(catalogue).experience());
    }

    List<Visit> visits() {
        return visits;
    }

    Machine machineOf(Visit visit) {
        return machines.stream()
                .filter(machine -> machine.id().equals(visit.machineId()))
                .findFirst()
                .orElseThrow();
    }
}
