package org.shedboard.forecast;

import java.util.List;
import org.shedboard.estimate.Catalogue;
import org.shedboard.shop.Person;

/**
 * How the shop sees its work coming.
 *
 * @param packedPercent the minutes a plan gives a task are those that so many in a hundred such tasks stay within
 */
public record Foresight(Experience experience, int packedPercent) {
    public static final int LEAST_PERCENT = 50;
    public static final int MOST_PERCENT = 90;
    /**
     * What a shop packs that says nothing else: about the mean of log-normal minutes that scatter as a workshop's do. Overruns are longer
     * than underruns, so that a row of likely minutes ends too early as often as not and by more.
     */
    public static final int USUAL_PERCENT = 60;

    public Foresight {
        if (packedPercent < LEAST_PERCENT || packedPercent > MOST_PERCENT) {
            throw new IllegalArgumentException(
                    "plans cannot be packed with what %s %% stay within".formatted(packedPercent));
        }
    }

    /** Of a shop that has finished nothing yet; its plans give each task its likely minutes. */
    public static Foresight none(Catalogue catalogue, List<Person> people) {
        return new Foresight(Experience.none(catalogue, people), LEAST_PERCENT);
    }

    public Foresight withPacked(int percent) {
        return new Foresight(experience, percent);
    }

    public Foresight with(Experience next) {
        return new Foresight(next, packedPercent);
    }
}
