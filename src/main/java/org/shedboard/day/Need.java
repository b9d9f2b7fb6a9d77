package org.shedboard.day;

import java.util.List;
import java.util.Optional;
import org.shedboard.estimate.Resolution;
import org.shedboard.shop.Amount;
import org.shedboard.shop.Line;
import org.shedboard.shop.Part;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;

/**
 * A part that a task of a visit takes from the shelf.
 *
 * @param line the line that asks for it; empty where something was found dirty that is renewed by rule
 * @param resolution which item it is by the catalogue
 */
public record Need(Visit visit, Optional<Line> line, Part part, Task task, Amount amount, Resolution resolution) {
    /** Whether somebody has to look, and nobody has said yet, which item it is. */
    public boolean isOpen() {
        return part.fitted().isEmpty() && resolution.isOpen();
    }

    /** The item that was said to be the one, else the only one it can be; empty while that is open. */
    public Optional<String> itemId() {
        return part.fitted().map(Part.Fitted::itemId).or(resolution::itemId);
    }

    /** The items to have at hand: all it can be while that is open. */
    public List<String> itemIds() {
        return itemId().map(List::of).orElseGet(resolution::itemIds);
    }

    Need ofAtLeast(Amount other) {
        return new Need(visit, line, part, task, amount.atLeast(other), resolution);
    }
}
