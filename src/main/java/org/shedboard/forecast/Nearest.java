package org.shedboard.forecast;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.shedboard.learn.Circumstances;
import org.shedboard.learn.Lesson;

/**
 * The finished visits that were most like one to come, to look at beside its forecast: nothing is reckoned from them alone.
 *
 * <p>How far two visits are apart is a plain sum: 1 for each mud grade and for each step of depth between them, 1 for each doubling of
 * the catalogue's minutes, 2 for another class of machine, and 0.5 for another machine. Invented weights. Of visits as near as each
 * other the newest comes first.
 */
public final class Nearest {
    public static final int COUNT = 3;
    private static final double OTHER_CLASS = 2;
    private static final double OTHER_MACHINE = 0.5;

    private final Circumstances wanted;
    private final double catalogueMinutes;
    private final Predicate<String> isSameMachine;

    private Nearest(Circumstances wanted, double catalogueMinutes, Predicate<String> isSameMachine) {
        this.wanted = wanted;
        this.catalogueMinutes = catalogueMinutes;
        this.isSameMachine = isSameMachine;
    }

    /**
     * The nearest first. Visits of which some work was not learned from, such as one whose clock was forgotten, are none of them.
     *
     * @param isSameMachine whether the visit of that id was of the same machine
     */
    public static List<FinishedVisit> of(
            VisitForecast forecast, Experience experience, Predicate<String> isSameMachine) {
        Circumstances wanted = forecast.under(
                Map.of(),
                forecast.visit().intake().mud(),
                forecast.visit().intake().depth());
        Nearest nearest = new Nearest(wanted, forecast.catalogueMinutes(), isSameMachine);
        Set<String> aside = experience.learned().aside().stream()
                .map(each -> each.lesson().visitId())
                .collect(Collectors.toSet());
        aside.add(forecast.visit().id());
        return visits(experience.lessons()).stream()
                .filter(visit -> !aside.contains(visit.visitId()))
                .sorted(Comparator.comparingDouble(nearest::distance)
                        .thenComparing(visit -> visit.under().date(), Comparator.reverseOrder())
                        .thenComparing(FinishedVisit::visitId))
                .limit(COUNT)
                .toList();
    }

    private static List<FinishedVisit> visits(List<Lesson> lessons) {
        Map<String, List<Lesson>> byVisit = new LinkedHashMap<>();
        lessons.forEach(lesson -> byVisit.computeIfAbsent(lesson.visitId(), absent -> new ArrayList<>())
                .add(lesson));
        return byVisit.values().stream().map(FinishedVisit::of).toList();
    }

    private double distance(FinishedVisit other) {
        double doublings = StrictMath.log(other.catalogueMinutes() / catalogueMinutes) / StrictMath.log(2);
        return Math.abs(wanted.mud().grade() - other.under().mud().grade())
                + Math.abs(wanted.depth().ordinal() - other.under().depth().ordinal())
                + Math.abs(doublings)
                + (wanted.classId().equals(other.under().classId()) ? 0 : OTHER_CLASS)
                + (isSameMachine.test(other.visitId()) ? 0 : OTHER_MACHINE);
    }
}
