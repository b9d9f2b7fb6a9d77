package org.shedboard.app;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.shedboard.day.Act;
import org.shedboard.register.Logbook;
import org.shedboard.register.Register;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Owner;
import org.shedboard.store.JournalRow;
import org.shedboard.store.Reader;

/**
 * The parts of the books that grow with the years. They are asked for after every change, so they are kept in hand, and only what the
 * journal says has changed is read again: a change must not take longer the more years there are.
 */
final class GrowingBooks {
    /** After more changes than this all is read again. */
    private static final int MOST_CHANGES = 200;
    /** The one act that alters what the journal does not tell of. */
    private static final String FORGETTING = Act.ForgetOwner.class.getSimpleName();

    /** What stands in them. */
    record Contents(List<Owner> owners, List<Machine> machines, Register register) {
        private static Contents of(Reader reader) {
            Register register = new Register(
                    reader.carried(),
                    reader.notices(),
                    reader.noticesTaken(),
                    reader.loans(),
                    reader.merged(),
                    List.of(),
                    reader.logbook());
            return new Contents(reader.owners(), reader.machines(), register);
        }

        /** After these changes. */
        private Contents after(List<JournalRow> changes, Reader reader) {
            Set<String> tables =
                    changes.stream().flatMap(row -> row.tables().stream()).collect(Collectors.toSet());
            Register now = new Register(
                    read(tables, "carried", register.carried(), reader::carried),
                    read(tables, "notice", register.notices(), reader::notices),
                    read(tables, "notice_taken", register.taken(), reader::noticesTaken),
                    read(tables, "loan", register.loans(), reader::loans),
                    read(tables, "machine", register.merged(), reader::merged),
                    List.of(),
                    logbook(changes, reader));
            return new Contents(
                    read(tables, "owner", owners, reader::owners),
                    read(tables, "machine", machines, reader::machines),
                    now);
        }

        private static <T> List<T> read(Set<String> changed, String table, List<T> known, Supplier<List<T>> anew) {
            return changed.contains(table) ? anew.get() : known;
        }

        private Logbook logbook(List<JournalRow> changes, Reader reader) {
            Set<String> visits = keys(changes, "visit");
            visits.addAll(keys(changes, "visit_line"));
            Set<String> readings = keys(changes, "meter_reading");
            Set<String> rung = keys(changes, "rung");
            Logbook known = register.logbook();
            return visits.isEmpty() && readings.isEmpty() && rung.isEmpty()
                    ? known
                    : known.renewed(visits, reader.logbookOf(visits, readings, rung));
        }

        /** The first part of the keys of the rows of a table that changed. */
        private static Set<String> keys(Collection<JournalRow> changes, String table) {
            return changes.stream().flatMap(row -> row.keysIn(table).stream()).collect(Collectors.toSet());
        }
    }

    private record InHand(long journal, Contents contents) {}

    private Optional<InHand> inHand = Optional.empty();

    /** What stands in them as the reader sees the records. */
    synchronized Contents of(Reader reader) {
        long journal = reader.lastJournal();
        Contents contents = inHand.filter(
                        known -> known.journal() <= journal && journal - known.journal() <= MOST_CHANGES)
                .map(known -> goneOn(known, reader))
                .orElseGet(() -> Contents.of(reader));
        // a reader may see the records as they were before the last change
        if (inHand.filter(known -> known.journal() > journal).isEmpty()) {
            inHand = Optional.of(new InHand(journal, contents));
        }
        return contents;
    }

    private static Contents goneOn(InHand known, Reader reader) {
        List<JournalRow> changes = reader.journal(known.journal() + 1);
        boolean isTold =
                changes.stream().noneMatch(row -> row.isCounted() || row.what().equals(FORGETTING));
        return isTold ? known.contents().after(changes, reader) : Contents.of(reader);
    }
}
