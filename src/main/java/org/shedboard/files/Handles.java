package org.shedboard.files;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.shedboard.day.Act;
import org.shedboard.estimate.Catalogue;
import org.shedboard.estimate.Estimator;
import org.shedboard.estimate.Point;
import org.shedboard.estimate.Work;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Intake;
import org.shedboard.shop.Line;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Step;
import org.shedboard.shop.Task;

/** The visits of a morning so far, by their handles: what is wanted on each says which tasks and points it has. */
final class Handles {
    private final Catalogue catalogue;
    private final Estimator estimator;
    private final Map<String, Taken> visits = new LinkedHashMap<>();

    /** A visit that was taken in or booked; without a class when its take-in could not be read. */
    private record Taken(
            Optional<String> classId, Intake intake, List<Line> lines, Set<String> ticked, boolean workAdded) {}

    Handles(Catalogue catalogue) {
        this.catalogue = catalogue;
        this.estimator = new Estimator(catalogue);
    }

    void take(Fields fields, String handle, Optional<String> classId, Act.TakeIn act) {
        if (!handle.startsWith("@") && !Fields.isUnread(handle)) {
            fields.fault("visit", "\"%s\" does not begin with @".formatted(handle));
        }
        Depth depth = act.depth().orElseGet(() -> deepest(act.wanted()));
        Intake intake = new Intake(Instant.EPOCH, act.mud(), depth, act.condition(), act.note());
        Taken taken = new Taken(classId, intake, lines(List.of(), act.wanted()), new HashSet<>(), false);
        if (visits.putIfAbsent(handle, taken) != null) {
            fields.fault("visit", "\"%s\" is taken in already".formatted(handle));
        }
    }

    void arrive(String handle, Optional<Mud> mud) {
        visits.computeIfPresent(
                handle,
                (same, visit) -> new Taken(
                        visit.classId(),
                        mud.map(visit.intake()::withMud).orElse(visit.intake()),
                        visit.lines(),
                        visit.ticked(),
                        visit.workAdded()));
    }

    void add(String handle, List<Act.Wanted> wanted) {
        visits.computeIfPresent(
                handle,
                (same, visit) ->
                        new Taken(visit.classId(), visit.intake(), lines(visit.lines(), wanted), visit.ticked(), true));
    }

    Set<String> all() {
        return visits.keySet();
    }

    Optional<String> classOf(String handle) {
        return find(handle).flatMap(Taken::classId);
    }

    /** Ids of its tasks; none where that cannot be known. */
    Optional<Set<String>> tasksOf(String handle) {
        return find(handle).flatMap(visit -> visit.classId().map(classId -> taskIds(visit, classId)));
    }

    /** A machine that comes in once more for added work has tasks that are numbered on. */
    private Set<String> taskIds(Taken visit, String classId) {
        return ShopFile.ids(estimator.estimate(classId, visit.intake(), visit.lines()).stays().stream()
                .flatMap(stay -> stay.tasks().stream())
                .map(Task::id)
                .flatMap(id -> visit.workAdded() ? Stream.of(id, id + "-2") : Stream.of(id)));
    }

    /** The points its depth asks for; none where that cannot be known. */
    Optional<List<Point>> pointsOf(String handle) {
        return find(handle)
                .flatMap(visit -> visit.classId()
                        .map(classId -> catalogue
                                .expectClass(classId)
                                .pointsAt(visit.intake().depth())));
    }

    /** Whether this point was not ticked before; it is from now on. */
    boolean tick(String handle, String pointId) {
        return find(handle).map(visit -> visit.ticked().add(pointId)).orElse(true);
    }

    /** Points of one step that nobody ticked yet, ticked from now on. */
    List<String> tickRest(String handle, Step step) {
        return pointsOf(handle).orElse(List.of()).stream()
                .filter(point -> point.step() == step)
                .map(Point::id)
                .filter(id -> tick(handle, id))
                .toList();
    }

    private Optional<Taken> find(String handle) {
        return Optional.ofNullable(visits.get(handle));
    }

    private Depth deepest(List<Act.Wanted> wanted) {
        return wanted.stream()
                .flatMap(each -> catalogue.findWork(each.workId()).stream())
                .map(Work::depth)
                .max(Comparator.naturalOrder())
                .orElse(Depth.ONCE_OVER);
    }

    private List<Line> lines(List<Line> before, List<Act.Wanted> wanted) {
        List<Line> lines = new ArrayList<>(before);
        for (Act.Wanted each : wanted) {
            catalogue
                    .findWork(each.workId())
                    .ifPresent(work -> lines.add(
                            new Line("L" + lines.size(), work.id(), work.name(), each.payer(), work.lineParts())));
        }
        return List.copyOf(lines);
    }
}
