package org.shedboard.day;

import java.util.Optional;
import org.shedboard.shop.Progress;
import org.shedboard.shop.Skill;
import org.shedboard.shop.Step;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;

/** How a wash-down stands that a property wants before its machine comes into any bay. */
public final class WashDowns {
    private WashDowns() {}

    /** Whether the machine may not come into any bay yet. */
    public static boolean isAwaited(Visit visit) {
        return visit.intake().washDownFirst()
                && visit.state().isOpen()
                && signature(visit).filter(task -> !task.isDone()).isPresent();
    }

    /** Who signed it, and when; empty until then. */
    public static Optional<Progress> signed(Visit visit) {
        return visit.intake().washDownFirst()
                ? signature(visit).filter(Task::isDone).map(Task::progress)
                : Optional.empty();
    }

    /** The one task of a wash that takes the skill to sign off. */
    private static Optional<Task> signature(Visit visit) {
        return visit.stays().stream()
                .filter(stay -> stay.step() == Step.WASH)
                .flatMap(stay -> stay.tasks().stream())
                .filter(task -> task.skill() == Skill.SIGN_OFF)
                .findFirst();
    }
}
