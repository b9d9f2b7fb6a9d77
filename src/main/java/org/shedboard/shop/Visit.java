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
        Optional<Instant> finished) {
    public Visit {
        lines = List.copyOf(lines);
        stays = List.copyOf(stays);
        promises = List.copyOf(promises);
        findings = List.copyOf(findings);
        if (hold.isPresent() != (state == VisitState.HELD)) {
            throw new IllegalArgumentException("visit %s is %s, which does not go with its hold".formatted(id, state));
        }
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
        return new Visit(id, machineId, tag, state, intake, lines, next, promises, findings, hold, finished);
    }

    public Optional<Line> findLine(String lineId) {
        return lines.stream().filter(line -> line.id().equals(lineId)).findFirst();
    }

    public Visit withLines(List<Line> next) {
        return new Visit(id, machineId, tag, state, intake, next, stays, promises, findings, hold, finished);
    }

    /** The same visit as one of another record of its machine. */
    public Visit withMachine(String next) {
        return new Visit(id, next, tag, state, intake, lines, stays, promises, findings, hold, finished);
    }

    public Visit withPromises(List<Promise> next) {
        return new Visit(id, machineId, tag, state, intake, lines, stays, next, findings, hold, finished);
    }

    public Visit withTag(OptionalInt next) {
        return new Visit(id, machineId, next, state, intake, lines, stays, promises, findings, hold, finished);
    }

    public Visit withIntake(Intake next) {
        return new Visit(id, machineId, tag, state, next, lines, stays, promises, findings, hold, finished);
    }

    /** The same visit in a state other than held. */
    public Visit withState(VisitState next) {
        return new Visit(
                id, machineId, tag, next, intake, lines, stays, promises, findings, Optional.empty(), finished);
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
                finished);
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
                Optional.of(at));
    }

    public Visit plusPromise(Promise promise) {
        List<Promise> all = new ArrayList<>(promises);
        all.add(promise);
        return new Visit(id, machineId, tag, state, intake, lines, stays, all, findings, hold, finished);
    }

    /** With this finding in place of an earlier one at the same point. */
    public Visit plusFinding(Finding finding) {
        List<Finding> all = new ArrayList<>(findings);
        all.removeIf(earlier -> earlier.pointId().equals(finding.pointId()));
        all.add(finding);
        return new Visit(id, machineId, tag, state, intake, lines, stays, promises, all, hold, finished);
    }
}
