package org.shedboard.app;

import com.googlecode.lanterna.input.KeyType;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.shedboard.day.Act;
import org.shedboard.day.Day;
import org.shedboard.day.NextTask;
import org.shedboard.day.Outcome;
import org.shedboard.day.Outlook;
import org.shedboard.day.Setup;
import org.shedboard.estimate.Catalogue;
import org.shedboard.files.Seed;
import org.shedboard.look.Scheme;
import org.shedboard.shop.Condition;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Payer;
import org.shedboard.shop.Person;
import org.shedboard.shop.Pin;
import org.shedboard.shop.Place;
import org.shedboard.shop.Shop;
import org.shedboard.shop.Visit;
import org.shedboard.store.Address;
import org.shedboard.term.Display;
import org.shedboard.term.Palette;
import org.shedboard.testing.TestTerminal;

/**
 * Leaves the board open for a simulated month and prints what it takes of the machine: the real session over real records, in which
 * every minute is seen to come by on the screen. Each workday is opened, worked on and closed at another terminal, and keys are pressed at
 * this one. The month has the switch to summer time in it. Run by hand; arguments say how many days, 30 without, and how many minutes
 * a step goes, 1 without.
 */
public final class MonthOpen {
    private static final ZoneId ZONE = ZoneId.of("Europe/Vienna");
    /** Clocks go on by an hour on the 28th of March. */
    private static final LocalDateTime BEGIN = LocalDateTime.of(2027, 3, 8, 6, 0);

    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final long PATIENCE_NANOSECONDS = TimeUnit.MINUTES.toNanos(2);
    private static final LocalTime OPENS = LocalTime.of(6, 30);
    private static final LocalTime COMES = LocalTime.of(7, 0);
    private static final LocalTime FIRST_WORK = LocalTime.of(7, 30);
    private static final LocalTime LAST_WORK = LocalTime.of(16, 0);
    private static final LocalTime GOES_HOME = LocalTime.of(16, 30);
    private static final LocalTime CLOSES = LocalTime.of(17, 0);
    private static final int MACHINES_A_DAY = 3;
    /** Minutes; so often everybody goes on with something. */
    private static final int STEP_OF_WORK = 30;

    private static final Set<Integer> COUNTED = Set.of(1, 2, 5, 10, 20, 30);

    private final MovedClock clock = new MovedClock();
    private final TestTerminal terminal = new TestTerminal(120, 36);
    private final AtomicLong presses = new AtomicLong();
    private final Catalogue catalogue = Seed.catalogue();
    private final Shop shop = inZone(Seed.shop(catalogue).shop());
    private final List<Machine> machines = Seed.shop(catalogue).machines();
    private int taken;
    private int done;
    private int refused;

    private MonthOpen() {}

    public static void main(String[] arguments) throws Exception {
        int days = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 30;
        int minutes = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 1;
        Path home = Files.createTempDirectory("month-open");
        new MonthOpen().run(home, days, minutes);
    }

    private static Shop inZone(Shop shop) {
        return new Shop(shop.name(), ZONE, shop.workdays(), shop.places(), shop.people());
    }

    private void run(Path home, int days, int minutes) throws Exception {
        Setup seed = Seed.shop(catalogue);
        Workshop.make(
                new Address.InHome(home),
                catalogue,
                new Setup(shop, seed.owners(), seed.machines(), List.of(), Optional.empty()));
        Bench.Means means =
                new Bench.Means(place -> Workshop.open(place, "board", reader -> clock), Duration.ofMillis(2), 2);
        Session session = new Session(
                new Display(terminal, Palette.fixed(Scheme.DARK)),
                new Address.InHome(home),
                false,
                means,
                false,
                () -> Instant.EPOCH.plusSeconds(presses.incrementAndGet()));
        Thread running = new Thread(() -> run(session), "session");
        running.start();
        awaitNow();
        try (Workshop other = Workshop.open(new Address.InHome(home), "other", reader -> clock)) {
            for (int day = 1; day <= days; day++) {
                live(other, minutes);
                if (COUNTED.contains(day)) count(day, home);
            }
        } finally {
            session.end();
        }
        running.join();
    }

    /** From six in the morning until six in the morning. */
    private void live(Workshop other, int minutes) {
        LocalDate date = LocalDate.ofInstant(clock.instant(), ZONE);
        Instant end = date.plusDays(1).atTime(BEGIN.toLocalTime()).atZone(ZONE).toInstant();
        while (clock.instant().isBefore(end)) {
            clock.moveOn(Duration.ofMinutes(minutes));
            awaitNow();
            ZonedDateTime now = clock.instant().atZone(ZONE);
            if (shop.workdays().contains(now.getDayOfWeek()) && now.getMinute() % STEP_OF_WORK == 0) {
                work(other, now.toLocalTime());
            }
        }
    }

    private void work(Workshop other, LocalTime time) {
        if (time.equals(OPENS)) {
            expectDone(other.carryOut(openDay(), "P1"));
        } else if (time.equals(COMES)) {
            IntStream.range(0, MACHINES_A_DAY).forEach(i -> tell(other, takeIn()));
        } else if (time.equals(GOES_HOME)) {
            goHome(other);
        } else if (time.equals(CLOSES)) {
            close(other);
        } else if (!time.isBefore(FIRST_WORK) && !time.isAfter(LAST_WORK)) {
            shop.people().forEach(person -> goOn(other, person));
            if (time.getMinute() == 0) lookAround();
        }
    }

