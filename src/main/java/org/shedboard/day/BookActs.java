package org.shedboard.day;

import java.time.Instant;
import java.util.Optional;
import org.shedboard.hours.Activity;
import org.shedboard.hours.ClockEntry;
import org.shedboard.hours.Correction;
import org.shedboard.hours.TimeBook;
import org.shedboard.shop.Line;
import org.shedboard.shop.Visit;

/** What is written into the books of the hours after the fact: corrections, what was agreed to be charged, the rules. */
final class BookActs {
    private final Draft draft;
    private final Instant now;

    BookActs(Draft draft, Instant now) {
        this.draft = draft;
        this.now = now;
    }

    /** The old row stays as it is; the new one names it, who answers for it and why. */
    Outcome correct(Act.Correct act) {
        Optional<Refusal> no = refusal(act);
        if (no.isPresent()) {
            return new Outcome.Refused(no.get());
        }
        Correction correction = new Correction(
                act.replaces(), act.right().isEmpty(), act.by(), now, act.why().strip());
        String id = draft.newId("C");
        draft.put(act.right()
                .map(right -> new ClockEntry(
                        id,
                        right.personId(),
                        right.activity(),
                        right.from(),
                        Optional.of(right.to()),
                        Optional.of(correction)))
                .orElseGet(
                        () -> struck(id, standing(act.replaces().orElseThrow()).orElseThrow(), correction)));
        return draft.done();
    }

    private static ClockEntry struck(String id, ClockEntry old, Correction correction) {
        return new ClockEntry(id, old.personId(), old.activity(), old.from(), old.to(), Optional.of(correction));
    }

    private Optional<ClockEntry> standing(String id) {
        return ClockEntry.standing(draft.day().rows()).stream()
                .filter(row -> row.id().equals(id))
                .findFirst();
    }

    private Optional<Refusal> refusal(Act.Correct act) {
        if (draft.day().shop().findPerson(act.by()).isEmpty()) {
            return Optional.of(Refusal.of("person_unknown", act.by()));
        }
        if (act.why().isBlank()) {
            return Optional.of(Refusal.of("correction_needs_reason"));
        }
        if (act.replaces().isEmpty() && act.right().isEmpty()) {
            return Optional.of(Refusal.of("correction_says_nothing"));
        }
        return act.replaces()
                .flatMap(this::oldRefusal)
                .or(() -> act.right().flatMap(right -> newRefusal(act.replaces(), right)));
    }

    private Optional<Refusal> oldRefusal(String id) {
        Optional<ClockEntry> old = standing(id);
        if (old.isEmpty()) {
            return Optional.of(Refusal.of("entry_unknown", id));
        }
        // a presence that nobody ended by midnight will not be ended any more: it is put right whole
        boolean goesOn = old.get().isOpen()
                && !(old.get().isAtWork()
                        && TimeBook.isUnsettled(old.get(), draft.day().zone(), now));
        return goesOn
                ? Optional.of(Refusal.of(
                        "entry_still_open", draft.day().nameOf(old.get().personId())))
                : Optional.empty();
    }

    private Optional<Refusal> newRefusal(Optional<String> replaces, Act.Correct.Written right) {
        Day day = draft.day();
        boolean isKnown = day.shop().findPerson(right.personId()).isPresent()
                || replaces.flatMap(this::standing)
                        .filter(old -> old.personId().equals(right.personId()))
                        .isPresent();
        if (!isKnown) {
            return Optional.of(Refusal.of("person_unknown", right.personId()));
        }
        if (!right.from().isBefore(right.to())) {
            String name = right.activity() instanceof Activity.AtWork ? "leave_before_arrive" : "off_before_on";
            return Optional.of(Refusal.of(name, Clocks.sayTime(day, right.to()), Clocks.sayTime(day, right.from())));
        }
        if (right.to().isAfter(now)) {
            return Optional.of(Refusal.of("time_to_come", Clocks.sayTime(day, right.to())));
        }
        return visitRefusal(right.activity()).or(() -> overlapRefusal(replaces, right));
    }

    private Optional<Refusal> visitRefusal(Activity activity) {
        return activity instanceof Activity.OnStay on
                        && draft.day().findVisit(on.visitId()).isEmpty()
                ? Optional.of(Refusal.of("visit_unknown", on.visitId()))
                : Optional.empty();
    }

    /** Nobody is on two things at a time, or in the shop twice. */
    private Optional<Refusal> overlapRefusal(Optional<String> replaces, Act.Correct.Written right) {
        Day day = draft.day();
        boolean isAtWork = right.activity() instanceof Activity.AtWork;
        return ClockEntry.standing(day.rows()).stream()
                .filter(row -> row.personId().equals(right.personId()) && row.isAtWork() == isAtWork)
                .filter(row -> !replaces.equals(Optional.of(row.id())))
                .filter(row -> row.overlaps(right.from(), right.to()))
                .findFirst()
                .map(row -> Refusal.of(
                        "entries_overlap",
                        day.nameOf(row.personId()),
                        row.id(),
                        Clocks.sayTime(day, row.from()),
                        row.to().map(to -> Clocks.sayTime(day, to)).orElse("")));
    }

    Outcome agree(Act.AgreeHours act) {
        return draft.onVisit(
                act.visitId(),
                visit -> visit.findLine(act.lineId())
                        .map(line -> agree(visit, line, act.minutes()))
                        .orElseGet(() -> new Outcome.Refused(
                                Refusal.of("line_unknown", act.lineId(), Names.of(draft.day(), visit)))));
    }

    private Outcome agree(Visit visit, Line line, int minutes) {
        if (!line.payer().isOutside()) {
            return new Outcome.Refused(Refusal.of("line_is_ours", line.name()));
        }
        if (minutes < 0) {
            return new Outcome.Refused(Refusal.of("minutes_below_nothing", minutes));
        }
        Visit agreed = visit.withLines(Books.replaced(visit.lines(), line.agreedAt(minutes), Line::id));
        draft.put(agreed);
        return draft.doneWith(agreed);
    }

    Outcome setRules(Act.SetHoursRules act) {
        if (draft.day().shop().findPerson(act.by()).isEmpty()) {
            return new Outcome.Refused(Refusal.of("person_unknown", act.by()));
        }
        draft.put(act.rules());
        return draft.done();
    }
}
