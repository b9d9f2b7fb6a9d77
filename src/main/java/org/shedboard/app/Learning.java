package org.shedboard.app;

import java.time.Instant;
import java.time.LocalDate;
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
import org.shedboard.store.Reader;

/** What a shop learns from its finished work, which is read again only when something in it has changed. */
final class Learning {
    /** People, tools and machines change: what was finished longer ago than this is not learned from. An invented figure. */
    private static final int MEMORY_DAYS = 3 * 365;
    /** More teach next to nothing new, and each start would take longer to read them; an invented figure. */
    private static final int MOST_VISITS = 600;
    /** Longer than a visit is with us, so that all the work on those that are remembered is. */
    private static final int LONGEST_VISIT_DAYS = 365;

    /** All that what was learned hangs on. */
    private record State(
            List<Long> finished,
            LocalDate date,
            Catalogue catalogue,
            Shop shop,
            Set<Kind> machines,
            HoursRules hoursRules) {
        static State of(Reader reader, Books books, LocalDate date) {
            return new State(
                    reader.stateOfFinishedWork(),
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
        State state = State.of(reader, books, date);
        Books before = known.map(seen -> books.with(books.foresight().with(seen.experience())))
                .orElse(books);
        if (known.filter(seen -> state.goesOnFrom(seen.state())).isPresent()) {
            return before;
        }
        LocalDate first = firstDate(reader, date, books);
        Instant since = startOf(first, books);
        Instant firstWork = startOf(first.minusDays(LONGEST_VISIT_DAYS), books);
        Instant until = now.plusSeconds(1);
        Books taught = before.learningFrom(reader.finishedVisits(since, until), reader.entries(firstWork, until), now);
        known = Optional.of(new Known(state, taught.experience()));
        return taught;
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
