package org.shedboard.learn;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * How right what was said of the last finished work was, all of it and part by part; what runs away from it now; and what was not counted.
 *
 * @param last the pieces looked at, oldest first; fewer than asked for where fewer are finished
 * @param score of them all; empty where there are too few to say
 * @param bySort in the order of the sorts; those of which none is finished are left out
 * @param byClass by id of the machine's class, those with the most pieces first
 * @param byPerson by id of who did most of it, those with the most pieces first; what nobody is named for is left out
 * @param drifts of all that is finished, not of the last alone: a run may have begun before them
 * @param aside not learned from, the newest first
 */
public record Scorecard(
        List<Said> last,
        Optional<Score> score,
        List<Scored<Sort>> bySort,
        List<Scored<String>> byClass,
        List<Scored<String>> byPerson,
        Calibration calibration,
        List<Drift> drifts,
        List<SetAside> aside) {
    /** How many of the last stays are looked at where nobody says otherwise. */
    public static final int USUAL = 100;

    public Scorecard {
        last = List.copyOf(last);
        bySort = List.copyOf(bySort);
        byClass = List.copyOf(byClass);
        byPerson = List.copyOf(byPerson);
        drifts = List.copyOf(drifts);
        aside = List.copyOf(aside);
    }

    /**
     * @param said of all finished work, oldest first
     * @param aside what was not learned from
     * @param count how many of the last pieces to look at
     */
    public static Scorecard of(List<Said> said, List<SetAside> aside, int count) {
        List<Said> last = said.subList(Math.max(0, said.size() - count), said.size());
        return new Scorecard(
                last,
                Scored.score(last),
                bySort(last),
                mostFirst(last, lesson -> Optional.of(lesson.circumstances().classId())),
                mostFirst(last, lesson -> lesson.circumstances().mostBy()),
                Calibration.of(last),
                drifts(said),
                aside.stream()
                        .sorted(Comparator.comparing(
                                        (SetAside each) -> each.lesson().date())
                                .reversed())
                        .toList());
    }

    /** What runs away from what was said of it, the sorts in their order. */
    public static List<Drift> drifts(List<Said> said) {
        return Arrays.stream(Sort.values())
                .flatMap(sort -> Drift.of(sort, said).stream())
                .toList();
    }

    private static List<Scored<Sort>> bySort(List<Said> last) {
        return grouped(last, lesson -> Optional.of(lesson.sort())).stream()
                .sorted(Comparator.comparing(Scored::what))
                .toList();
    }

    private static List<Scored<String>> mostFirst(List<Said> last, Function<Lesson, Optional<String>> key) {
        return grouped(last, key).stream()
                .sorted(Comparator.comparing((Scored<String> scored) -> -scored.count())
                        .thenComparing(Scored::what))
                .toList();
    }

    private static <K> List<Scored<K>> grouped(List<Said> last, Function<Lesson, Optional<K>> key) {
        Map<K, List<Said>> groups = new LinkedHashMap<>();
        for (Said said : last) {
            key.apply(said.lesson())
                    .ifPresent(of -> groups.computeIfAbsent(of, absent -> new ArrayList<>())
                            .add(said));
        }
        List<Scored<K>> scored = new ArrayList<>();
        groups.forEach((of, group) -> scored.add(Scored.of(of, group)));
        return scored;
    }
}
