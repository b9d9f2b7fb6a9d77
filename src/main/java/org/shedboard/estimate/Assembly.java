package org.shedboard.estimate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.shedboard.shop.Intake;
import org.shedboard.shop.Line;
import org.shedboard.shop.Mud;
import org.shedboard.shop.PlaceKind;
import org.shedboard.shop.Progress;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Step;
import org.shedboard.shop.Task;
import org.shedboard.shop.WorkKind;

/**
 * One visit's work being put together from the catalogue.
 *
 * <p>Each step of the visit becomes one stay. It opens with bringing the machine there (driven, or pushed when it cannot
 * drive), on a hoist followed by raising it; then the inspection of the step's points and the tasks of every line, a task that
 * two lines name being done once; a hoist stay closes with lowering. Cleaning stands in the first stay: the class's wash at
 * this mud grade, then uncovering each point that the depth asks for. A machine that needs neither gets no wash. Where the
 * property wants a wash-down first, there always is one, with its signature and the cleaning of the pad. The visit ends
 * with a test drive, where it can be driven, and somebody's signature.
 */
final class Assembly {
    private final Catalogue catalogue;
    private final MachineClass machineClass;
    private final Intake intake;
    private final List<Line> lines;
    private final List<Point> points;
    private final List<Estimate.Item> items = new ArrayList<>();
    private final List<Stay> stays;

    Assembly(Catalogue catalogue, MachineClass machineClass, Intake intake, List<Line> lines) {
        this.catalogue = catalogue;
        this.machineClass = machineClass;
        this.intake = intake;
        this.lines = lines;
        this.points = machineClass.pointsFor(intake);
        this.stays = Stream.of(washStay(), placeStay(Step.UNDERSIDE), placeStay(Step.TOPSIDE), driveStay())
                .flatMap(Optional::stream)
                .toList();
    }

    List<Stay> stays() {
        return stays;
    }

    List<Estimate.Item> items() {
        return items;
    }

    /** The lines' own tasks alone, a stay for each step that has some, with what it takes to bring the machine there. */
    List<Stay> repairStays() {
        List<Stay> repairs = new ArrayList<>();
        for (Step step : List.of(Step.UNDERSIDE, Step.TOPSIDE)) {
            if (!repairsOf(step).isEmpty()) {
                repairs.add(placeStay(step, false).orElseThrow());
            }
        }
        List<Task> driven = new ArrayList<>(repairsOf(Step.DRIVE));
        Task signOff = usual(Usual.SIGN_OFF, Step.DRIVE, 0, catalogue.signOffMinutes(), ids(driven));
        driven.add(signOff.withNotBy(checkedByAnother()));
        repairs.add(new Stay(Step.DRIVE, List.of(), Optional.empty(), driven));
        return repairs;
    }

    private Optional<Stay> washStay() {
        int wash = machineClass.washMinutes(washed());
        int uncover = points.stream().mapToInt(this::uncoverMinutes).sum();
        if (wash + uncover == 0) {
            return Optional.empty();
        }
        List<Task> tasks = new ArrayList<>();
        tasks.add(bringIn(Step.WASH));
        if (wash > 0) {
            tasks.add(usual(Usual.WASH, Step.WASH, 0, wash, last(tasks)));
        }
        if (uncover > 0) {
            int covered = (int)
                    points.stream().filter(point -> uncoverMinutes(point) > 0).count();
            tasks.add(usual(Usual.UNCOVER, Step.WASH, covered, uncover, last(tasks)));
        }
        if (intake.washDownFirst()) {
            addWashDown(tasks);
        }
        return Optional.of(new Stay(Step.WASH, Step.WASH.kinds(), Optional.empty(), tasks));
    }

    /** A machine that looks clean can carry seed: where it is washed down first, it is washed as a dusty one at least. */
    private Mud washed() {
        Mud mud = intake.mud();
        return intake.washDownFirst() && mud == Mud.CLEAN ? Mud.DUSTY : mud;
    }

    /** Somebody who did not wash it signs; the pad is not free for another machine before it is clean. */
    private void addWashDown(List<Task> tasks) {
        List<String> cleaning = ids(tasks.subList(1, tasks.size()));
        WashDown takes = catalogue.washDown();
        tasks.add(usual(Usual.SIGN_WASH_DOWN, Step.WASH, 0, takes.signMinutes(), last(tasks))
                .withNotBy(cleaning));
        tasks.add(usual(Usual.CLEAN_PAD, Step.WASH, 0, takes.padMinutes(), last(tasks)));
    }

    private Optional<Stay> placeStay(Step step) {
        return placeStay(step, true);
    }

    private Optional<Stay> placeStay(Step step, boolean inspected) {
        int looking = inspected ? inspectMinutes(step) : 0;
        if (looking == 0 && repairsOf(step).isEmpty()) {
            return Optional.empty();
        }
        List<Task> tasks = new ArrayList<>();
        tasks.add(bringIn(step));
        if (step == Step.UNDERSIDE) {
            tasks.add(usual(Usual.RAISE, step, 0, machineClass.moving().raise(), last(tasks)));
        }
        List<String> inPlace = last(tasks);
        int work = tasks.size();
        if (looking > 0) {
            Usual inspection = Usual.inspectionOf(step, true);
            tasks.add(usual(inspection, step, pointsOf(step).size(), looking, inPlace));
        }
        for (Task repair : repairsOf(step)) {
            tasks.add(repair.after().isEmpty() ? repair.withAfter(inPlace) : repair);
            note(repair, step);
        }
        if (step == Step.UNDERSIDE) {
            List<String> all = ids(tasks.subList(work, tasks.size()));
            tasks.add(usual(Usual.LOWER, step, 0, machineClass.moving().lower(), all));
        }
        return Optional.of(new Stay(step, kindsOf(step), Optional.empty(), tasks));
    }

