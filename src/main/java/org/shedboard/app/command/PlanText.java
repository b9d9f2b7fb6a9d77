package org.shedboard.app.command;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.words.Words;

/** A plan as lines to read: drawn, then what each person does, in order, in minutes of the day file. */
public final class PlanText {
    private PlanText() {}

    /** @param width columns that a line of the drawing may have */
    public static List<String> of(Problem problem, Plan plan, int width) {
        List<String> lines = new ArrayList<>();
        lines.add(Words.say(
                "command.pack.title", plan.cost(), plan.bound(), plan.unplaced().size(), plan.seed(), plan.tries()));
        lines.addAll(PlanChart.of(problem, plan, width));
        for (Problem.Person person : problem.people()) {
            lines.add(person.id());
            lines.addAll(tasksOf(plan, person.id()));
        }
        plan.unplaced().forEach(left -> lines.add(Words.say("command.pack.unplaced", left.job(), left.why())));
        return lines;
    }

    private static List<String> tasksOf(Plan plan, String person) {
        Table table = new Table("rrlll");
        plan.tasks().stream()
                .filter(time -> time.people().contains(person))
                .sorted(Comparator.comparingInt(Plan.TaskTime::start))
                .forEach(time -> table.row(
                        String.valueOf(time.start()),
                        String.valueOf(time.end()),
                        plan.findStay(time.job(), time.stay())
                                .map(Plan.StayPlace::place)
                                .orElse("-"),
                        time.job(),
                        time.task()));
        return table.lines();
    }
}
