package org.shedboard.learn;

import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.shedboard.fit.LogNormal;

/**
 * How right forecasts were.
 *
 * @param count pieces of finished work
 * @param likelyShare of them that stayed within the likely minutes; a half where forecasts are right
 * @param safeShare of them that stayed within the safe minutes; four fifths where forecasts are right
 * @param factor by what the likely minutes would have had to be multiplied, in the middle: above 1 where work ran over them
 */
public record Score(
        int count,
        double likelyShare,
        double safeShare,
        double factor,
        Measures learned,
        Measures catalogue,
        Measures lastTen) {
    /**
     * The measures of one forecaster, each the less the better.
     *
     * @param percentageError mean distance of the likely minutes from the actual ones, as a share of these
     * @param pinballLikely mean loss of the likely minutes, in minutes
     * @param pinballSafe mean loss of the safe minutes, in minutes
     * @param crps mean continuous ranked probability score, in minutes
     */
    public record Measures(double percentageError, double pinballLikely, double pinballSafe, double crps) {
        /** Mean distance of the likely minutes from the actual ones, in minutes: what is missed on either side of a half counts a half. */
        public double meanMinutesOff() {
            return pinballLikely / Said.LIKELY;
        }

        private static Measures of(List<Said> said, Function<Said, LogNormal> forecast) {
            return new Measures(
                    mean(said, each -> {
                        double actual = each.lesson().actualMinutes();
                        return Math.abs(forecast.apply(each).median() - actual) / actual;
                    }),
                    mean(
                            said,
                            each -> forecast.apply(each)
                                    .pinball(Said.LIKELY, each.lesson().actualMinutes())),
                    mean(
                            said,
                            each -> forecast.apply(each)
                                    .pinball(Said.SAFE, each.lesson().actualMinutes())),
                    mean(said, each -> forecast.apply(each).crps(each.lesson().actualMinutes())));
        }
    }

    /** Of at least one piece of finished work. */
    public static Score of(List<Said> said) {
        if (said.isEmpty()) {
            throw new IllegalArgumentException("nothing was forecast, nothing can be scored");
        }
        return new Score(
                said.size(),
                mean(said, each -> each.isWithinLikely() ? 1 : 0),
                mean(said, each -> each.isWithinSafe() ? 1 : 0),
                factor(said),
                Measures.of(said, Said::learned),
                Measures.of(said, Said::catalogue),
                Measures.of(said, Said::lastTen));
    }

    /** By what the likely minutes of these would have had to be multiplied. */
    static double factor(List<Said> said) {
        return StrictMath.exp(mean(said, Said::overrun));
    }

    /** How the share within the likely minutes stands to the half that it should be. */
    public Aim likelyAim() {
        return Aim.of(likelyShare, Said.LIKELY, count);
    }

    /** How the share within the safe minutes stands to the four fifths that it should be. */
    public Aim safeAim() {
        return Aim.of(safeShare, Said.SAFE, count);
    }

    private static double mean(List<Said> said, ToDoubleFunction<Said> figure) {
        return said.stream().mapToDouble(figure).average().orElseThrow();
    }
}