    /** The keys of a foreman who looks at one thing and another, and goes back to the board. */
    private void lookAround() {
        terminal.press(KeyType.ArrowDown);
        terminal.press(KeyType.Enter);
        terminal.press(KeyType.Escape);
        for (String key : List.of("?", "v", "l", ">", "h")) {
            terminal.type(key);
            terminal.press(KeyType.Escape);
        }
    }

    private Act openDay() {
        Person first = shop.people().get(0);
        ZonedDateTime now = clock.instant().atZone(ZONE);
        Instant until = now.with(CLOSES).toInstant();
        List<Act.OpenDay.Here> here = shop.people().stream()
                .map(person -> new Act.OpenDay.Here(person.id(), now.toInstant(), until))
                .toList();
        List<Act.OpenDay.Checked> checks = shop.hoists().stream()
                .map(Place::id)
                .map(hoist -> new Act.OpenDay.Checked(hoist, first.id(), Optional.empty()))
                .toList();
        return new Act.OpenDay(first.id(), here, checks);
    }

    private Act takeIn() {
        Machine machine = machines.get(taken++ % machines.size());
        String work = catalogue.worksFor(machine.classId()).get(0).id();
        return new Act.TakeIn(
                new Act.TakeIn.Whose(Optional.empty(), "", ""),
                Act.TakeIn.Which.known(machine.id()),
                Mud.DUSTY,
                Optional.empty(),
                Condition.SOUND,
                List.of(new Act.Wanted(work, Payer.OWNER)),
                OptionalInt.empty(),
                OptionalInt.empty(),
                Optional.empty(),
                "",
                Optional.empty());
    }

    /** A person finishes what they are on, or starts what is planned for them next. */
    private void goOn(Workshop other, Person person) {
        Optional<NextTask> next = NextTask.of(Outlook.of(other.day(), other.now()), person);
        next.ifPresent(task -> tell(
                other,
                task.isRunning()
                        ? new Act.Finish(
                                person.id(), task.visit().id(), task.task().id(), Optional.of(Mark.GOOD))
                        : new Act.Start(
                                person.id(), task.visit().id(), task.task().id(), task.placeId())));
    }

    private void goHome(Workshop other) {
        Day day = other.day();
        day.visits().stream().map(Visit::id).forEach(visit -> tell(other, new Act.Collect(visit, Optional.empty())));
        shop.people().forEach(person -> tell(other, new Act.Stop(person.id(), true, Optional.empty())));
    }

    /** The first evening sets the PIN that all evenings are signed with. */
    private void close(Workshop other) {
        Person first = shop.people().get(0);
        try (Pin pin = Pin.of("2468".toCharArray()).orElseThrow()) {
            Optional<Signature> signed = Optional.of(new Signature(first, pin));
            expectDone(other.carryOut(new Act.CloseDay(first.id()), first.id(), Optional.empty(), signed));
        }
    }

    private void expectDone(Outcome outcome) {
        if (outcome instanceof Outcome.Refused no) {
            throw new IllegalStateException(clock.instant() + ": refused: " + no.refusal());
        }
    }

    private void tell(Workshop other, Act act) {
        if (other.carryOut(act, "P1") instanceof Outcome.Done) done++;
        else refused++;
    }

    /** The minute, and with it the date, is on the screen. */
    private void awaitNow() {
        ZonedDateTime now = clock.instant().atZone(ZONE);
        String date = DATE.format(now);
        String time = TIME.format(now);
        long end = System.nanoTime() + PATIENCE_NANOSECONDS;
        while (!(terminal.row(0).contains(date) && terminal.row(0).endsWith(time))) {
            if (System.nanoTime() > end) {
                throw new IllegalStateException("waited in vain for " + date + " " + time + "\n" + screen());
            }
            LockSupport.parkNanos(200_000);
        }
    }

    private String screen() {
        return IntStream.range(0, terminal.getTerminalSize().getRows())
                .mapToObj(terminal::row)
                .collect(Collectors.joining("\n"));
    }

    private void count(int day, Path home) throws IOException {
        for (int turn = 0; turn < 4; turn++) {
            System.gc();
            LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(300));
        }
        System.out.printf(
                Locale.ROOT,
                "day %2d, %s: heap %5.1f MB, %d threads, %d handles, records %.1f MB; %d acts done, %d refused%n",
                day,
                clock.instant().atZone(ZONE).toLocalDateTime(),
                ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed() / 1e6,
                Thread.activeCount(),
                handles(),
                size(home) / 1e6,
                done,
                refused);
    }

    /** Open files and sockets, where the system tells. */
    private static long handles() throws IOException {
        Path own = Path.of("/proc/self/fd");
        if (!Files.exists(own)) return -1;
        try (Stream<Path> open = Files.list(own)) {
            return open.count();
        }
    }

    private static long size(Path home) throws IOException {
        try (Stream<Path> files = Files.walk(home)) {
            return files.filter(Files::isRegularFile)
                    .mapToLong(file -> file.toFile().length())
                    .sum();
        }
    }

    private static void run(Session session) {
        try {
            session.run();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /** Stands until it is moved on. */
    private static final class MovedClock extends Clock {
        private volatile Instant now = BEGIN.atZone(ZONE).toInstant();

        void moveOn(Duration step) {
            now = now.plus(step);
        }

        @Override
        public ZoneId getZone() {
            return ZONE;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return Clock.fixed(now, zone);
        }

        @Override
        public Instant instant() {
            return now;
        }
    }
}
