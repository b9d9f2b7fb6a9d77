package org.shedboard.day;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.shedboard.register.Merged;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Owner;
import org.shedboard.shop.Promise;
import org.shedboard.shop.Visit;

/** What is put right in the register: machines and owners, two records of one machine, and owners who want to be forgotten. */
final class RegisterActs {
    /** No machine of this kind of workshop is older; invented. */
    private static final int FIRST_YEAR = 1900;

    private final Draft draft;
    private final Instant now;

    RegisterActs(Draft draft, Instant now) {
        this.draft = draft;
        this.now = now;
    }

    Outcome correct(Act.CorrectMachine act) {
        Optional<Machine> machine = books().findMachine(act.machineId());
        if (machine.isEmpty()) {
            return refuse("machine_unknown", act.machineId());
        }
        Optional<Refusal> no = yearRefusal(draft.day(), act.modelYear());
        if (no.isPresent()) {
            return new Outcome.Refused(no.get());
        }
        if (act.massKg() < 1) {
            return refuse("mass_impossible", act.massKg());
        }
        draft.put(machine.get()
                .withLabel(act.label())
                .withModelYear(act.modelYear())
                .withNumber(act.number())
                .withMassKg(act.massKg()));
        return draft.done();
    }

    /** A model year is of the next year at the latest. */
    static Optional<Refusal> yearRefusal(Day day, OptionalInt year) {
        int last = day.date().getYear() + 1;
        return year.isPresent() && (year.getAsInt() < FIRST_YEAR || year.getAsInt() > last)
                ? Optional.of(Refusal.of("year_impossible", year.getAsInt(), FIRST_YEAR, last))
                : Optional.empty();
    }

    Outcome correct(Act.CorrectOwner act) {
        if (books().findOwner(act.ownerId()).isEmpty()) {
            return refuse("owner_unknown", act.ownerId());
        }
        if (act.name().isBlank()) {
            return refuse("owner_missing");
        }
        draft.put(new Owner(act.ownerId(), act.name(), act.phone()));
        return draft.done();
    }

    /** The record that is kept gets what it lacks from the other; everything that names the other names it from now on. */
    Outcome merge(Act.MergeMachines act) {
        Optional<Refusal> no = refusal(act);
        if (no.isPresent()) {
            return new Outcome.Refused(no.get());
        }
        Machine keep = books().expectMachine(act.keepId());
        Machine other = books().expectMachine(act.otherId());
        draft.put(keep.filledFrom(other));
        for (Visit visit : draft.day().visits()) {
            if (visit.machineId().equals(other.id())) {
                draft.put(visit.withMachine(keep.id()));
            }
        }
        draft.put(new Merged(other, keep.id(), now));
        return draft.done();
    }

    private Optional<Refusal> refusal(Act.MergeMachines act) {
        for (String id : List.of(act.keepId(), act.otherId())) {
            if (books().findMachine(id).isEmpty()) {
                return Optional.of(Refusal.of("machine_unknown", id));
            }
        }
        if (act.keepId().equals(act.otherId())) {
            return Optional.of(Refusal.of("merge_with_itself"));
        }
        Optional<Visit> open = openVisitOf(act.otherId());
        if (open.isPresent() && openVisitOf(act.keepId()).isPresent()) {
            return Optional.of(Refusal.of("both_here", Names.of(draft.day(), open.get())));
        }
        boolean isOfOneClass = books().expectMachine(act.keepId())
                .classId()
                .equals(books().expectMachine(act.otherId()).classId());
        return open.isPresent() && !isOfOneClass
                ? Optional.of(Refusal.of("merge_other_class", Names.of(draft.day(), open.get())))
                : Optional.empty();
    }

    private Optional<Visit> openVisitOf(String machineId) {
        return draft.day().visits().stream()
                .filter(visit -> visit.machineId().equals(machineId))
                .filter(visit -> visit.state().isOpen() || visit.state().isHere())
                .findFirst();
    }

    /** Who has a machine here has to be reached; after that nothing is left of them but their machines' hours and history. */
    Outcome forget(Act.ForgetOwner act) {
        Optional<Owner> owner = books().findOwner(act.ownerId());
        if (owner.isEmpty()) {
            return refuse("owner_unknown", act.ownerId());
        }
        if (owner.get().isForgotten()) {
            return refuse("owner_forgotten", act.ownerId());
        }
        Optional<Visit> here = draft.day().visits().stream()
                .filter(visit -> draft.day().ownerOf(visit).equals(owner.get()))
                .filter(visit -> visit.state().isOpen() || visit.state().isHere())
                .findFirst();
        if (here.isPresent()) {
            return refuse("owner_machine_here", Names.of(draft.day(), here.get()));
        }
        draft.forget(owner.get().forgotten());
        return draft.done();
    }

    /** The visit with nobody's name in what was promised. */
    static Visit forgotten(Visit visit, Owner owner) {
        return visit.withPromises(visit.promises().stream()
                .map(promise -> new Promise(
                        promise.at(), promise.by(), owner.id(), promise.saidAt(), promise.why(), promise.ownersWish()))
                .toList());
    }

    private Books books() {
        return draft.day().books();
    }

    private static Outcome refuse(String name, Object... values) {
        return new Outcome.Refused(Refusal.of(name, values));
    }
}
