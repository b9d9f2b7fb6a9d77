package org.shedboard.learn;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shedboard.fit.Belief;
import org.shedboard.fit.LogNormal;

/**
 * All that finished work has taught so far. With none it says what the catalogue says; each further lesson moves it by as much as it is
 * worth.
 */
public final class Learned {
    /** The season must make the lessons e to this power times likelier before it is believed in. */
    private static final double SEASON_EARNED = 2;

    private final Map<Sort, SortModel> models;
    private final List<SetAside> faulty;
    private final double machine;
    private final double person;
    /** Worked out when somebody asks for it; whoever works it out gets the same. */
    private volatile Map<Sort, Map<String, Double>> usualPeople;

    private Learned(Map<Sort, SortModel> models, List<SetAside> faulty, double machine, double person) {
        this.models = models;
        this.faulty = List.copyOf(faulty);
        this.machine = machine;
        this.person = person;
    }

    /** One that has learned nothing yet, and can learn from each of these lessons in turn. */
    static Learned untaught(Expectation expected, List<Lesson> lessons) {
        Map<Sort, SortModel> models = new EnumMap<>(Sort.class);
        for (Sort sort : Sort.values()) {
            List<Lesson> of =
                    lessons.stream().filter(lesson -> lesson.sort() == sort).toList();
            models.put(sort, SortModel.untaught(of, expected.learners(), expected.spreadOf(sort)));
        }
        return new Learned(models, List.of(), expected.machine(), expected.person());
    }

    public static Learned of(Expectation expected, List<Lesson> lessons) {
        Map<Sort, List<Lesson>> bySort = new EnumMap<>(Sort.class);
        for (Sort sort : Sort.values()) {
            bySort.put(sort, new ArrayList<>());
        }
        List<SetAside> faulty = new ArrayList<>();
        for (Lesson lesson : lessons) {
            Optional<Lesson.Fault> fault = lesson.fault();
            if (fault.isPresent()) {
                faulty.add(new SetAside(lesson, fault.get(), lesson.catalogueMinutes()));
            } else {
                bySort.get(lesson.sort()).add(lesson);
            }
        }
        Map<Sort, SortModel> models = new EnumMap<>(Sort.class);
        bySort.forEach((sort, of) -> models.put(sort, model(expected, sort, of)));
        List<Shared.Residual> residuals = residuals(models);
        return new Learned(
                models,
                faulty,
                Shared.deviation(residuals, Lesson::visitId, true, expected.machine()),
                Shared.deviation(residuals, Learned::personsDay, false, expected.person()));
    }

    /** With the seasons where they earn their place. */
    private static SortModel model(Expectation expected, Sort sort, List<Lesson> lessons) {
        double spread = expected.spreadOf(sort);
        SortModel plain = SortModel.of(lessons, expected.learners(), spread, false);
        if (lessons.isEmpty()) {
            return plain;
        }
        SortModel seasonal = SortModel.of(lessons, expected.learners(), spread, true);
        return seasonal.evidence() > plain.evidence() + SEASON_EARNED ? seasonal : plain;
    }

    private static List<Shared.Residual> residuals(Map<Sort, SortModel> models) {
        List<Shared.Residual> all = new ArrayList<>();
        models.values()
                .forEach(model ->
                        model.kept().forEach(lesson -> all.add(new Shared.Residual(lesson, model.residual(lesson)))));
        return all;
    }

    /** Who did most of it, and when; empty where nobody is named. */
    private static String personsDay(Lesson lesson) {
        return lesson.circumstances()
                .mostBy()
                .map(person -> person + "\n" + lesson.date())
                .orElse("");
    }

    /**
     * After one more piece of finished work, which is set aside where it is at fault or far off. What pieces share is worked out anew only
     * when all are learned from together.
     */
    public Learned after(Lesson lesson) {
        Optional<Lesson.Fault> fault = lesson.fault().or(() -> farOff(lesson));
        if (fault.isPresent()) {
            List<SetAside> more = new ArrayList<>(faulty);
            more.add(new SetAside(lesson, fault.get(), expectedMinutes(lesson)));
            return new Learned(models, more, machine, person);
        }
        Map<Sort, SortModel> next = new EnumMap<>(models);
        next.put(lesson.sort(), models.get(lesson.sort()).after(lesson));
        return new Learned(next, faulty, machine, person);
    }

    private double expectedMinutes(Lesson lesson) {
        return lesson.catalogueMinutes() * factor(lesson.sort(), lesson.circumstances());
    }

    private Optional<Lesson.Fault> farOff(Lesson lesson) {
        return models.get(lesson.sort()).isFarOff(lesson) ? Optional.of(Lesson.Fault.FAR_OFF) : Optional.empty();
    }

    /** What was not learned from, in the order of the sorts. */
    public List<SetAside> aside() {
        List<SetAside> all = new ArrayList<>(faulty);
        models.values().forEach(model -> all.addAll(model.aside()));
        return all;
    }

    SortModel model(Sort sort) {
        return models.get(sort);
    }

    /** How many pieces of finished work of this sort it has learned from. */
    public int lessonsOf(Sort sort) {
        return models.get(sort).kept().size();
    }

    /** By how much the catalogue's minutes are to be multiplied so that half of such work stays within them. */
    public double factor(Sort sort, Circumstances circumstances) {
        return StrictMath.exp(models.get(sort).middle(circumstances));
    }

    /**
     * What work of one sort in one stay will take. The logarithm is forecast by Student's t; it is told as the normal one that four in
     * five stay within at the same point, since the exponential of a t has no mean.
     *
     * @param catalogueMinutes at the usual pace of who does it
     */
    public LogNormal minutes(Sort sort, double catalogueMinutes, Circumstances circumstances) {
        Belief.Forecast forecast = forecast(sort, circumstances);
        return new LogNormal(StrictMath.log(catalogueMinutes) + forecast.middle(), forecast.deviation());
    }

    private Belief.Forecast forecast(Sort sort, Circumstances circumstances) {
        return models.get(sort).forecast(circumstances);
    }

    /** The likely minutes told part by part. */
    public Story story(Sort sort, double catalogueMinutes, Circumstances circumstances) {
        List<Story.Share> shares = new ArrayList<>();
        double so = catalogueMinutes;
        for (Map.Entry<Trait, Double> effect :
                models.get(sort).effects(circumstances).entrySet()) {
            double next = so * StrictMath.exp(effect.getValue());
            shares.add(new Story.Share(effect.getKey(), next - so));
            so = next;
        }
        return new Story(sort, catalogueMinutes, shares);
    }

    /**
     * Who does this sort of work here, and how much of it each, by the last year of it: who left is not counted for ever. None before
     * anybody did.
     */
    public Map<String, Double> usualPeople(Sort sort) {
        Map<Sort, Map<String, Double>> known = usualPeople;
        if (known == null) {
            known = new EnumMap<>(Sort.class);
            for (Sort each : Sort.values()) {
                known.put(each, sharesOf(each));
            }
            usualPeople = known;
        }
        return known.get(sort);
    }

    private Map<String, Double> sharesOf(Sort sort) {
        Map<String, Double> shares = new LinkedHashMap<>();
        List<Lesson> lessons = models.get(sort).ofLastYear();
        for (Lesson lesson : lessons) {
            lesson.circumstances()
                    .people()
                    .forEach((person, share) -> shares.merge(person, share / lessons.size(), Double::sum));
        }
        return shares;
    }

    /** Standard deviation of the logarithm that all work on one machine shares. */
    public double machine() {
        return machine;
    }

    /** The same of all work of one person on one day. */
    public double person() {
        return person;
    }
}
