package org.shedboard.files;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.shedboard.estimate.Usual;
import org.shedboard.estimate.Work;
import org.shedboard.estimate.Work.WorkTask;
import org.shedboard.estimate.WorkPart;
import org.shedboard.shop.Depth;
import org.shedboard.shop.PlaceKind;
import org.shedboard.shop.ServiceInterval;
import org.shedboard.shop.Skill;
import org.shedboard.shop.Step;

/**
 * The works of a catalogue file.
 *
 * <p>A task id stands for the same piece of work wherever it is named, for two lines that name it share the task. So its name,
 * step, skill and kinds of place must be the same everywhere, and what it waits for must make no circle even when the waits of
 * all the works are put together.
 */
final class WorkFields {
    private static final Set<String> USUAL_IDS = Stream.of(Usual.values())
            .flatMap(task -> Stream.of(Step.values()).map(task::idIn))
            .collect(Collectors.toUnmodifiableSet());

    private static final int LONGEST_INTERVAL = 100_000;

    private final Set<String> classIds;
    private final PartFields parts;
    private final Map<String, String> worksSeen = new HashMap<>();
    /** Where a key is used, by "class key". */
    private final Map<String, String> keysSeen = new HashMap<>();

    private final Map<String, Named> tasks = new LinkedHashMap<>();
    /** Tasks of the circles told so far: each is told once. */
    private final Set<String> circled = new HashSet<>();

    /** The first naming of a task, and all that it waits for in any work. */
    private record Named(WorkTask task, String place, Set<String> after) {}

    /** A task and the object it was read from. */
    private record Placed(Fields fields, WorkTask task) {}

    WorkFields(Set<String> classIds, PartFields parts) {
        this.classIds = classIds;
        this.parts = parts;
    }

    Work read(Fields fields) {
        String id = fields.filled("id");
        fields.unique("id", id, worksSeen);
        String name = fields.filled("name");
        List<String> classes = fields.texts("classes");
        if (classes.isEmpty() && fields.has("classes")) {
            fields.fault("classes", "is empty");
        }
        fields.allKnown("classes", classes, classIds, "machine class");
        String key = key(fields, classes);
        Depth depth = fields.oneOf("depth", Depth.class);
        List<WorkTask> wanted = tasks(fields.someObjects("tasks", each -> new Placed(each, task(each))));
        PartFields.Of work =
                new PartFields.Of(classes, wanted.stream().map(WorkTask::id).toList());
        List<WorkPart> needed = fields.objectsOrNone("parts", each -> parts.read(each, work));
        return new Work(id, name, key, new HashSet<>(classes), depth, wanted, needed, interval(fields, id));
    }

    private String key(Fields fields, List<String> classes) {
        String key = fields.filled("key");
        if (!Fields.isUnread(key) && !key.matches("[a-z]{1,2}")) {
            fields.fault("key", "\"%s\" is not one or two small letters".formatted(key));
        }
        for (String each : classes) {
            String first = keysSeen.putIfAbsent(each + " " + key, fields.where());
            if (first != null) {
                fields.fault("key", "\"%s\" already chooses %s for %s".formatted(key, first, each));
            }
        }
        return key;
    }

    /** A big service includes only services before it, so that none includes itself by a circle. */
    private Optional<ServiceInterval> interval(Fields fields, String id) {
        List<String> includes = fields.textsOrNone("includes");
        Set<String> before = new HashSet<>(worksSeen.keySet());
        before.remove(id);
        fields.allKnown("includes", includes, before, "work before it");
        if (!includes.isEmpty() && !fields.has("every")) {
            fields.fault("includes", "says what it includes, but not how often it is to be done");
        }
        return fields.findObject("every", every -> every(every, includes)).flatMap(each -> each);
    }

