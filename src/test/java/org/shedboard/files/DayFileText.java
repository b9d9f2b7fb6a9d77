package org.shedboard.files;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shedboard.pack.Costs;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Span;

/** Writes a problem as a day file; what has its default is left out. */
public final class DayFileText {
    private DayFileText() {}

    public static String write(Problem problem) {
        Map<String, Object> tree = new LinkedHashMap<>();
        problem.origin().ifPresent(origin -> tree.put("origin", origin));
        tree.put("now", problem.now());
        tree.put("horizon", problem.horizon());
        tree.put("costs", tree(problem.costs()));
        tree.put("places", problem.places().stream().map(DayFileText::tree).toList());
        tree.put("people", problem.people().stream().map(DayFileText::tree).toList());
        tree.put("jobs", problem.jobs().stream().map(DayFileText::tree).toList());
        problem.posted().ifPresent(plan -> tree.put("posted", PlanFile.tree(plan)));
        return JsonText.write(tree);
    }

    private static Map<String, Object> tree(Costs costs) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("late", costs.late());
        tree.put("overtime", costs.overtime());
        tree.put("flow", costs.flow());
        tree.put("handover", costs.handover());
        tree.put("makespan", costs.makespan());
        tree.put("moved", costs.moved());
        tree.put("swapped", costs.swapped());
        return tree;
    }

    private static List<List<Integer>> pairs(List<Span> spans) {
        return spans.stream().map(span -> List.of(span.from(), span.to())).toList();
    }

    private static void putUnless(Map<String, Object> tree, String name, Object value, Object fallback) {
        if (!value.equals(fallback)) {
            tree.put(name, value);
        }
    }

    private static Map<String, Object> tree(Problem.Place place) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("id", place.id());
        tree.put("kind", place.kind());
        putUnless(tree, "ratedKg", place.ratedKg(), Problem.NO_LIMIT);
        putUnless(tree, "closed", pairs(place.closed()), List.of());
        return tree;
    }

    private static Map<String, Object> tree(Problem.Person person) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("id", person.id());
        tree.put("skills", new ArrayList<>(person.skills()));
        tree.put("shifts", pairs(person.shifts()));
        putUnless(tree, "overtime", pairs(person.overtime()), List.of());
        putUnless(tree, "sharedSpread", person.sharedSpread(), 0.0);
        return tree;
    }

    private static Map<String, Object> tree(Problem.Job job) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("id", job.id());
        putUnless(tree, "weight", job.weight(), 1);
        putUnless(tree, "massKg", job.massKg(), 0);
        putUnless(tree, "arrives", job.arrives(), 0);
        job.promise().ifPresent(minute -> tree.put("promise", minute));
        putUnless(tree, "sharedSpread", job.sharedSpread(), 0.0);
        tree.put("stays", job.stays().stream().map(DayFileText::tree).toList());
        return tree;
    }

    private static Map<String, Object> tree(Problem.Stay stay) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("places", stay.kinds());
        stay.place().ifPresent(place -> tree.put("place", place));
        tree.put("tasks", stay.tasks().stream().map(DayFileText::tree).toList());
        return tree;
    }

    private static Map<String, Object> tree(Problem.Task task) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("id", task.id());
        tree.put("skill", task.skill());
        tree.put("handsOn", task.handsOn());
        putUnless(tree, "unattended", task.unattended(), 0);
        task.after().ifPresent(after -> tree.put("after", after));
        putUnless(tree, "handsOnBy", task.handsOnBy(), Map.of());
        putUnless(tree, "people", task.people(), 1);
        putUnless(tree, "notBy", task.notBy(), List.of());
        putUnless(tree, "notBefore", task.notBefore(), 0);
        task.person().ifPresent(person -> tree.put("person", person));
        task.at().ifPresent(minute -> tree.put("at", minute));
        putUnless(tree, "spread", task.spread(), 0.0);
        task.started().ifPresent(started -> tree.put("started", tree(started)));
        task.done().ifPresent(done -> tree.put("done", tree(done)));
        return tree;
    }

    private static Map<String, Object> tree(Problem.Started started) {
        Map<String, Object> tree = new LinkedHashMap<>();
        started.person().ifPresent(person -> tree.put("person", person));
        tree.put("from", started.from());
        tree.put("left", started.left());
        return tree;
    }

    private static Map<String, Object> tree(Problem.Done done) {
        Map<String, Object> tree = new LinkedHashMap<>();
        done.person().ifPresent(person -> tree.put("person", person));
        tree.put("from", done.from());
        tree.put("end", done.end());
        return tree;
    }
}
