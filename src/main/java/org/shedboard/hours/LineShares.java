package org.shedboard.hours;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToLongFunction;
import org.shedboard.shop.Line;
import org.shedboard.shop.Step;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;

/**
 * Shares the minutes of a visit out over its lines, so that each whole minute goes to one line and none is lost.
 *
 * <p>A task that serves one line belongs to that line. One that serves several is shared between them, and what serves none of its own
 * (cleaning, moving, inspecting, signing off, a hand lent) between all, each time by the catalogue minutes of the work the lines need
 * for themselves; the minutes that are left over go to the largest fractions.
 */
public final class LineShares {
    private final Visit visit;
    private final List<String> all;
    /** Catalogue minutes of the tasks that serve a line. */
    private final Map<String, Integer> weights = new LinkedHashMap<>();

    public LineShares(Visit visit) {
        this.visit = visit;
        this.all = visit.lines().stream().map(Line::id).toList();
        all.forEach(id -> weights.put(id, 0));
        visit.tasks()
                .forEach(task -> task.lines()
                        .forEach(id -> weights.computeIfPresent(id, (line, minutes) -> minutes + task.handsOn())));
    }

    /** Worked minutes by line; all lines are named. */
    public Map<String, Integer> ofWork(Map<Activity.OnStay, Integer> onStays) {
        Map<String, Integer> shares = ofSome(onStays, false);
        ofSome(onStays, true).forEach((line, minutes) -> shares.merge(line, minutes, Integer::sum));
        return shares;
    }

    /** The minutes of cleaning among them. */
    public Map<String, Integer> ofCleaning(Map<Activity.OnStay, Integer> onStays) {
        return ofSome(onStays, true);
    }

    private Map<String, Integer> ofSome(Map<Activity.OnStay, Integer> onStays, boolean cleaning) {
        Map<List<String>, Integer> pools = new LinkedHashMap<>();
        onStays.forEach((stay, minutes) -> {
            if (isCleaning(stay) == cleaning) {
                pools.merge(linesOf(stay), minutes, Integer::sum);
            }
        });
        return shared(pools);
    }

    /** All that is done on the wash pad is cleaning. */
    public static boolean isCleaning(Activity.OnStay stay) {
        return stay.step() == Step.WASH;
    }

    private List<String> linesOf(Activity.OnStay stay) {
        return stay.taskId().flatMap(visit::findTask).map(this::linesOf).orElse(all);
    }

    private List<String> linesOf(Task task) {
        List<String> known = task.lines().stream().filter(all::contains).toList();
        return known.isEmpty() ? all : known;
    }

    /** Catalogue minutes of these tasks by line; all lines are named. */
    public Map<String, Integer> ofEstimates(List<Task> tasks) {
        Map<List<String>, Integer> pools = new LinkedHashMap<>();
        tasks.forEach(task -> pools.merge(linesOf(task), task.handsOn(), Integer::sum));
        return shared(pools);
    }

    private Map<String, Integer> shared(Map<List<String>, Integer> pools) {
        Map<String, Integer> shares = new LinkedHashMap<>();
        all.forEach(id -> shares.put(id, 0));
        if (!all.isEmpty()) {
            pools.forEach((lines, minutes) -> share(lines, minutes, shares));
        }
        return shares;
    }

    private void share(List<String> lines, int minutes, Map<String, Integer> shares) {
        // lines of which the catalogue knows nothing are equals
        boolean isUnknown = lines.stream().allMatch(line -> weights.get(line) == 0);
        ToLongFunction<String> weight = line -> isUnknown ? 1 : weights.get(line);
        long total = lines.stream().mapToLong(weight).sum();
        int left = minutes;
        for (String line : lines) {
            int whole = (int) (minutes * weight.applyAsLong(line) / total);
            shares.merge(line, whole, Integer::sum);
            left -= whole;
        }
        lines.stream()
                .sorted(Comparator.comparingLong(line -> -(minutes * weight.applyAsLong(line) % total)))
                .limit(left)
                .forEach(line -> shares.merge(line, 1, Integer::sum));
    }
}
