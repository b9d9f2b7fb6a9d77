package org.shedboard.files;

import java.util.LinkedHashMap;
import java.util.Map;
import org.shedboard.pack.Plan;
import org.shedboard.pack.fault.ProblemCheck;

/** The plan file: a plan as JSON. */
public final class PlanFile {
    private PlanFile() {}

    /** The plan, or every fault of its text. */
    public static Reading<Plan> read(String text) {
        return Reading.of(text, PlanFile::read);
    }

    static Plan read(Fields fields) {
        return new Plan(
                fields.longOr("cost", 0, 0, Long.MAX_VALUE),
                fields.longOr("bound", 0, 0, Long.MAX_VALUE),
                fields.objectsOrNone(
                        "unplaced",
                        left -> new Plan.Unplaced(
                                left.text("job"), left.findText("why").orElse(""))),
                fields.objectsOrNone("stays", PlanFile::readStay),
                fields.objectsOrNone("tasks", PlanFile::readTask),
                fields.longOr("seed", 0, Long.MIN_VALUE, Long.MAX_VALUE),
                fields.longOr("tries", 0, 0, Long.MAX_VALUE),
                fields.longOr("millis", 0, 0, Long.MAX_VALUE));
    }

    private static Plan.StayPlace readStay(Fields fields) {
        return new Plan.StayPlace(
                fields.text("job"),
                number(fields, "stay"),
                fields.text("place"),
                number(fields, "from"),
                number(fields, "to"));
    }

    private static Plan.TaskTime readTask(Fields fields) {
        return new Plan.TaskTime(
                fields.text("job"),
                number(fields, "stay"),
                fields.text("task"),
                fields.findText("person"),
                fields.textsOrNone("with"),
                number(fields, "start"),
                number(fields, "end"));
    }

    private static int number(Fields fields, String name) {
        return fields.whole(name, 0, ProblemCheck.LARGEST);
    }

    public static String write(Plan plan) {
        return JsonText.write(tree(plan));
    }

    static Map<String, Object> tree(Plan plan) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("cost", plan.cost());
        tree.put("bound", plan.bound());
        tree.put("unplaced", plan.unplaced().stream().map(PlanFile::tree).toList());
        tree.put("stays", plan.stays().stream().map(PlanFile::tree).toList());
        tree.put("tasks", plan.tasks().stream().map(PlanFile::tree).toList());
        tree.put("seed", plan.seed());
        tree.put("tries", plan.tries());
        tree.put("millis", plan.millis());
        return tree;
    }

    private static Map<String, Object> tree(Plan.Unplaced left) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("job", left.job());
        tree.put("why", left.why());
        return tree;
    }

    private static Map<String, Object> tree(Plan.StayPlace stay) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("job", stay.job());
        tree.put("stay", stay.stay());
        tree.put("place", stay.place());
        tree.put("from", stay.from());
        tree.put("to", stay.to());
        return tree;
    }

    private static Map<String, Object> tree(Plan.TaskTime time) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("job", time.job());
        tree.put("stay", time.stay());
        tree.put("task", time.task());
        tree.put("person", time.person().orElse(null));
        if (!time.with().isEmpty()) {
            tree.put("with", time.with());
        }
        tree.put("start", time.start());
        tree.put("end", time.end());
        return tree;
    }
}
