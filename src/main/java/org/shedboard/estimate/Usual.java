package org.shedboard.estimate;

import java.util.Locale;
import org.shedboard.shop.Skill;
import org.shedboard.shop.Step;
import org.shedboard.shop.WorkKind;

/**
 * A task that visits have whatever is wanted on them; its words and its caution come from the catalogue, its minutes from the
 * machine's class.
 */
public enum Usual {
    DRIVE_IN(WorkKind.MOVE, Skill.WASH),
    PUSH_IN(WorkKind.MOVE, Skill.WASH),
    RAISE(WorkKind.MOVE, Skill.HOIST),
    LOWER(WorkKind.MOVE, Skill.HOIST),
    WASH(WorkKind.CLEAN, Skill.WASH),
    UNCOVER(WorkKind.CLEAN, Skill.WASH),
    SIGN_WASH_DOWN(WorkKind.SIGN_OFF, Skill.SIGN_OFF),
    CLEAN_PAD(WorkKind.CLEAN, Skill.WASH),
    INSPECT_UNDERSIDE(WorkKind.INSPECT, Skill.SERVICE),
    INSPECT_TOPSIDE(WorkKind.INSPECT, Skill.SERVICE),
    TEST_DRIVE(WorkKind.INSPECT, Skill.SERVICE),
    STANDING_CHECK(WorkKind.INSPECT, Skill.SERVICE),
    SIGN_OFF(WorkKind.SIGN_OFF, Skill.SIGN_OFF);

    private final WorkKind kind;
    private final Skill skill;

    Usual(WorkKind kind, Skill skill) {
        this.kind = kind;
        this.skill = skill;
    }

    WorkKind kind() {
        return kind;
    }

    Skill skill() {
        return skill;
    }

    /** The id of this task in a stay of that step; bringing a machine in happens in several steps of one visit. */
    public String idIn(Step step) {
        String name = name().toLowerCase(Locale.ROOT).replace('_', '-');
        return this == DRIVE_IN || this == PUSH_IN ? "in-" + step.name().toLowerCase(Locale.ROOT) : name;
    }

    /** The task that looks at the inspection points of a step; the test drive for a machine that drives. */
    static Usual inspectionOf(Step step, boolean drives) {
        return switch (step) {
            case UNDERSIDE -> INSPECT_UNDERSIDE;
            case TOPSIDE -> INSPECT_TOPSIDE;
            case DRIVE -> drives ? TEST_DRIVE : STANDING_CHECK;
            case WASH -> throw new IllegalArgumentException("nothing is inspected on the wash pad");
        };
    }

    /** What the catalogue says of it. */
    public record Words(String name, String caution) {}
}
