package org.shedboard.pack;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** A task being changed in one part; the only mutable form of a task, and it never leaves {@link Problem.Task}. */
final class TaskDraft {
    String id;
    String skill;
    int handsOn;
    int unattended;
    Optional<List<String>> after;
    Map<String, Integer> handsOnBy;
    int people;
    List<String> notBy;
    int notBefore;
    Optional<String> person;
    OptionalInt at;
    double spread;
    Optional<Problem.Started> started;
    Optional<Problem.Done> done;

    TaskDraft(Problem.Task task) {
        id = task.id();
        skill = task.skill();
        handsOn = task.handsOn();
        unattended = task.unattended();
        after = task.after();
        handsOnBy = task.handsOnBy();
        people = task.people();
        notBy = task.notBy();
        notBefore = task.notBefore();
        person = task.person();
        at = task.at();
        spread = task.spread();
        started = task.started();
        done = task.done();
    }

    Problem.Task finish() {
        return new Problem.Task(
                id,
                skill,
                handsOn,
                unattended,
                after,
                handsOnBy,
                people,
                notBy,
                notBefore,
                person,
                at,
                spread,
                started,
                done);
    }
}
