package org.shedboard.estimate;

import java.util.List;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Step;
import org.shedboard.shop.WorkKind;

/**
 * What one visit takes: its stays, and where every minute of them comes from.
 *
 * @param items the breakdown, line by line; their minutes add up to {@link #handsOn()}
 * @param stays the work of the visit, none of it begun
 */
public record Estimate(List<Item> items, List<Stay> stays) {
    /**
     * One line of a breakdown.
     *
     * @param points how many inspection points these minutes stand for; 0 where they stand for a task
     */
    public record Item(Step step, WorkKind kind, String name, int points, int minutes) {}

    /** Minutes that half of such jobs, and four out of five such jobs, stay within. */
    public record Range(int likely, int safe) {}

    public Estimate {
        items = List.copyOf(items);
        stays = List.copyOf(stays);
    }

    /** All hands-on minutes by the catalogue. */
    public int handsOn() {
        return items.stream().mapToInt(Item::minutes).sum();
    }

    public int minutesOf(WorkKind kind) {
        return items.stream()
                .filter(item -> item.kind() == kind)
                .mapToInt(Item::minutes)
                .sum();
    }

    public int cleaning() {
        return minutesOf(WorkKind.CLEAN);
    }
}
