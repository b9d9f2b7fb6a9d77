package org.shedboard.hours;

import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.shedboard.hours.CountedDay.Minute;

/**
 * The rows of a week, and enough said about it to find it again.
 *
 * @param until the day after its last one
 */
record RandomWeek(long seed, TimeBook book, LocalDate from, LocalDate until, Instant now) {
    Tally tally() {
        return book.tally(from, until, now);
    }

    List<LocalDate> dates() {
        return from.datesUntil(until).toList();
    }

    RandomWeek roundedBy(Rounding attendance) {
        HoursRules rules = book.rules();
        HoursRules next =
                new HoursRules(attendance, rules.charge(), rules.basis(), rules.breaks(), rules.lentMinutes());
        return new RandomWeek(seed, new TimeBook(book.zone(), next, book.breaks(), book.rows()), from, until, now);
    }

    /** What a reader needs to count somebody's day by hand. */
    String listing(String person, LocalDate date) {
        return date + " of "
                + listing(row -> (row.personId().equals(person)
                                || row.correction().isPresent())
                        && Math.abs(LocalDate.ofInstant(row.from(), book.zone()).toEpochDay() - date.toEpochDay()) < 2);
    }

    String listing() {
        return listing(row -> true);
    }

    private String listing(Predicate<ClockEntry> which) {
        String rows = book.rows().stream()
                .filter(which)
                .map(row -> "  %s %s %s .. %s %s %s"
                        .formatted(
                                row.id(),
                                row.personId(),
                                local(row.from()),
                                row.to().map(this::local).orElse("open"),
                                row.activity(),
                                row.correction().map(this::told).orElse("")))
                .collect(Collectors.joining("\n"));
        return "seed %d, %s to %s, now %s in %s%n%s%ngaps %s%n%s%n"
                .formatted(seed, from, until, local(now), book.zone(), book.rules(), book.breaks(), rows);
    }

    private String told(Correction correction) {
        String what = correction.isStruck() ? "strikes " : "replaces ";
        return correction.replaces().map(what::concat).orElse("added");
    }

    /** Minutes of a day as the runs that are alike. */
    String listing(long first, List<Optional<Minute>> minutes) {
        StringBuilder runs = new StringBuilder();
        for (int from = 0, to; from < minutes.size(); from = to) {
            to = from + 1;
            while (to < minutes.size() && minutes.get(to).equals(minutes.get(from))) {
                to++;
            }
            String what = minutes.get(from).map(Minute::toString).orElse("away");
            runs.append(
                    "  %s + %d: %s%n".formatted(local(Instant.ofEpochSecond(60 * (first + from))), to - from, what));
        }
        return runs.toString();
    }

    private String local(Instant at) {
        return OffsetDateTime.ofInstant(at, book.zone()).toString();
    }
}
