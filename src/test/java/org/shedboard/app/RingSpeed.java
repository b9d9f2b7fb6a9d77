package org.shedboard.app;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import org.shedboard.day.Beginning;
import org.shedboard.day.Books;
import org.shedboard.day.Day;
import org.shedboard.day.RingList;
import org.shedboard.day.Setup;
import org.shedboard.estimate.Catalogue;
import org.shedboard.estimate.Work;
import org.shedboard.files.Seed;
import org.shedboard.forecast.Foresight;
import org.shedboard.hours.HoursRules;
import org.shedboard.register.Logbook;
import org.shedboard.register.Reading;
import org.shedboard.register.Register;
import org.shedboard.register.Serviced;
import org.shedboard.register.Shelf;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Mud;

/**
 * Prints how long the list of whom to ring takes among many machines, each with eight readings, one meter in ten replaced, and three
 * services in two years. Run by hand; argument: how many machines (20000). The time is the best of several in one process, beside a loop
 * whose pace says how fast the machine was.
 */
public final class RingSpeed {
    private static final int TURNS = 7;
    private static final int READINGS = 8;
    private static final int DAYS_APART = 90;
    private static final long LOOP = 60_000_000;

    private final Random random = new Random(1);
    private final Catalogue catalogue = Seed.catalogue();
    private final Setup seed = Seed.shop(catalogue);
    private final Instant now = Instant.parse("2026-05-12T00:00:00Z");
    private final List<Machine> machines = new ArrayList<>();
    private final List<Reading> readings = new ArrayList<>();
    private final List<Serviced> serviced = new ArrayList<>();

    public static void main(String[] arguments) {
        new RingSpeed().run(arguments.length == 0 ? 20_000 : Integer.parseInt(arguments[0]));
    }

    private void run(int count) {
        for (int i = 0; i < count; i++) {
            draw("N" + i);
        }
        Day day = day();
        double least = Double.POSITIVE_INFINITY;
        RingList list = RingList.of(day, now, 1);
        for (int turn = 0; turn < TURNS; turn++) {
            long begun = System.nanoTime();
            list = RingList.of(day, now, 1);
            least = Math.min(least, (System.nanoTime() - begun) / 1e6);
        }
        System.out.printf(
                Locale.ROOT,
                "%d machines, %d readings, %d visits: %d to ring, %.0f hours of work, in %.0f ms (loop: %.0f million steps/s)%n",
                machines.size(),
                readings.size(),
                serviced.size(),
                list.calls().size(),
                list.load().minutes() / 60.0,
                least,
                loop());
    }

    private Day day() {
        Books books = new Books(
                seed.shop(),
                catalogue,
                seed.owners(),
                machines,
                HoursRules.USUAL,
                Set.of(),
                Register.EMPTY.with(new Logbook(readings, serviced, List.of())),
                Shelf.EMPTY,
                Foresight.none(catalogue, seed.shop().people()));
        Setup bare = new Setup(seed.shop(), seed.owners(), List.of(), List.of(), Optional.empty(), seed.pins());
        Day blank = Beginning.of(catalogue, bare, LocalDate.of(2026, 5, 12)).day();
        return new Day(
                books,
                blank.date(),
                blank.opening(),
                blank.visits(),
                blank.entries(),
                blank.errands(),
                blank.unclosed(),
                blank.posted(),
                blank.nextNumber());
    }

    private void draw(String id) {
        Machine like = seed.machines().get(random.nextInt(seed.machines().size()));
        machines.add(new Machine(
                id,
                like.ownerId(),
                like.classId(),
                like.label(),
                OptionalInt.empty(),
                "",
                like.massKg(),
                OptionalInt.empty()));
        double use = 0.2 + 1.5 * random.nextDouble();
        double shown = random.nextInt(3_000);
        int replaced = random.nextInt(10) == 0 ? 1 + random.nextInt(READINGS - 1) : READINGS;
        for (int i = 0; i < READINGS; i++) {
            Instant at = now.minus(Duration.ofDays((long) DAYS_APART * (READINGS - i) - random.nextInt(30)));
            shown = i == replaced ? 2 : shown + use * DAYS_APART * (0.8 + 0.4 * random.nextDouble());
            Reading.Told told = i == replaced ? Reading.Told.NEW_METER : Reading.Told.AS_EXPECTED;
            readings.add(new Reading("R" + readings.size(), id, at, Reading.Unit.HOURS, Math.floor(shown), told, "P1"));
            if (i == 1 || i == 4 || i == 6) {
                service(id, like.classId(), at);
            }
        }
    }

    private void service(String machine, String classId, Instant at) {
        List<Work> services = catalogue.worksFor(classId).stream()
                .filter(work -> work.interval().isPresent())
                .toList();
        String work = services.get(random.nextInt(services.size())).id();
        Mud mud = Mud.values()[random.nextInt(Mud.values().length)];
        serviced.add(new Serviced(machine, "V" + serviced.size(), at, at.plusSeconds(7_200), mud, List.of(work)));
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
}
