package org.shedboard.day;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shedboard.pack.Plan;

/**
 * A change that is tried on a copy of the day: acts, one after another, as they would be carried out. Nothing of it is in the records
 * before it is kept, and then all of it is or nothing.
 */
public record WhatIf(List<Act> acts) {
    public static final WhatIf NOTHING = new WhatIf(List.of());

    public WhatIf {
        acts = List.copyOf(acts);
    }

    public WhatIf plus(Act act) {
        List<Act> all = new ArrayList<>(acts);
        all.add(act);
        return new WhatIf(all);
    }

    /** Without the act that was added last. */
    public WhatIf withoutLast() {
        return new WhatIf(acts.subList(0, Math.max(0, acts.size() - 1)));
    }

    /** Whether it is a better plan that was found, and nothing else. */
    public boolean isOffer() {
        return acts.size() == 1 && acts.get(0) instanceof Act.Post;
    }

    /** With the plan that was found for it, which is posted last. */
    public WhatIf postedAs(Answer.Tried tried) {
        return tried.packed().map(plan -> plus(new Act.Post(plan))).orElse(this);
    }

    /** What comes of trying it. */
    public sealed interface Answer {
        /**
         * The day as it would be seen, and what is otherwise in it.
         *
         * @param packed the plan it is seen by, where one was found that is better than the posted one moved along
         */
        record Tried(Outlook outlook, Comparison comparison, Optional<Posted> packed) implements Answer {
            /** By a better plan for the same day. */
            public Tried by(Plan plan, Outlook before) {
                Posted posted = new Posted(plan, outlook.day().origin());
                Outlook after = Outlook.of(outlook.day().with(posted), outlook.at());
                return new Tried(after, Comparison.between(before, after), Optional.of(posted));
            }
        }

        /** One of the acts cannot be. */
        record NotPossible(Act act, Refusal refusal) implements Answer {}
    }

    /** Tries it on a day. */
    public Answer on(Outlook now) {
        Day day = now.day();
        for (Act act : acts) {
            Outcome outcome = carryOut(day, act, now.at());
            if (outcome instanceof Outcome.Refused refused) {
                return new Answer.NotPossible(act, refused.refusal());
            }
            day = ((Outcome.Done) outcome).day();
        }
        Outlook after = acts.isEmpty() ? now : Outlook.of(day, now.at());
        return new Answer.Tried(after, Comparison.between(now, after), Optional.empty());
    }

    /** Carries all of it out, to be saved and taken back as one change; the refusal of the first act that cannot be, and nothing. */
    public Outcome carryOut(Day before, Instant now) {
        Day day = before;
        List<Change> changes = new ArrayList<>();
        for (Act act : acts) {
            Outcome outcome = carryOut(day, act, now);
            if (!(outcome instanceof Outcome.Done done)) {
                return outcome;
            }
            day = done.day();
            // only the last plan is posted: those between were never on any board
            changes.removeIf(change -> change instanceof Change.PlanPosted);
            changes.addAll(done.changes());
        }
        return new Outcome.Done(day, changes, Optional.empty(), Trace.of(before, day, changes));
    }

    /** What somebody has to sign is not tried: it is nothing to be undecided about. */
    private static Outcome carryOut(Day day, Act act, Instant now) {
        return Signing.signerOf(day, act).isPresent()
                ? new Outcome.Refused(Refusal.of("not_to_be_tried"))
                : Planning.carryOut(day, act, now);
    }
}