    private static Optional<ServiceInterval> every(Fields fields, List<String> includes) {
        OptionalInt hours = fields.findWhole("hours", 1, LONGEST_INTERVAL);
        OptionalInt kilometres = fields.findWhole("kilometres", 1, LONGEST_INTERVAL);
        OptionalInt months = fields.findWhole("months", 1, LONGEST_INTERVAL);
        if (!fields.has("hours") && !fields.has("kilometres") && !fields.has("months")) {
            fields.fault("hours", "is missing, and so are kilometres and months");
        }
        return hours.isPresent() || kilometres.isPresent() || months.isPresent()
                ? Optional.of(new ServiceInterval(hours, kilometres, months, includes))
                : Optional.empty();
    }

    private List<WorkTask> tasks(List<Placed> all) {
        List<WorkTask> read = all.stream().map(Placed::task).toList();
        Map<String, String> seen = new HashMap<>();
        for (Placed placed : all) {
            placed.fields().unique("id", placed.task().id(), seen);
            checkStep(placed.fields(), placed.task());
            checkAfter(placed.fields(), placed.task(), read);
            checkShared(placed.fields(), placed.task());
        }
        return read;
    }

    private static WorkTask task(Fields fields) {
        return new WorkTask(
                fields.filled("id"),
                fields.filled("name"),
                fields.oneOf("step", Step.class),
                fields.oneOf("skill", Skill.class),
                fields.someOf("kinds", PlaceKind.class),
                fields.whole("handsOn", 1, CatalogueFile.LONGEST_MINUTES),
                fields.wholeOr("unattended", 0, 0, CatalogueFile.LONGEST_MINUTES),
                fields.textsOrNone("after"),
                fields.flag("checkedByAnother", false),
                fields.findText("caution").orElse(""));
    }

    private static void checkStep(Fields fields, WorkTask task) {
        if (USUAL_IDS.contains(task.id())) {
            fields.fault("id", "\"%s\" is a task that every visit has".formatted(task.id()));
        }
        if (CatalogueFile.isWash(fields)) {
            fields.fault("step", "work is not done on the wash pad");
        } else if (!task.step().kinds().containsAll(task.kinds())) {
            fields.fault("kinds", "not every kind does for step " + Fields.nameOf(task.step()));
        }
    }

    private static void checkAfter(Fields fields, WorkTask task, List<WorkTask> all) {
        Set<String> sameStep = all.stream()
                .filter(each -> each.step() == task.step())
                .map(WorkTask::id)
                .collect(Collectors.toSet());
        fields.allKnown("after", task.after(), sameStep, "task of the same work and step");
    }

    private void checkShared(Fields fields, WorkTask task) {
        Named known = tasks.computeIfAbsent(task.id(), id -> new Named(task, fields.where(), new LinkedHashSet<>()));
        if (!isSame(known.task(), task)) {
            String words = "\"%s\" has another name, step, skill or kind of place at %s";
            fields.fault("id", words.formatted(task.id(), known.place()));
        }
        known.after().addAll(task.after());
        List<String> circle = circle(task.id());
        if (circled.addAll(circle)) {
            fields.fault("after", "goes in a circle: " + String.join(" after ", circle));
        }
    }

    private static boolean isSame(WorkTask one, WorkTask other) {
        return one.name().equals(other.name())
                && one.step() == other.step()
                && one.skill() == other.skill()
                && one.kinds().equals(other.kinds());
    }

    /** The way from a task through what it waits for back to itself; empty when there is none. */
    private List<String> circle(String id) {
        List<String> way = new ArrayList<>(List.of(id));
        return findWay(id, id, way, new HashSet<>()) ? way : List.of();
    }

    private boolean findWay(String from, String to, List<String> way, Set<String> visited) {
        Named known = tasks.get(from);
        for (String next : known == null ? Set.<String>of() : known.after()) {
            way.add(next);
            if (next.equals(to) || visited.add(next) && findWay(next, to, way, visited)) {
                return true;
            }
            way.remove(way.size() - 1);
        }
        return false;
    }
}
