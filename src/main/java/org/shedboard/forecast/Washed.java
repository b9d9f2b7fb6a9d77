package org.shedboard.forecast;

import java.util.Map;
import java.util.Optional;
import org.shedboard.hours.HoursRules;
import org.shedboard.hours.LineShares;
import org.shedboard.shop.Intake;
import org.shedboard.shop.Line;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;

/**
 * What a visit would take and cost had its machine come in clean. Where the property wants a wash-down, there still is one.
 *
 * @param likely minutes that half of such visits stay within
 * @param savedMinutes by how much that is less
 * @param savedChargeable by how many minutes less would be charged to the owner or the maker
 */
public record Washed(int likely, int savedMinutes, int savedChargeable) {
    /** Empty where there is nothing to save, where work has begun, and where the catalogue no longer has the work. */
    public static Optional<Washed> of(VisitForecast forecast, Explanation explained, HoursRules rules) {
        Visit visit = forecast.visit();
        if (visit.hasBegun() || visit.intake().mud() == Mud.CLEAN) {
            return Optional.empty();
        }
        return explained.table().map(table -> {
            int now = explained.range().likely();
            int clean = table.likely(Mud.CLEAN, visit.intake().depth());
            int less = charged(visit, now, rules) - charged(cleaned(forecast), clean, rules);
            return new Washed(clean, now - clean, Math.max(0, less));
        });
    }

    private static Visit cleaned(VisitForecast forecast) {
        Visit visit = forecast.visit();
        Intake clean = visit.intake().withMud(Mud.CLEAN);
        Today today = new Today(forecast.grounds().catalogue());
        return visit.withIntake(clean).withStays(today.stays(forecast.machine().classId(), clean, visit.lines()));
    }

    /** Minutes somebody else than the shop pays for, the work shared out over the lines as the catalogue has it. */
    private static int charged(Visit visit, int likely, HoursRules rules) {
        Map<String, Integer> estimated = new LineShares(visit).ofEstimates(visit.tasks());
        int all = Math.max(1, visit.tasks().stream().mapToInt(Task::handsOn).sum());
        return visit.lines().stream()
                .filter(line -> line.payer().isOutside())
                .mapToInt(line -> charged(line, estimated.get(line.id()), likely, all, rules))
                .sum();
    }

    private static int charged(Line line, int estimated, int likely, int all, HoursRules rules) {
        return rules.chargeable(line, (int) Math.round((double) likely * estimated / all), estimated);
    }
}
