package org.shedboard.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Supplier;
import org.shedboard.day.Books;
import org.shedboard.hours.HoursRules;
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
    private static final int TURNS = 7;
    private static final long LOOP = 60_000_000;

    private final DrawnYears drawn = new DrawnYears();

    public static void main(String[] arguments) throws IOException {
        Path home = Files.createTempDirectory("tally-speed");
        new TallySpeed().run(home);
    }

    private void run(Path home) {
        try (Store store = Store.openOrCreate(home)) {
            drawn.year(store);
            System.out.printf(
                    Locale.ROOT,
                    "%d visits, %d clock entries, %d people; loop %.0f M/s%n",
                    drawn.visitCount(),
                    drawn.entryCount(),
                    DrawnYears.PEOPLE,
                    loop());
            LocalDate some = DrawnYears.FIRST.plusDays(170);
            LocalDate first = some.withDayOfMonth(1);
            measure(store, "a day", some, some.plusDays(1));
            measure(store, "a month", first, first.plusMonths(1));
            measure(store, "a year", DrawnYears.FIRST, drawn.next());
        }
    }

    private void measure(Store store, String name, LocalDate from, LocalDate until) {
        Books books = new Books(
                drawn.shop(), drawn.catalogue(), drawn.owners(), drawn.machines(), HoursRules.USUAL, Set.of());
        Instant now = until.plusDays(1).atStartOfDay(drawn.shop().zone()).toInstant();
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
}
