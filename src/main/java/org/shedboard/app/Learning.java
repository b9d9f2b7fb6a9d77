package org.shedboard.app;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.shedboard.day.Books;
import org.shedboard.estimate.Catalogue;
import org.shedboard.forecast.Experience;
import org.shedboard.hours.HoursRules;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Shop;
import org.shedboard.shop.Visit;
import org.shedboard.store.Reader;

/** What a shop learns from its finished work, which is read again only when something in it has changed. */
final class Learning {
    /** People, tools and machines change: what was finished longer ago than this is not learned from. An invented figure. */
    private static final int MEMORY_DAYS = 3 * 365;
    /** More teach next to nothing new, and each start would take longer to read them; an invented figure. */
    private static final int MOST_VISITS = 600;

    /** All that what was learned hangs on. */
    private record State(
            List<Long> finished,
            LocalDate date,
            Catalogue catalogue,
            Shop shop,
            Set<Kind> machines,
            HoursRules hoursRules) {
        static State of(Reader reader, Books books, LocalDate date, Instant since) {
            return new State(
                    reader.stateOfFinishedWork(since),
                    date,
                    books.catalogue(),
                    books.shop(),
                    books.machines().stream().map(Kind::of).collect(Collectors.toSet()),
                    books.hoursRules());
        }

        /** Whether it is this one, but for machines that are new: nothing was finished on those. */
        boolean goesOnFrom(State before) {
            State asBefore = new State(finished, date, catalogue, shop, before.machines, hoursRules);
            return asBefore.equals(before) && machines.containsAll(before.machines);
        }
    }

    /** What a lesson tells of a machine. */
    private record Kind(String machineId, String classId, OptionalInt modelYear) {
        static Kind of(Machine machine) {
            return new Kind(machine.id(), machine.classId(), machine.modelYear());
        }
    }

    private record Known(State state, Experience experience) {}

    private Optional<Known> known = Optional.empty();

    /** These books with what the records have taught by this moment. */
    synchronized Books taught(Reader reader, Books books, Instant now) {
        LocalDate date = LocalDate.ofInstant(now, books.shop().zone());
        Instant since = startOf(firstDate(reader, date, books), books);
        State state = State.of(reader, books, date, since);
        Books before = known.map(seen -> books.with(books.foresight().with(seen.experience())))
                .orElse(books);
        if (known.filter(seen -> state.goesOnFrom(seen.state())).isPresent()) {
            return before;
        }
        Instant until = now.plusSeconds(1);
        List<Visit> finished = reader.finishedVisits(since, until);
        Instant firstWork = firstWork(finished, since, books);
        Books taught = before.learningFrom(finished, reader.entries(firstWork, until), now);
        known = Optional.of(new Known(state, taught.experience()));
        return taught;
    }

    /** The start of the first day on which there can be work on one of these visits. */
    private static Instant firstWork(List<Visit> finished, Instant since, Books books) {
        Instant arrived = finished.stream()
                .map(visit -> visit.intake().arrives())
                .min(Comparator.naturalOrder())
                .filter(since::isAfter)
                .orElse(since);
        return startOf(LocalDate.ofInstant(arrived, books.shop().zone()), books);
    }

    /** The first of whole days, so that all that is finished on one day is learned from or none of it. */
    private static LocalDate firstDate(Reader reader, LocalDate today, Books books) {
        LocalDate remembered = today.minusDays(MEMORY_DAYS);
        return reader.finishOfNewestBut(MOST_VISITS, startOf(today, books))
                .map(finish -> LocalDate.ofInstant(finish, books.shop().zone()).plusDays(1))
                .filter(remembered::isBefore)
                .orElse(remembered);
    }

    private static Instant startOf(LocalDate date, Books books) {
        return date.atStartOfDay(books.shop().zone()).toInstant();
    }
}
