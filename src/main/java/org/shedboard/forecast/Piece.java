package org.shedboard.forecast;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shedboard.learn.Sort;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Step;
import org.shedboard.shop.Task;

/** The work of one sort in one step of a visit: it is forecast, and learned from, as one. */
record Piece(Step step, Sort sort) {
    static Piece of(Stay stay, Task task) {
        return new Piece(stay.step(), Sort.of(stay.step(), task.kind()));
    }

    /** All hands-on tasks of these stays by the piece they are of, in their order. */
    static Map<Piece, List<Task>> tasksOf(List<Stay> stays) {
        Map<Piece, List<Task>> pieces = new LinkedHashMap<>();
        for (Stay stay : stays) {
            for (Task task : stay.tasks()) {
                if (task.handsOn() > 0) {
                    pieces.computeIfAbsent(of(stay, task), absent -> new ArrayList<>())
                            .add(task);
                }
            }
        }
        return pieces;
    }

    /** Hands-on minutes by the catalogue. */
    static int minutesOf(List<Task> tasks) {
        return tasks.stream().mapToInt(Task::handsOn).sum();
    }
}
