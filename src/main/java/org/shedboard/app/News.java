package org.shedboard.app;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.shedboard.day.Act;
import org.shedboard.store.JournalRow;
import org.shedboard.store.Reader;

/** What has become other since something was read, as far as the journal tells it row by row. */
record News(List<JournalRow> changes) {
    /** After more changes than this all is read again. */
    private static final int MOST_CHANGES = 200;
    /** The one act that alters what the journal does not tell of. */
    private static final String FORGETTING = Act.ForgetOwner.class.getSimpleName();

    News {
        changes = List.copyOf(changes);
    }

    /**
     * What there is since this change was the newest; empty where anything may be other: too much has changed, the reader sees the records as
     * they were before it, or these are records in which it never was, as after going back to a backup.
     */
    static Optional<News> since(JournalRow last, Reader reader) {
        if (reader.lastJournal() - last.id() > MOST_CHANGES) {
            return Optional.empty();
        }
        List<JournalRow> changes = reader.journal(last.id());
        if (changes.isEmpty() || !changes.get(0).equals(last)) {
            return Optional.empty();
        }
        return Optional.of(new News(changes.subList(1, changes.size()))).filter(News::isTold);
    }

    boolean isTold() {
        return changes.stream().noneMatch(row -> row.isCounted() || row.what().equals(FORGETTING));
    }

    Set<String> tables() {
        return changes.stream().flatMap(row -> row.tables().stream()).collect(Collectors.toSet());
    }

    /** The first part of the keys of the rows of a table that changed. */
    Set<String> keysIn(String table) {
        return changes.stream().flatMap(row -> row.keysIn(table).stream()).collect(Collectors.toSet());
    }

    /** Ids of the visits in which something changed. */
    Set<String> visits() {
        return changes.stream().flatMap(row -> row.visits().stream()).collect(Collectors.toSet());
    }

    /** Whether nothing changed but visits and these other tables. */
    boolean isOfVisitsAnd(Set<String> others) {
        return changes.stream().allMatch(row -> row.isOfVisitsAnd(others));
    }
}
