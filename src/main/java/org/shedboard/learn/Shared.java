package org.shedboard.learn;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * The part of the scatter that pieces of work share: how alike the deviations of two pieces are that have a machine's visit, or a
 * person's day, in common. It is the mean product of such pairs, with what was believed before counting as {@value #PRIOR_PAIRS} pairs.
 */
final class Shared {
    private static final double PRIOR_PAIRS = 30;

    /** A lesson and how far it lies from the model. */
    record Residual(Lesson lesson, double value) {}

    private Shared() {}

    /** @param key what pairs have in common; lessons with no key pair with none */
    static double deviation(List<Residual> residuals, Function<Lesson, String> key, boolean sameVisit, double prior) {
        Map<String, List<Residual>> groups = new LinkedHashMap<>();
        for (Residual residual : residuals) {
            String name = key.apply(residual.lesson());
            if (!name.isEmpty()) {
                groups.computeIfAbsent(name, absent -> new ArrayList<>()).add(residual);
            }
        }
        double products = PRIOR_PAIRS * prior * prior;
        double pairs = PRIOR_PAIRS;
        for (List<Residual> group : groups.values()) {
            for (int i = 0; i < group.size(); i++) {
                for (int j = i + 1; j < group.size(); j++) {
                    if (isOneVisit(group.get(i), group.get(j)) == sameVisit) {
                        products += group.get(i).value() * group.get(j).value();
                        pairs++;
                    }
                }
            }
        }
        return StrictMath.sqrt(Math.max(0, products / pairs));
    }

    private static boolean isOneVisit(Residual one, Residual other) {
        return one.lesson().visitId().equals(other.lesson().visitId());
    }
}
