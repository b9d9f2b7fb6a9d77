package org.shedboard.day;

import java.util.Optional;
import org.shedboard.estimate.Estimator;
import org.shedboard.shop.Intake;
import org.shedboard.shop.Owner;
import org.shedboard.shop.Visit;

/** What is agreed with an owner for all their machines. */
final class OwnerActs {
    private final Draft draft;

    OwnerActs(Draft draft) {
        this.draft = draft;
    }

    Outcome setWashDown(Act.SetWashDown act) {
        Optional<Owner> owner = draft.day().books().findOwner(act.ownerId());
        if (owner.isEmpty()) {
            return new Outcome.Refused(Refusal.of("owner_unknown", act.ownerId()));
        }
        draft.put(owner.get().withWashDownFirst(act.first()));
        draft.day().visits().stream()
                .filter(visit -> visit.state().isOpen() && !visit.hasBegun())
                .filter(visit -> draft.day().ownerOf(visit).id().equals(act.ownerId()))
                .forEach(visit -> draft.put(replanned(visit, act.first())));
        return draft.done();
    }

    private Visit replanned(Visit visit, boolean first) {
        Intake intake = visit.intake().withWashDownFirst(first);
        return visit.withIntake(intake)
                .withStays(new Estimator(draft.day().books().catalogue())
                        .estimate(draft.day().machineOf(visit).classId(), intake, visit.lines())
                        .stays());
    }
}
