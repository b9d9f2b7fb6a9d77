package org.shedboard.app;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.shedboard.app.command.CannotDo;
import org.shedboard.estimate.Catalogue;
import org.shedboard.hours.HoursRules;
import org.shedboard.register.Logbook;
import org.shedboard.register.Register;
import org.shedboard.register.Shelf;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Owner;
import org.shedboard.shop.Shop;
import org.shedboard.store.JournalRow;
import org.shedboard.store.Reader;

/**
 * The books without what was learned. They are asked for after every change, so they are kept in hand, and only what the journal says has
 * changed is read again: a change must not take longer the more years there are, nor the more the catalogue has.
 */
final class BooksInHand {
    /** What a day's work changes beside visits; none of it is in what stands. */
    private static final Set<String> DAYS_WORK = Set.of(
            "tag",
            "serial",
            "clock_entry",
            "errand",
            "plan_posted",
            "opening",
            "attendance",
            "hoist_check",
            "meter_reading",
            "rung",
            "owner",
            "machine",
            "carried",
            "notice_taken",
            "loan");

    /** What hardly ever changes. */
    record Standing(Shop shop, Catalogue catalogue, HoursRules hoursRules, Shelf shelf) {
        private static Standing of(Reader reader) {
            return new Standing(
                    reader.findShop().orElseThrow(() -> new CannotDo("command.no_shop_inside")),
                    reader.findCatalogue().orElseThrow(() -> new CannotDo("command.no_catalogue")),
                    reader.hoursRules(),
                    reader.shelf());
        }
    }

    /** What stands in them. */
    record Contents(Standing standing, List<Owner> owners, List<Machine> machines, Register register) {
        private static Contents of(Reader reader) {
            Register register = new Register(
                    reader.carried(),
                    reader.notices(),
                    reader.noticesTaken(),
                    reader.loans(),
                    reader.merged(),
                    List.of(),
                    reader.logbook());
            return new Contents(Standing.of(reader), reader.owners(), reader.machines(), register);
        }

        private Contents after(News news, Reader reader) {
            Set<String> tables = news.tables();
            Register now = new Register(
                    read(tables, "carried", register.carried(), reader::carried),
                    read(tables, "notice", register.notices(), reader::notices),
                    read(tables, "notice_taken", register.taken(), reader::noticesTaken),
                    read(tables, "loan", register.loans(), reader::loans),
                    read(tables, "machine", register.merged(), reader::merged),
                    List.of(),
                    logbook(news, reader));
            return new Contents(
                    news.isOfVisitsAnd(DAYS_WORK) ? standing : Standing.of(reader),
                    read(tables, "owner", owners, reader::owners),
                    read(tables, "machine", machines, reader::machines),
                    now);
        }

        private static <T> List<T> read(Set<String> changed, String table, List<T> known, Supplier<List<T>> anew) {
            return changed.contains(table) ? anew.get() : known;
        }

        private Logbook logbook(News news, Reader reader) {
            Set<String> visits = new HashSet<>(news.keysIn("visit"));
            visits.addAll(news.keysIn("visit_line"));
            Set<String> readings = news.keysIn("meter_reading");
            Set<String> rung = news.keysIn("rung");
            Logbook known = register.logbook();
            return visits.isEmpty() && readings.isEmpty() && rung.isEmpty()
                    ? known
                    : known.renewed(visits, reader.logbookOf(visits, readings, rung));
        }
    }

    /** @param last the newest change that is in them */
    private record InHand(JournalRow last, Contents contents) {}

    private Optional<InHand> inHand = Optional.empty();

    /** What stands in them as the reader sees the records. */
    synchronized Contents of(Reader reader) {
        Optional<Contents> goneOn = inHand.flatMap(known ->
                News.since(known.last(), reader).map(news -> known.contents().after(news, reader)));
        Contents contents = goneOn.orElseGet(() -> Contents.of(reader));
        inHand = reader.lastChange().map(last -> new InHand(last, contents));
        return contents;
    }
}
