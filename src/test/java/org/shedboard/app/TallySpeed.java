package org.shedboard.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.function.Supplier;
import org.shedboard.day.Books;
import org.shedboard.day.Setup;
import org.shedboard.estimate.Catalogue;
import org.shedboard.estimate.Estimator;
import org.shedboard.estimate.Work;
import org.shedboard.files.Seed;
import org.shedboard.hours.Activity.OnStay;
import org.shedboard.hours.ClockEntry;
import org.shedboard.hours.HoursRules;
import org.shedboard.shop.Attendance;
import org.shedboard.shop.Condition;
import org.shedboard.shop.HoistCheck;
import org.shedboard.shop.Intake;
import org.shedboard.shop.Line;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Opening;
import org.shedboard.shop.Payer;
import org.shedboard.shop.Person;
import org.shedboard.shop.Shop;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;
import org.shedboard.store.Stamp;
import org.shedboard.store.Store;
import org.shedboard.tally.Ledger;
import org.shedboard.tally.LookBack;
import org.shedboard.tally.SpanTally;

/**
 * Prints how long the tally of a day, a month and a year takes, in a drawn shop of eight people and four thousand visits a year, each task
 * clocked: read from the records and counted, and counted alone. Run by hand; the times are the best of several in one process, beside
 * a loop whose pace says how fast the machine was.
 */
public final class TallySpeed {
    private static final int PEOPLE = 8;
    private static final int VISITS_A_DAY = 16;
    private static final int WORKDAYS = 250;
    private static final LocalDate FIRST = LocalDate.of(2025, 1, 6);
    private static final int TURNS = 7;
    private static final long LOOP = 60_000_000;

    private final Random random = new Random(1);
    private final Catalogue catalogue = Seed.catalogue();
    private final Setup seed = Seed.shop(catalogue);
    private final Shop shop = crowded(seed.shop());
    private final List<Visit> visits = new ArrayList<>();
    private final List<ClockEntry> entries = new ArrayList<>();
    private final List<Opening> openings = new ArrayList<>();

    public static void main(String[] arguments) throws IOException {
        Path home = Files.createTempDirectory("tally-speed");
        new TallySpeed().run(home);
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

    private void run(Path home) {
        LocalDate date = FIRST;
        for (int day = 0; day < WORKDAYS; day++) {
            date = shop.workdays().contains(date.getDayOfWeek()) ? date : date.plusDays(2);
            draw(date);
            date = date.plusDays(1);
        }
        System.out.printf(
                Locale.ROOT,
                "%d visits, %d clock entries, %d days, %d people; loop %.0f M/s%n",
                visits.size(),
                entries.size(),
                openings.size(),
                PEOPLE,
                loop());
        try (Store store = Store.create(home)) {
            store.save(new Stamp(Instant.EPOCH, "x", "x"), "all", tx -> {
                tx.saveShop(shop);
                tx.saveCatalogue(catalogue);
                tx.saveOwners(seed.owners());
                tx.saveMachines(seed.machines());
                tx.saveVisits(visits);
                tx.saveEntries(entries);
                openings.forEach(tx::saveOpening);
            });
            LocalDate some = openings.get(120).date();
            measure(store, "a day", some, some.plusDays(1));
            measure(
                    store,
                    "a month",
                    some.withDayOfMonth(1),
                    some.withDayOfMonth(1).plusMonths(1));
            measure(store, "a year", FIRST, date.plusDays(1));
        }
    }

    private void measure(Store store, String name, LocalDate from, LocalDate until) {
        Books books = new Books(shop, catalogue, seed.owners(), seed.machines(), HoursRules.USUAL, Set.of());
        Instant now = until.plusDays(1).atStartOfDay(shop.zone()).toInstant();
        Supplier<Ledger> read = () -> store.read(reader -> new Ledgers(reader, books).read(from, until, now));
        Ledger ledger = read.get();
        double reading = fastest(read::get);
        double counting = fastest(() -> SpanTally.of(ledger));
        double back = fastest(() -> LookBack.of(ledger, List.of()));
        System.out.printf(
                Locale.ROOT,
                "%-8s %5d visits %6d rows: read %8.1f ms, counted %8.1f ms, looked back %8.1f ms; loop %.0f M/s%n",
                name,
                ledger.visits().size(),
                ledger.entries().size(),
                reading,
                counting,
                back,
                loop());
    }

    private static double fastest(Runnable work) {
        long least = Long.MAX_VALUE;
        for (int turn = 0; turn < TURNS; turn++) {
            long begun = System.nanoTime();
            work.run();
            least = Math.min(least, System.nanoTime() - begun);
        }
        return least / 1e6;
    }

    /** Steps of a loop that nothing can shorten, in millions a second. */
    private static double loop() {
        long begun = System.nanoTime();
        long sum = 1;
        for (long step = 0; step < LOOP; step++) {
            sum = (sum ^ (sum >>> 29)) * 0xBF58476D1CE4E5B9L + step;
        }
        return sum == 0 ? 0 : LOOP * 1e3 / (System.nanoTime() - begun);
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
        String id = "V" + (visits.size() + 1);
        Machine machine = seed.machines().get(random.nextInt(seed.machines().size()));
        List<Work> works = catalogue.worksFor(machine.classId());
        Work work = works.get(random.nextInt(works.size()));
        Mud mud = Mud.values()[random.nextInt(Mud.values().length)];
        Intake intake = new Intake(morning, mud, work.depth(), Condition.SOUND, "");
        List<Line> lines =
                List.of(new Line("L" + visits.size(), work.id(), work.name(), Payer.OWNER, work.lineParts()));
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
                        "C" + (entries.size() + 1),
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
