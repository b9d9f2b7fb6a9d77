package org.shedboard.hours;

import org.shedboard.shop.Line;

/**
 * The shop's settings for its hours. Local codes come before any of them.
 *
 * @param attendance how arriving and leaving are rounded for pay
 * @param charge how the chargeable minutes of a line are rounded, once
 * @param basis which minutes of a line are charged
 * @param lentMinutes a hand lent for fewer minutes stays with the machine it was called away from
 */
public record HoursRules(Rounding attendance, Rounding charge, Basis basis, BreakRule breaks, int lentMinutes) {
    /** Which minutes of a line are charged. */
    public enum Basis {
        WORKED,
        ESTIMATED,
        /** What was agreed with the payer; the estimate where nothing was. */
        AGREED
    }

    /** What a shop begins with: invented, but for the breaks. */
    public static final HoursRules USUAL = new HoursRules(
            Rounding.EXACT,
            new Rounding(Rounding.Unit.TENTH, Rounding.Direction.NEAREST),
            Basis.WORKED,
            BreakRule.USUAL,
            10);

    public HoursRules {
        if (lentMinutes < 0) {
            throw new IllegalArgumentException("a hand cannot be lent for %s minutes".formatted(lentMinutes));
        }
    }

    /**
     * Minutes to be charged for a whole line, rounded once.
     *
     * @param worked minutes worked on it, or that will be
     * @param estimated minutes it was estimated at
     */
    public int chargeable(Line line, int worked, int estimated) {
        return charge.minutes(
                switch (basis) {
                    case WORKED -> worked;
                    case ESTIMATED -> estimated;
                    case AGREED -> line.agreedMinutes().orElse(estimated);
                });
    }
}
