package org.shedboard.estimate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Step;

/** One figure of the catalogue that can be put right by itself: minutes of something, found by a name that stays. */
public sealed interface Figure {
    /** Nothing takes longer by any catalogue. */
    int LONGEST_MINUTES = 600;

    /** A name in a few letters, by which people can speak of it. */
    String id();

    /** Its minutes; empty where the catalogue has nothing of the kind. */
    Optional<Integer> minutesIn(Catalogue catalogue);

    /** The catalogue with so many minutes, which are within its bounds, in place of those it has. */
    Catalogue in(Catalogue catalogue, int minutes);

    /** The fewest minutes that leave the catalogue one that can be loaded. */
    default int least(Catalogue catalogue) {
        return 1;
    }

    /** The most of them. */
    default int most(Catalogue catalogue) {
        return LONGEST_MINUTES;
    }

    /** All there are in a catalogue, in its order. */
    static List<Figure> of(Catalogue catalogue) {
        List<Figure> all = new ArrayList<>();
        for (MachineClass each : catalogue.classes()) {
            Arrays.stream(Mud.values()).map(mud -> new Wash(each.id(), mud)).forEach(all::add);
            Inspection.STEPS.stream()
                    .filter(step -> each.inspectMinutes(step) > 0)
                    .map(step -> new Inspection(each.id(), step))
                    .forEach(all::add);
        }
        for (Work work : catalogue.works()) {
            work.tasks().stream().map(task -> new OfTask(work.id(), task.id())).forEach(all::add);
        }
        return all;
    }

    /** The one of this name. */
    static Optional<Figure> find(Catalogue catalogue, String id) {
        return of(catalogue).stream().filter(figure -> figure.id().equals(id)).findFirst();
    }

    private static String name(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    /** What washing a class of machine takes at one mud grade; never more than at the next dirtier one. */
    record Wash(String classId, Mud mud) implements Figure {
        @Override
        public String id() {
            return "wash:%s:%s".formatted(classId, name(mud));
        }

        @Override
        public Optional<Integer> minutesIn(Catalogue catalogue) {
            return catalogue.findClass(classId).map(each -> each.washMinutes(mud));
        }

        @Override
        public Catalogue in(Catalogue catalogue, int minutes) {
            return catalogue.with(catalogue.expectClass(classId).withWashMinutes(mud, minutes));
        }

        @Override
        public int least(Catalogue catalogue) {
            return mud == Mud.CLEAN ? 0 : catalogue.expectClass(classId).washMinutes(Mud.of(mud.grade() - 1));
        }

        @Override
        public int most(Catalogue catalogue) {
            return mud == Mud.CAKED
                    ? LONGEST_MINUTES
                    : catalogue.expectClass(classId).washMinutes(Mud.of(mud.grade() + 1));
        }
    }

    /** What looking at all points of a class in one step takes; the points keep their parts of it. */
    record Inspection(String classId, Step step) implements Figure {
        /** What is looked at on the test drive goes with that. */
        private static final List<Step> STEPS = List.of(Step.UNDERSIDE, Step.TOPSIDE);

        @Override
        public String id() {
            return "inspect:%s:%s".formatted(classId, name(step));
        }

        @Override
        public Optional<Integer> minutesIn(Catalogue catalogue) {
            return catalogue
                    .findClass(classId)
                    .map(each -> each.inspectMinutes(step))
                    .filter(minutes -> minutes > 0);
        }

        @Override
        public Catalogue in(Catalogue catalogue, int minutes) {
            return catalogue.with(catalogue.expectClass(classId).withInspectMinutes(step, minutes));
        }

        /** A minute for each point. */
        @Override
        public int least(Catalogue catalogue) {
            return (int) catalogue.expectClass(classId).points().stream()
                    .filter(point -> point.step() == step)
                    .count();
        }
    }

    /** What the hands-on work of one task of a work takes. */
    record OfTask(String workId, String taskId) implements Figure {
        @Override
        public String id() {
            return "task:%s:%s".formatted(workId, taskId);
        }

        @Override
        public Optional<Integer> minutesIn(Catalogue catalogue) {
            return catalogue
                    .findWork(workId)
                    .flatMap(work -> work.findTask(taskId))
                    .map(Work.WorkTask::handsOn);
        }

        @Override
        public Catalogue in(Catalogue catalogue, int minutes) {
            return catalogue.with(catalogue.expectWork(workId).withHandsOn(taskId, minutes));
        }
    }
}
