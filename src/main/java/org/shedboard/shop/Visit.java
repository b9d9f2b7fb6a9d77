package org.shedboard.shop;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;

/**
 * One machine's time with us, from booked to collected.
 *
 * @param tag number on its key, while it has one
 * @param promises what the owner was told, oldest first
 * @param findings the newest finding of each point, in the order they were made
 * @param hold why it is held; empty unless the state is held
 * @param finished when its last task was complete
 * @param handover how it was given back, where that was recorded
 */
public record Visit(
        String id,
        String machineId,
        OptionalInt tag,
        VisitState state,
        Intake intake,
        List<Line> lines,
        List<Stay> stays,
        List<Promise> promises,
        List<Finding> findings,
        Optional<Hold> hold,
        Optional<Instant> finished,
        Optional<Handover> handover) {
    public Visit {
        lines = List.copyOf(lines);
        stays = List.copyOf(stays);
        promises = List.copyOf(promises);
        findings = List.copyOf(findings);
        if (hold.isPresent() != (state == VisitState.HELD)) {
            throw new IllegalArgumentException("visit %s is %s, which does not go with its hold".formatted(id, state));
        }
    }

    /** A visit whose machine has not been given back yet, or of which nobody had to say how it was. */
    public Visit(
            String id,
            String machineId,
            OptionalInt tag,
            VisitState state,
            Intake intake,
            List<Line> lines,
            List<Stay> stays,
            List<Promise> promises,
            List<Finding> findings,
            Optional<Hold> hold,
            Optional<Instant> finished) {
        this(id, machineId, tag, state, intake, lines, stays, promises, findings, hold, finished, Optional.empty());
    }

    public Optional<Promise> promise() {
        return promises.isEmpty() ? Optional.empty() : Optional.of(promises.get(promises.size() - 1));
    }

    /** The promise that counts as kept or missed: the first one, or the first after the owner's latest wish for a change. */
    public Optional<Promise> firstPromise() {
        Optional<Promise> counts = Optional.empty();
        for (Promise promise : promises) {
            if (counts.isEmpty() || promise.ownersWish()) {
                counts = Optional.of(promise);
            }
        }
        return counts;
    }

    public boolean hasBegun() {
        return stays.stream().anyMatch(Stay::hasBegun);
    }

    public List<Task> tasks() {
        return stays.stream().flatMap(stay -> stay.tasks().stream()).toList();
    }

    public Optional<Task> findTask(String taskId) {
        return tasks().stream().filter(task -> task.id().equals(taskId)).findFirst();
    }

    /** Index of the first stay with work left; the number of stays when there is none. */
    public int currentStay() {
        int index = 0;
        while (index < stays.size() && stays.get(index).isDone()) {
            index++;
        }
        return index;
    }

    /** The first stay with work left; the last one when there is none. */
    public Stay newestStay() {
        return stays.get(Math.min(currentStay(), stays.size() - 1));
    }

    public Optional<Stay> stayOf(String taskId) {
        return stays.stream().filter(stay -> stay.findTask(taskId).isPresent()).findFirst();
    }

    /** The place it stands in now: that of a stay that has begun and is not over. */
    public Optional<String> standsIn() {
        return stays.stream()
                .filter(stay -> stay.hasBegun() && !stay.isDone())
                .flatMap(stay -> stay.placeId().stream())
                .findFirst();
    }

    public Optional<Finding> findingAt(String pointId) {
        return findings.stream()
                .filter(finding -> finding.pointId().equals(pointId))
                .findFirst();
    }

    public Visit withTask(String taskId, UnaryOperator<Task> change) {
        return withStays(
                stays.stream().map(stay -> stay.withTask(taskId, change)).toList());
    }

    public Visit withStays(List<Stay> next) {
        return new Visit(id, machineId, tag, state, intake, lines, next, promises, findings, hold, finished, handover);
    }

    public Optional<Line> findLine(String lineId) {
        return lines.stream().filter(line -> line.id().equals(lineId)).findFirst();
    }

    /** Whether all the work of a line is done. */
    public boolean isDone(Line line) {
        List<Task> own = tasksOf(line);
        return !own.isEmpty() && own.stream().allMatch(Task::isDone);
    }

    /** The tasks that serve a line. */
    public List<Task> tasksOf(Line line) {
        return tasks().stream().filter(task -> task.lines().contains(line.id())).toList();
    }

    public Visit withLines(List<Line> next) {
        return new Visit(id, machineId, tag, state, intake, next, stays, promises, findings, hold, finished, handover);
    }

    /** The same visit as one of another record of its machine. */
    public Visit withMachine(String next) {
        return new Visit(id, next, tag, state, intake, lines, stays, promises, findings, hold, finished);
    }

    public Visit withPromises(List<Promise> next) {
        return new Visit(id, machineId, tag, state, intake, lines, stays, next, findings, hold, finished);
    }

    public Visit withTag(OptionalInt next) {
        return new Visit(
                id, machineId, next, state, intake, lines, stays, promises, findings, hold, finished, handover);
    }

    public Visit withIntake(Intake next) {
        return new Visit(id, machineId, tag, state, next, lines, stays, promises, findings, hold, finished, handover);
    }

    /** The same visit in a state other than held. */
    public Visit withState(VisitState next) {
        return new Visit(
                id,
                machineId,
                tag,
                next,
                intake,
                lines,
                stays,
                promises,
                findings,
                Optional.empty(),
                finished,
                handover);
    }

    public Visit held(Hold why) {
        return new Visit(
                id,
                machineId,
                tag,
                VisitState.HELD,
                intake,
                lines,
                stays,
                promises,
                findings,
                Optional.of(why),
                finished,
                handover);
    }

    public Visit finishedAt(Instant at) {
        return new Visit(
                id,
                machineId,
                tag,
                VisitState.DONE,
                intake,
                lines,
                stays,
                promises,
                findings,
                Optional.empty(),
                Optional.of(at),
                handover);
    }

    public Visit plusPromise(Promise promise) {
        List<Promise> all = new ArrayList<>(promises);
        all.add(promise);
        return new Visit(id, machineId, tag, state, intake, lines, stays, all, findings, hold, finished, handover);
    }

    /** With this finding in place of an earlier one at the same point; what the owner said of a fix stays with it. */
    public Visit plusFinding(Finding finding) {
        List<Finding> all = new ArrayList<>(findings);
        all.removeIf(earlier -> earlier.pointId().equals(finding.pointId()));
        all.add(findingAt(finding.pointId()).map(finding::after).orElse(finding));
        return new Visit(id, machineId, tag, state, intake, lines, stays, promises, all, hold, finished, handover);
    }

    /** With another name in the place of whoever was asked about a fix, or took the machine. */
    public Visit withoutNames(String instead) {
        return new Visit(
                id,
                machineId,
                tag,
                state,
                intake,
                lines,
                stays,
                promises,
                findings.stream().map(finding -> finding.unnamed(instead)).toList(),
                hold,
                finished,
                handover.map(how -> new Handover(how.by(), instead, how.told(), how.at())));
    }

    /** Gone home with somebody who was told what there is to know. */
    public Visit handedOver(Handover how) {
        return new Visit(
                id, machineId, tag, state, intake, lines, stays, promises, findings, hold, finished, Optional.of(how));
    }
}
