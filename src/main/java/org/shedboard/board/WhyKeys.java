package org.shedboard.board;

import java.util.List;
import java.util.Optional;
import org.shedboard.day.WhyPlanned;
import org.shedboard.shop.Task;

/** The screen that says why a task is planned as it is. */
final class WhyKeys {
    private WhyKeys() {}

    static List<Binding> of() {
        return List.of(
                Binding.on('y', Deed.WHY_SO_LONG),
                Binding.on(Key.UP, Deed.UP),
                Binding.on(Key.DOWN, Deed.DOWN),
                Binding.on(Key.PAGE_DOWN, Deed.FURTHER_DOWN),
                Binding.on(Key.PAGE_UP, Deed.FURTHER_UP),
                Binding.on('?', Deed.HELP),
                Binding.on(Key.ESCAPE, Deed.BACK));
    }

    /** Of the task that is picked; where none is, or it is done, of what comes next. */
    static Screen.Why of(Subject subject) {
        List<Task> tasks = subject.visit().tasks();
        Optional<Task> open = subject.picked()
                .filter(task -> !task.isDone())
                .or(subject::toStart)
                .or(subject::running);
        return of(subject, open.map(tasks::indexOf).orElse(0));
    }

    private static Screen.Why of(Subject subject, int index) {
        List<Task> tasks = subject.visit().tasks();
        int task = Math.max(0, Math.min(tasks.size() - 1, index));
        Optional<WhyPlanned> why =
                tasks.isEmpty() ? Optional.empty() : WhyPlanned.of(subject.outlook(), subject.visit(), tasks.get(task));
        return new Screen.Why(subject.visit().id(), task, why, 0);
    }

    static Screen.Why moved(Board board, Screen.Why why, int by) {
        return Subject.of(board).map(subject -> of(subject, why.task() + by)).orElse(why);
    }

    /** On the day as it was read last. */
    static Screen.Why again(Board board, Screen.Why why) {
        return moved(board, why, 0).scrolledTo(why.scroll());
    }
}
