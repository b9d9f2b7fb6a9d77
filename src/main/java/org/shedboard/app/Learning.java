package org.shedboard.app;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.shedboard.day.Books;
import org.shedboard.estimate.Catalogue;
import org.shedboard.forecast.Experience;
import org.shedboard.hours.HoursRules;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Shop;
import org.shedboard.store.Reader;

/** What a shop learns from its finished work, which is read again only when something in it has changed. */
final class Learning {
    /** All that what was learned hangs on. */
    private record State(
            List<Long> finished,
            LocalDate date,
            Catalogue catalogue,
            Shop shop,
            List<Machine> machines,
            HoursRules hoursRules) {}

    private record Known(State state, Experience experience) {}

    private Optional<Known> known = Optional.empty();

    /** These books with what the records have taught by this moment. */
    synchronized Books taught(Reader reader, Books books, Instant now) {
        LocalDate date = LocalDate.ofInstant(now, books.shop().zone());
        State state = new State(
                reader.stateOfFinishedWork(),
                date,
                books.catalogue(),
                books.shop(),
                books.machines(),
                books.hoursRules());
        Books before = known.map(seen -> books.with(books.foresight().with(seen.experience())))
                .orElse(books);
        if (known.filter(seen -> seen.state().equals(state)).isPresent()) {
            return before;
        }
        Instant until = now.plusSeconds(1);
        Books taught = before.learningFrom(
                reader.finishedVisits(Instant.EPOCH, until), reader.entries(Instant.EPOCH, until), now);
        known = Optional.of(new Known(state, taught.experience()));
        return taught;
    }
}
