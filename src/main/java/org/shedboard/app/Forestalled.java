package org.shedboard.app;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.shedboard.board.Earlier;
import org.shedboard.day.Act;
import org.shedboard.day.AsSeen;
import org.shedboard.day.Day;
import org.shedboard.day.Decision;
import org.shedboard.day.Refusal;
import org.shedboard.store.JournalRow;
import org.shedboard.store.Reader;

/** Looks whether another terminal changed what an act is about since somebody saw it and made up their mind. */
record Forestalled(AsSeen seen, Act act, TerminalName here) {
    /** The refusal of an act that would go over somebody else's. */
    static final String OVERTAKEN = "overtaken";

    /** Why the act would go over what somebody else has decided meanwhile; empty where it would not. */
    Optional<Refusal> refusal(Reader reader, Day now) {
        return Decision.isOvertaken(act, seen.day(), now) && decided(reader).isPresent()
                ? Optional.of(new Refusal(OVERTAKEN, List.of()))
                : Optional.empty();
    }

    /** The change made at another terminal that has to do with why the act was refused, where there is one. */
    Optional<Earlier> earlier(Reader reader, Refusal refusal) {
        return (refusal.name().equals(OVERTAKEN) ? decided(reader) : newest(reader, this::touches)).map(this::told);
    }

    /** The newest such act on the same thing, else whatever changed it; what has no id of its own in the tables is told by the act alone. */
    private Optional<JournalRow> decided(Reader reader) {
        return newest(reader, row -> isSameAct(row) && touches(row))
                .or(() -> newest(reader, this::touches))
                .or(() -> newest(reader, this::isSameAct));
    }

    private boolean isSameAct(JournalRow row) {
        return row.what().equals(act.getClass().getSimpleName());
    }

    private Optional<JournalRow> newest(Reader reader, Predicate<JournalRow> wanted) {
        return reader.journal(seen.change() + 1).stream()
                .filter(row -> !row.terminal().equals(here.toString()))
                .filter(wanted)
                .reduce((older, newer) -> newer);
    }

    private boolean touches(JournalRow row) {
        return Decision.about(act).stream()
                .anyMatch(id -> row.who().equals(id) || row.keys().contains(id));
    }

    private Earlier told(JournalRow row) {
        return new Earlier(
                row.who(),
                row.at(),
                row.what(),
                Decision.about(act).stream()
                        .filter(id -> seen.day().findVisit(id).isPresent())
                        .findFirst(),
                TerminalName.parse(row.terminal()).machineElsewhere(here));
    }
}
