package org.shedboard.day;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.shedboard.estimate.Item;
import org.shedboard.register.Stock;

/**
 * Something to fetch from the shelf for a machine that is worked on on some day.
 *
 * @param bin where it lies; empty where nobody said
 */
public record Pick(Cover cover, Item item, String bin) {
    /** What the plan uses on a date, bin by bin. */
    public static List<Pick> of(Outlook outlook, LocalDate date) {
        Books books = outlook.day().books();
        return SetAside.of(outlook.day(), outlook.at()).covers().stream()
                .filter(cover ->
                        outlook.dateOf(cover.need()).filter(date::equals).isPresent())
                .flatMap(cover -> books.catalogue().findItem(cover.itemId()).stream()
                        .map(item -> new Pick(cover, item, binOf(books, item))))
                .sorted(Comparator.comparing(Pick::bin)
                        .thenComparing(pick -> pick.item().name()))
                .toList();
    }

    private static String binOf(Books books, Item item) {
        return books.shelf().findStock(item.id()).map(Stock::bin).orElse("");
    }

    public Need need() {
        return cover.need();
    }

    /** Empty where what is not there is not ordered either. */
    public Optional<Instant> hereFrom() {
        return cover.state() == Cover.State.ON_ORDER ? cover.from() : Optional.empty();
    }
}
