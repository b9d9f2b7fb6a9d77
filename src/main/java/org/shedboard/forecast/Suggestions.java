package org.shedboard.forecast;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.shedboard.estimate.Catalogue;
import org.shedboard.estimate.Figure;
import org.shedboard.learn.Doubt;

/**
 * The figures of the catalogue that finished work contradicts.
 *
 * <p>Washing by class and mud, inspecting by class and step, and the hands-on minutes of the tasks of works can be found wrong. Bringing
 * in, raising, lowering and signing off take few minutes, of which clocks that tell whole ones say little; uncovering is a figure of each
 * point, which nobody clocks by itself; unattended minutes are not worked. None of these is ever suggested, and neither is what all work
 * has in common: the forecast has that, and needs no figure changed for it.
 */
public final class Suggestions {
    /** Fewer finished visits may all have had the same bad luck. */
    static final int ENOUGH_STAYS = 8;
    /** So that a factor that is surely not 1 does not read as 1 when it is shown. */
    private static final double LEAST_STRENGTH = 0.01;
    /** A smaller change is not worth having two figures for one thing. */
    private static final double LEAST_CHANGE = 0.1;
    /** Of fewer minutes, before and after, clocks that tell whole ones say too little. */
    private static final int SHORTEST = 5;

    private Suggestions() {}

    /**
     * Those that stand in this catalogue, the strongest first; none while the work has not been measured by just this catalogue, for what
     * was found by another would be put on top of what that was changed by.
     */
    public static List<Suggestion> of(Catalogue catalogue, Experience experience) {
        if (!experience.isMeasuredBy(catalogue)) {
            return List.of();
        }
        Map<String, Figure> figures = Figure.of(catalogue).stream()
                .collect(Collectors.toMap(Figure::id, figure -> figure, (one, other) -> one, LinkedHashMap::new));
        return experience.doubts().stream()
                .filter(doubt -> figures.containsKey(doubt.figure()))
                .filter(doubt -> doubt.stays() >= ENOUGH_STAYS && doubt.strength() >= LEAST_STRENGTH)
                .flatMap(doubt -> suggestion(catalogue, figures.get(doubt.figure()), doubt).stream())
                .sorted(Comparator.comparingDouble(
                                (Suggestion each) -> -each.evidence().strength())
                        .thenComparing(each -> each.figure().id()))
                .toList();
    }

    private static Optional<Suggestion> suggestion(Catalogue catalogue, Figure figure, Doubt doubt) {
        int now = figure.minutesIn(catalogue).orElseThrow();
        int least = figure.least(catalogue);
        int most = figure.most(catalogue);
        int proposed = Math.max(least, Math.min(most, (int) Math.round(now * doubt.factor())));
        boolean isWorthIt = Math.abs(proposed - now) >= Math.max(1, LEAST_CHANGE * now);
        return isWorthIt && Math.max(now, proposed) >= SHORTEST
                ? Optional.of(new Suggestion(figure, now, proposed, doubt))
                : Optional.empty();
    }
}
