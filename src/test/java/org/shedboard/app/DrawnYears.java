package org.shedboard.app;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import org.shedboard.day.Setup;
import org.shedboard.estimate.Catalogue;
import org.shedboard.estimate.Estimator;
import org.shedboard.estimate.Work;
import org.shedboard.files.Seed;
import org.shedboard.hours.Activity.OnStay;
import org.shedboard.hours.ClockEntry;
import org.shedboard.shop.Attendance;
import org.shedboard.shop.Condition;
import org.shedboard.shop.HoistCheck;
import org.shedboard.shop.Intake;
import org.shedboard.shop.Line;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Opening;
import org.shedboard.shop.Owner;
import org.shedboard.shop.Payer;
import org.shedboard.shop.Person;
import org.shedboard.shop.Shop;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;
import org.shedboard.store.Stamp;
import org.shedboard.store.Store;

/** Past years of a busy shop, drawn: eight people, sixteen visits each workday, four thousand a year, every task clocked. */
final class DrawnYears {
    static final int PEOPLE = 8;
    static final LocalDate FIRST = LocalDate.of(2015, 1, 5);
    private static final int VISITS_A_DAY = 16;
    private static final int WORKDAYS = 250;

    private final Random random = new Random(1);
    private final Catalogue catalogue = Seed.catalogue();
    private final Setup seed = Seed.shop(catalogue);
    private final Shop shop = crowded(seed.shop());
    private final List<Owner> owners = new ArrayList<>(seed.owners());
    private final List<Machine> machines = new ArrayList<>(seed.machines());
    private final List<Visit> visits = new ArrayList<>();
    private final List<ClockEntry> entries = new ArrayList<>();
    private final List<Opening> openings = new ArrayList<>();
    private LocalDate next = FIRST;
    private int visitCount;
    private int entryCount;

    Shop shop() {
        return shop;
    }

    Catalogue catalogue() {
        return catalogue;
    }

    List<Owner> owners() {
        return owners;
    }

    List<Machine> machines() {
        return machines;
    }

    /** The day after the last one that was drawn. */
    LocalDate next() {
        return next;
    }

    int visitCount() {
        return visitCount;
    }

    int entryCount() {
        return entryCount;
    }

    /** Draws machines that are like those of the seed, each with an owner of its own. */
    void machines(int count) {
        List<Machine> like = seed.machines();
        for (int i = 0; i < count; i++) {
            Machine one = like.get(i % like.size());
            String number = String.valueOf(machines.size());
            owners.add(new Owner("drawn-" + number, "Owner " + number + ", Drawn Paddock", "0000 " + number));
            machines.add(new Machine(
                    "drawn-" + number,
                    "drawn-" + number,
                    one.classId(),
                    one.label() + " " + number,
                    OptionalInt.empty(),
                    "",
                    one.massKg(),
                    OptionalInt.empty()));
        }
    }

    /** Draws one year more and saves it. */
    void year(Store store) {
        visits.clear();
        entries.clear();
        openings.clear();
        for (int day = 0; day < WORKDAYS; day++) {
            next = shop.workdays().contains(next.getDayOfWeek()) ? next : next.plusDays(2);
            draw(next);
            next = next.plusDays(1);
        }
        Instant end = next.atStartOfDay(shop.zone()).toInstant();
        store.save(new Stamp(end, "x", "x"), "a drawn year", tx -> {
            tx.saveShop(shop);
            tx.saveCatalogue(catalogue);
            tx.saveOwners(owners);
            tx.saveMachines(machines);
            tx.saveVisits(visits);
            tx.saveEntries(entries);
            openings.forEach(tx::saveOpening);
        });
    }

    private static Shop crowded(Shop shop) {
        List<Person> people = new ArrayList<>();
        for (int i = 0; i < PEOPLE; i++) {
            Person like = shop.people().get(i % shop.people().size());
            people.add(new Person(
                    "P" + (i + 1),
                    "Person " + (i + 1),
                    like.role(),
                    like.skills(),
                    like.pacePercent(),
                    like.shifts(),
                    like.overtime()));
        }
        return new Shop(shop.name(), shop.zone(), shop.workdays(), shop.places(), people);
    }

    /** Everybody from seven to half past four; each visit's tasks one after another, by whoever is free first. */
    private void draw(LocalDate date) {
        Instant morning = date.atTime(LocalTime.of(7, 0)).atZone(shop.zone()).toInstant();
        Instant evening = date.atTime(LocalTime.of(16, 30)).atZone(shop.zone()).toInstant();
        List<Attendance> attendances = shop.people().stream()
                .map(person -> new Attendance(person.id(), morning, evening, Optional.of(evening)))
                .toList();
        List<HoistCheck> checks = shop.hoists().stream()
                .map(hoist -> new HoistCheck(hoist.id(), "P1", morning, Optional.empty()))
                .toList();
        openings.add(
                new Opening(date, morning, "P1", attendances, checks, Optional.of(new Opening.Closed(evening, "P1"))));
        Instant[] free = new Instant[PEOPLE];
        Arrays.fill(free, morning);
        for (int i = 0; i < VISITS_A_DAY; i++) {
            draw(date, i, morning, free);
        }
    }

    private void draw(LocalDate date, int index, Instant morning, Instant[] free) {
        String id = "V" + ++visitCount;
        Machine machine = machines.get(random.nextInt(machines.size()));
        List<Work> works = catalogue.worksFor(machine.classId());
        Work work = works.get(random.nextInt(works.size()));
        Mud mud = Mud.values()[random.nextInt(Mud.values().length)];
        Intake intake = new Intake(morning, mud, work.depth(), Condition.SOUND, "");
        List<Line> lines = List.of(new Line("L" + visitCount, work.id(), work.name(), Payer.OWNER, work.lineParts()));
        int person = index % PEOPLE;
        Instant at = free[person];
        List<Stay> stays = new ArrayList<>();
        for (Stay stay : new Estimator(catalogue)
                .estimate(machine.classId(), intake, lines)
                .stays()) {
            List<Task> done = new ArrayList<>();
            for (Task task : stay.tasks()) {
                Instant to = at.plus(Duration.ofSeconds((long) (task.handsOn() * (20 + random.nextInt(40)))));
                String who = "P" + (person + 1);
                entries.add(new ClockEntry(
                        "C" + ++entryCount,
                        who,
                        new OnStay(id, stay.step(), Optional.of(task.id())),
                        at,
                        Optional.of(to)));
                done.add(task.with(task.progress().started(who, at, 0).done(who, to)));
                at = to;
            }
            stays.add(stay.withTasks(done));
        }
        free[person] = at;
        visits.add(new Visit(
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
                Optional.of(at)));
    }
}
