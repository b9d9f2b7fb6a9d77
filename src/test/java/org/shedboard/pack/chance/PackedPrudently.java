package org.shedboard.pack.chance;

import java.util.ArrayList;
import java.util.List;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Search;
import org.shedboard.pack.search.Packer;

/** Packs against risk on one thread: half of the tries as usual, the others for longer days. */
final class PackedPrudently {
    private PackedPrudently() {}

    static Plan pack(Problem problem, Search search) {
        List<Problem> longer = Prudent.longerDays(problem);
        List<Plan> found = new ArrayList<>(find(problem, Search.of(search.seed(), search.tries() / 2)));
        for (Problem day : longer) {
            found.addAll(find(day, Search.of(search.seed(), search.tries() / (2 * longer.size()))));
        }
        return Prudent.pick(problem, found, search.seed());
    }

    private static List<Plan> find(Problem problem, Search search) {
        List<Plan> found = new ArrayList<>();
        found.add(Packer.pack(problem, search, () -> false, found::add));
        return found;
    }
}
