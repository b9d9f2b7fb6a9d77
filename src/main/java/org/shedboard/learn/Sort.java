package org.shedboard.learn;

import org.shedboard.shop.Step;
import org.shedboard.shop.WorkKind;

/** What is learned apart: work of one sort runs over or under its catalogue minutes for reasons of its own. */
public enum Sort {
    WASH(WorkKind.CLEAN),
    UNDERSIDE(WorkKind.INSPECT),
    TOPSIDE(WorkKind.INSPECT),
    REPAIR(WorkKind.REPAIR);

    private final WorkKind kind;

    Sort(WorkKind kind) {
        this.kind = kind;
    }

    /** The kind of work that most of it is. */
    public WorkKind kind() {
        return kind;
    }

    /** The sort of a task: what a line wants is repair wherever it is done; the test drive goes with the topside. */
    public static Sort of(Step step, WorkKind kind) {
        if (kind == WorkKind.REPAIR) {
            return REPAIR;
        }
        return switch (step) {
            case WASH -> WASH;
            case UNDERSIDE -> UNDERSIDE;
            case TOPSIDE, DRIVE -> TOPSIDE;
        };
    }
}