    private Optional<Stay> driveStay() {
        boolean drives = intake.condition().drives();
        int minutes = inspectMinutes(Step.DRIVE) + (drives ? catalogue.testDriveMinutes() : 0);
        List<Task> tasks = new ArrayList<>();
        for (Task repair : repairsOf(Step.DRIVE)) {
            tasks.add(repair);
            note(repair, Step.DRIVE);
        }
        if (minutes > 0) {
            Usual inspection = Usual.inspectionOf(Step.DRIVE, drives);
            tasks.add(usual(inspection, Step.DRIVE, pointsOf(Step.DRIVE).size(), minutes, ids(tasks)));
        }
        Task signOff = usual(Usual.SIGN_OFF, Step.DRIVE, 0, catalogue.signOffMinutes(), ids(tasks));
        tasks.add(signOff.withNotBy(checkedByAnother()));
        return Optional.of(new Stay(Step.DRIVE, List.of(), Optional.empty(), tasks));
    }

    /** Every line's tasks in this step, shared ones once. */
    private List<Task> repairsOf(Step step) {
        Map<String, Task> shared = new LinkedHashMap<>();
        for (Line line : lines) {
            for (Work.WorkTask wanted : tasksOf(line, step)) {
                shared.merge(wanted.id(), repair(wanted, line), Assembly::alsoFor);
            }
        }
        return List.copyOf(shared.values());
    }

    private List<Work.WorkTask> tasksOf(Line line, Step step) {
        return catalogue.expectWork(line.workId()).tasks().stream()
                .filter(task -> task.step() == step)
                .toList();
    }

    private static Task repair(Work.WorkTask task, Line line) {
        return new Task(
                task.id(),
                task.name(),
                WorkKind.REPAIR,
                task.skill(),
                task.handsOn(),
                task.unattended(),
                task.after(),
                List.of(),
                List.of(line.id()),
                task.caution(),
                Progress.TO_DO);
    }

    /** One task that serves two lines: as long as the longer of the two, after what either must wait for. */
    private static Task alsoFor(Task one, Task other) {
        return new Task(
                one.id(),
                one.name(),
                one.kind(),
                one.skill(),
                Math.max(one.handsOn(), other.handsOn()),
                Math.max(one.unattended(), other.unattended()),
                union(one.after(), other.after()),
                List.of(),
                union(one.lines(), other.lines()),
                one.caution().isEmpty() ? other.caution() : one.caution(),
                Progress.TO_DO);
    }

    private List<String> checkedByAnother() {
        return lines.stream()
                .flatMap(line -> catalogue.expectWork(line.workId()).tasks().stream())
                .filter(Work.WorkTask::checkedByAnother)
                .map(Work.WorkTask::id)
                .distinct()
                .toList();
    }

    /** The kinds of place that suit every task of the step; the step's usual ones where the tasks contradict each other. */
    private List<PlaceKind> kindsOf(Step step) {
        List<PlaceKind> kinds = new ArrayList<>(step.kinds());
        lines.stream()
                .flatMap(line -> tasksOf(line, step).stream())
                .filter(task -> !task.kinds().isEmpty())
                .forEach(task -> kinds.retainAll(task.kinds()));
        return kinds.isEmpty() ? step.kinds() : kinds;
    }

    private Task bringIn(Step step) {
        boolean drives = intake.condition().drives();
        MachineClass.Moving moving = machineClass.moving();
        Usual task = drives ? Usual.DRIVE_IN : Usual.PUSH_IN;
        return usual(task, step, 0, drives ? moving.driven() : moving.pushed(), List.of());
    }

    private Task usual(Usual task, Step step, int pointCount, int minutes, List<String> after) {
        Usual.Words words = catalogue.usual().get(task);
        items.add(new Estimate.Item(step, task.kind(), words.name(), pointCount, minutes));
        return new Task(
                task.idIn(step),
                words.name(),
                task.kind(),
                task.skill(),
                minutes,
                0,
                after,
                List.of(),
                List.of(),
                words.caution(),
                Progress.TO_DO);
    }

    private void note(Task repair, Step step) {
        items.add(new Estimate.Item(step, repair.kind(), repair.name(), 0, repair.handsOn()));
    }

    private int uncoverMinutes(Point point) {
        return point.uncoverMinutes(intake.mud());
    }

    private int inspectMinutes(Step step) {
        return pointsOf(step).stream().mapToInt(Point::inspectMinutes).sum();
    }

    private List<Point> pointsOf(Step step) {
        return points.stream().filter(point -> point.step() == step).toList();
    }

    private static List<String> last(List<Task> tasks) {
        return List.of(tasks.get(tasks.size() - 1).id());
    }

    private static List<String> ids(List<Task> tasks) {
        return tasks.stream().map(Task::id).toList();
    }

    private static List<String> union(List<String> one, List<String> other) {
        return Stream.concat(one.stream(), other.stream()).distinct().toList();
    }
}
