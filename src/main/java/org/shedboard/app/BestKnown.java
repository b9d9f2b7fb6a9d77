package org.shedboard.app;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.shedboard.files.KnownCostsFile;
import org.shedboard.files.PlanFile;
import org.shedboard.files.Reading;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.check.PlanCheck;
import org.shedboard.words.Words;

/** The best cost that anybody knows of the problems of one folder: from its tables, and from plans in its folder {@code best}. */
final class BestKnown {
    static final String PLANS = "best";
    private static final String ENDING = ".plan.json";

    private final Path plans;
    private final Map<String, Long> costs = new HashMap<>();
    private final BiConsumer<String, String> skip;

    /** @param skip told of each plan that does not count, and why */
    BestKnown(Path folder, BiConsumer<String, String> skip) {
        this.plans = folder.resolve(PLANS);
        this.skip = skip;
    }

    /** Takes a table's costs over. */
    void addTable(String name, String text) {
        Reading<Map<String, Long>> table = KnownCostsFile.read(text);
        table.value().ifPresent(known -> known.forEach((problem, cost) -> costs.merge(problem, cost, Math::min)));
        if (!table.faults().isEmpty()) {
            skip.accept(name, table.faults().get(0).toString());
        }
    }

    boolean isEmpty() {
        return costs.isEmpty() && !Files.isDirectory(plans);
    }

    /** @param told what the problem's own file says */
    Optional<Long> of(String name, Problem problem, Optional<Long> told) {
        Optional<Long> planned = ofPlan(name + ENDING, problem);
        Optional<Long> known = least(told, Optional.ofNullable(costs.get(name)));
        return least(known, planned);
    }

    private static Optional<Long> least(Optional<Long> one, Optional<Long> other) {
        return one.isPresent() && other.isPresent()
                ? Optional.of(Math.min(one.get(), other.get()))
                : one.or(() -> other);
    }

    /** A plan's cost counts once the checker has accepted it. */
    private Optional<Long> ofPlan(String name, Problem problem) {
        Path file = plans.resolve(name);
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        Optional<String> wrong = wrongWith(file, problem);
        wrong.ifPresent(why -> skip.accept(PLANS + "/" + name, why));
        return wrong.isPresent()
                ? Optional.empty()
                : Optional.of(read(file).expectValue().cost());
    }

    private static Optional<String> wrongWith(Path file, Problem problem) {
        Reading<Plan> plan = read(file);
        if (plan.value().isEmpty()) {
            return Optional.of(plan.faults().get(0).toString());
        }
        PlanCheck check = PlanCheck.of(problem, plan.value().get());
        if (!check.isLegal()) {
            return Optional.of(check.breaches().get(0).toString());
        }
        int leftOut = plan.value().get().unplaced().size();
        return leftOut == 0 ? Optional.empty() : Optional.of(Words.say("command.bench.plan_leaves_out", leftOut));
    }

    private static Reading<Plan> read(Path file) {
        return PlanFile.read(Input.text(file, InputStream.nullInputStream()));
    }
}
