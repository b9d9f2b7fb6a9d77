package org.shedboard.app;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.shedboard.day.Act;
import org.shedboard.day.Setup;
import org.shedboard.estimate.Catalogue;
import org.shedboard.files.Seed;
import org.shedboard.shop.Visit;
import org.shedboard.store.Address;
import org.shedboard.testing.Records;

/**
 * Counts what becomes of many terminals at work in one shop: each changes something every so often, and then reads the day anew as it
 * does when others have changed it. Prints how long a change takes until it is durable and how long it takes to have the day again,
 * in the middle, of the slowest in a hundred and at worst, what failed, and what memory is in use. All terminals are threads of
 * one process here and share its processors, which in a shop each have their own; all are started before anything is counted, and what has
 * the file open stays to the end. Arguments: terminals, seconds between changes, minutes,
 * and where (see {@link Records#named}; a home is made there).
 */
public final class LoadCount {
    private static final LocalDateTime MORNING = LocalDateTime.of(2026, 5, 12, 9, 40);
    private static final Duration WARM_UP = Duration.ofSeconds(60);

    private final Address address;
    private final int terminals;
    private final Duration between;
    private final List<Long> changes = Collections.synchronizedList(new ArrayList<>());
    private final List<Long> refreshes = Collections.synchronizedList(new ArrayList<>());
    private final AtomicInteger failures = new AtomicInteger();
    private final AtomicInteger late = new AtomicInteger();

    private LoadCount(Address address, int terminals, Duration between) {
        this.address = address;
        this.terminals = terminals;
        this.between = between;
    }

    public static void main(String[] arguments) throws InterruptedException {
        int terminals = Integer.parseInt(arguments[0]);
        Duration between = Duration.ofMillis((long) (1000 * Double.parseDouble(arguments[1])));
        Duration length = Duration.ofMillis((long) (60_000 * Double.parseDouble(arguments[2])));
        new LoadCount(Records.named(arguments[3]), terminals, between).run(length);
    }

    private void run(Duration length) throws InterruptedException {
        List<Visit> visits = crowd();
        List<Workshop> shops = new ArrayList<>();
        try (Workshop owner = open()) {
            owner.day();
            warmUp(visits.get(0));
            for (int i = 0; i < terminals; i++) {
                shops.add(open());
                shops.get(i).day();
            }
            count(length, visits, shops);
            shops.forEach(Workshop::close);
        }
    }

    private void count(Duration length, List<Visit> visits, List<Workshop> shops) throws InterruptedException {
        long begun = System.nanoTime();
        long until = begun + length.toNanos();
        List<Thread> threads = new ArrayList<>();
        for (int i = 0; i < terminals; i++) {
            Visit own = visits.get(i % visits.size());
            Workshop shop = shops.get(i);
            long phase = between.toNanos() * i / terminals;
            threads.add(new Thread(() -> work(shop, own, between, begun + phase, until), "terminal " + i));
        }
        threads.forEach(Thread::start);
        while (System.nanoTime() < until) {
            printMemory(System.nanoTime() - begun);
            sleepUntil(Math.min(until, System.nanoTime() + Duration.ofMinutes(1).toNanos()));
        }
        for (Thread thread : threads) {
            thread.join();
        }
        printMemory(System.nanoTime() - begun);
        print("a change", changes);
        print("the day again", refreshes);
        System.out.printf(
                Locale.ROOT,
                "%d terminals, %d visits; %d failed, %d began late because the one before took too long%n",
                terminals,
                visits.size(),
                failures.get(),
                late.get());
    }

    /** One terminal without a pause: twenty that all start cold at once are no day in a shop, and wait for the compiler and not the records. */
    private void warmUp(Visit own) {
        long now = System.nanoTime();
        try (Workshop shop = open()) {
            work(shop, own, Duration.ofMillis(1), now, now + WARM_UP.toNanos());
        }
        changes.clear();
        refreshes.clear();
        late.set(0);
    }

    /** The demonstration shop with a booking for every terminal. */
    private List<Visit> crowd() {
        Catalogue catalogue = Seed.catalogue();
        Setup setup = Seed.shop(catalogue);
        Workshop.make(address, catalogue, setup);
        try (Workshop workshop = open()) {
            for (int i = 0; i < terminals; i++) {
                Quads.book(workshop, MORNING, i);
            }
            return workshop.day().visits().stream()
                    .filter(visit -> !visit.lines().isEmpty())
                    .toList();
        }
    }

    private Workshop open() {
        return Workshop.open(address, "load", Optional.of(MORNING));
    }

    private void work(Workshop workshop, Visit own, Duration pause, long from, long until) {
        try {
            String line = own.lines().get(0).id();
            long next = from;
            for (int i = 0; next < until; i++) {
                sleepUntil(next);
                Act agree = new Act.AgreeHours(own.id(), line, 30 + i % 100);
                changes.add(timed(() -> Quads.expectDone(workshop.carryOut(agree, "P1"))));
                refreshes.add(timed(workshop::day));
                next += pause.toNanos();
                if (System.nanoTime() > next) {
                    late.incrementAndGet();
                    next = System.nanoTime();
                }
            }
        } catch (RuntimeException failure) {
            failures.incrementAndGet();
            failure.printStackTrace();
        } catch (InterruptedException interrupt) {
            Thread.currentThread().interrupt();
        }
    }

    private static long timed(Runnable work) {
        long begun = System.nanoTime();
        work.run();
        return System.nanoTime() - begun;
    }

    private static void sleepUntil(long moment) throws InterruptedException {
        long left = moment - System.nanoTime();
        if (left > 0) {
            Thread.sleep(left / 1_000_000, (int) (left % 1_000_000));
        }
    }

    private static void printMemory(long since) {
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        System.out.printf(
                Locale.ROOT,
                "after %4d s: %.0f MB in use%n",
                Duration.ofNanos(since).toSeconds(),
                (runtime.totalMemory() - runtime.freeMemory()) / 1e6);
    }

    private static void print(String what, List<Long> nanoseconds) {
        List<Long> sorted = nanoseconds.stream().sorted().toList();
        System.out.printf(
                Locale.ROOT,
                "%-14s %6d times: middle %.0f ms, 99 in 100 within %.0f ms, longest %.0f ms%n",
                what,
                sorted.size(),
                sorted.get(sorted.size() / 2) / 1e6,
                sorted.get(sorted.size() * 99 / 100) / 1e6,
                sorted.get(sorted.size() - 1) / 1e6);
    }
}
