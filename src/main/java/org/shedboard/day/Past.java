package org.shedboard.day;

import java.time.Instant;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.shedboard.estimate.Estimator;
import org.shedboard.estimate.PastVisit;
import org.shedboard.hours.Activity;
import org.shedboard.hours.ClockEntry;
import org.shedboard.shop.Condition;
import org.shedboard.shop.Intake;
import org.shedboard.shop.Line;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Payer;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;

/**
 * A finished visit that another record tells of, told as one of ours: every task done, one clock entry a step.
 *
 * @param nextNumber the number the next new thing gets
 */
record Past(List<Change> changes, long nextNumber) {
    /** The record gives minutes, not times of day: its day is taken to begin here. */
    private static final LocalTime BEGINS = LocalTime.of(7, 0);

    static Past of(Day day, PastVisit past) {
        Draft draft = new Draft(day);
        Machine machine = day.books().expectMachine(past.machineId());
        Instant at = past.date().atTime(BEGINS).atZone(day.zone()).toInstant();
        List<Act.Wanted> wanted = past.workIds().stream()
                .map(id -> new Act.Wanted(id, Payer.OWNER))
                .toList();
        List<Line> lines = DoorActs.linesOf(draft, wanted);
        Intake intake = new Intake(at, past.mud(), past.depth(), Condition.SOUND, "");
        List<Stay> planned = new Estimator(day.books().catalogue())
                .estimate(machine.classId(), intake, lines)
                .stays();
        String id = draft.newId("V");
        List<Stay> stays = new ArrayList<>();
        for (Stay stay : planned) {
            Instant end = at.plusSeconds(60L * past.minutes().getOrDefault(stay.step(), 0));
            String person = past.people()
                    .getOrDefault(stay.step(), day.shop().people().get(0).id());
            stays.add(done(stay, person, at, end));
            if (end.isAfter(at)) {
                Activity on = new Activity.OnStay(id, stay.step());
                draft.put(new ClockEntry(draft.newId("C"), person, on, at, Optional.of(end)));
            }
            at = end;
        }
        draft.put(new Visit(
                id,
                machine.id(),
                OptionalInt.empty(),
                VisitState.GONE,
                intake,
                lines,
                stays,
                List.of(),
                List.of(),
                Optional.empty(),
                Optional.of(at)));
        return new Past(((Outcome.Done) draft.done()).changes(), draft.day().nextNumber());
    }

    private static Stay done(Stay stay, String person, Instant from, Instant end) {
        return stay.withTasks(stay.tasks().stream()
                .map(task -> task.with(task.progress().started(person, from, 0).done(person, end)))
                .toList());
    }
}
