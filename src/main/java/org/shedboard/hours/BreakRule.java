package org.shedboard.hours;

import org.shedboard.hours.Activity.Break;

/**
 * Which breaks are time worked.
 *
 * @param restMinutes up to so many minutes a break is a rest, which is time worked
 * @param mealMinutes from so many minutes on a meal is not time worked
 * @param isPlannedTaken whether the gaps between a person's usual shifts are taken as breaks without anybody clocking them
 */
public record BreakRule(int restMinutes, int mealMinutes, boolean isPlannedTaken) {
    /** What a break comes to. */
    public enum Verdict {
        WORKED,
        FREE,
        /** Neither a rest nor a meal by its length: somebody has to say. It counts as time worked until then. */
        TO_SAY
    }

    /**
     * An example: rests of up to about twenty minutes are hours worked (29 CFR 785.18), and for a meal thirty minutes are
     * ordinarily long enough (29 CFR 785.19); what lies between is not decided there.
     */
    public static final BreakRule USUAL = new BreakRule(20, 30, true);

    public BreakRule {
        if (restMinutes < 0 || mealMinutes <= restMinutes) {
            throw new IllegalArgumentException(
                    "a meal (%s minutes) must be longer than a rest (%s)".formatted(mealMinutes, restMinutes));
        }
    }

    Verdict of(Break.Kind kind, long minutes) {
        return switch (kind) {
            case REST -> Verdict.WORKED;
            case OFF_DUTY -> Verdict.FREE;
            case MEAL -> ofMeal(minutes);
        };
    }

    private Verdict ofMeal(long minutes) {
        if (minutes <= restMinutes) {
            return Verdict.WORKED;
        }
        return minutes >= mealMinutes ? Verdict.FREE : Verdict.TO_SAY;
    }

    /** What a gap in the usual shifts is planned as. */
    Break.Kind plannedAs(long minutes) {
        return minutes <= restMinutes ? Break.Kind.REST : Break.Kind.MEAL;
    }
}
