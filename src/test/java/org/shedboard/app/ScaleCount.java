package org.shedboard.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.shedboard.day.Act;
import org.shedboard.day.Day;
import org.shedboard.day.Outlook;
import org.shedboard.register.Finder;
import org.shedboard.shop.Machine;
import org.shedboard.store.Address;
import org.shedboard.store.Store;
import org.shedboard.tally.SpanTally;
import org.shedboard.testing.Records;

/**
 * Prints how long the things that are done all day take in a shop with one drawn year behind it and in the same shop with more, and their
 * ratios. Run by hand; arguments say how many years, ten without, and where (see {@link Records#named}), a new home without. Times are
 * the best of several in one process.
 */
public final class ScaleCount {
    private static final int MACHINES_AT_FIRST = 1_000;
    private static final int MACHINES_A_YEAR = 200;
    private static final int TURNS = 5;

    private record Measured(String name, double millis) {}

    private final DrawnYears drawn = new DrawnYears();
    private final Address address;

    private ScaleCount(Address address) {
        this.address = address;
    }

    public static void main(String[] arguments) throws IOException {
        int years = arguments.length == 0 ? 10 : Integer.parseInt(arguments[0]);
        Address address = arguments.length > 1
                ? Records.named(arguments[1])
                : new Address.InHome(Files.createTempDirectory("scale-count"));
        new ScaleCount(address).run(years);
    }

    private void run(int years) throws IOException {
        drawn.machines(MACHINES_AT_FIRST);
        grow(1);
        List<Measured> few = measured();
        grow(years - 1);
        List<Measured> many = measured();
        for (int i = 0; i < few.size(); i++) {
            System.out.printf(
                    Locale.ROOT,
                    "%-52s %9.1f ms %9.1f ms  ratio %5.2f%n",
                    few.get(i).name(),
                    few.get(i).millis(),
                    many.get(i).millis(),
                    many.get(i).millis() / few.get(i).millis());
        }
    }

    private void grow(int years) throws IOException {
        try (Store store = Store.openOrCreate(address)) {
            for (int year = 0; year < years; year++) {
                drawn.machines(MACHINES_A_YEAR);
                drawn.year(store);
            }
        }
        System.out.printf(
                Locale.ROOT,
                "%d visits, %d clock entries, %d machines%n",
                drawn.visitCount(),
                drawn.entryCount(),
                drawn.machines().size());
    }

    private Workshop open() {
        Instant morning = drawn.next().atTime(9, 0).atZone(drawn.shop().zone()).toInstant();
        return Workshop.open(
                address, "scale", reader -> Clock.fixed(morning, drawn.shop().zone()));
    }

    private List<Measured> measured() {
        List<Measured> all = new ArrayList<>();
        all.add(best("start: open, read the day, plan it, tally it, close", () -> {
            try (Workshop shop = open()) {
                see(shop);
            }
        }));
        try (Workshop shop = open()) {
            see(shop);
            Machine machine = drawn.machines().get(drawn.machines().size() / 2);
            all.add(best("board: after a change, read, plan, tally", () -> {
                shop.carryOut(new Act.SetWashDown(machine.ownerId(), true), "P1");
                see(shop);
            }));
            all.add(best("board: looked at where nothing changed", shop::newestChange));
            Day day = shop.day();
            Finder finder = Finder.of(day.books().owners(), day.books().machines(), List.of());
            all.add(best(
                    "find: made ready",
                    () -> Finder.of(day.books().owners(), day.books().machines(), List.of())));
            all.add(best("find: one search", () -> finder.find(machine.label(), Map.of())));
            all.add(best("history of one machine", () -> shop.history(machine.id())));
            all.add(best(
                    "tally of the month before",
                    () -> SpanTally.of(shop.ledger(drawn.next().minusMonths(1), drawn.next()))));
            all.add(best(
                    "tally of the first month there was",
                    () -> SpanTally.of(shop.ledger(DrawnYears.FIRST, DrawnYears.FIRST.plusMonths(1)))));
            all.add(of("backup, with its check", 1, () -> shop.safekeeping().backUp(Optional.of(backups()))));
        }
        return all;
    }

    private static void see(Workshop shop) {
        Day day = shop.day();
        Outlook.of(day, shop.now());
        SpanTally.of(shop.ledger(day.date(), day.date().plusDays(1)));
    }

    private static Path backups() {
        try {
            return Files.createTempDirectory("scale-backup");
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    private static Measured best(String name, Runnable work) {
        return of(name, TURNS, work);
    }

    private static Measured of(String name, int turns, Runnable work) {
        double best = Double.MAX_VALUE;
        for (int turn = 0; turn < turns; turn++) {
            long begun = System.nanoTime();
            work.run();
            best = Math.min(best, (System.nanoTime() - begun) / 1e6);
        }
        return new Measured(name, best);
    }
}
