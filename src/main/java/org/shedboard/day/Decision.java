package org.shedboard.day;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.shedboard.register.Rung;
import org.shedboard.shop.Line;
import org.shedboard.shop.Opening;
import org.shedboard.shop.Owner;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;

/**
 * What an act decides anew, where two people can each decide it in their own way and the later one would go over the other's without a
 * word: a promise, a finding, a count. What the shed itself allows only once, such as starting a task, is refused to the second anyway.
 */
public final class Decision {
    private Decision() {}

    /** Whether what the act decides is another now than when it was seen. */
    public static boolean isOvertaken(Act act, Day seen, Day now) {
        return decidedBy(act)
                .filter(decided -> !decided.apply(seen).equals(decided.apply(now)))
                .isPresent();
    }

    /** Ids of the things and the people that the act is about. */
    public static Set<String> about(Act act) {
        Set<String> ids = new LinkedHashSet<>();
        if (act instanceof Act.OnVisit on) {
            ids.add(on.visitId());
        }
        if (act instanceof Act.ByPerson by) {
            ids.add(by.personId());
        }
        if (act instanceof Act.OnMachine on) {
            ids.add(on.machineId());
        }
        if (act instanceof Act.OnOwner on) {
            ids.add(on.ownerId());
        }
        if (act instanceof Act.OnItem on) {
            ids.add(on.itemId());
        }
        if (act instanceof Act.MergeMachines merge) {
            ids.addAll(List.of(merge.keepId(), merge.otherId()));
        }
        if (act instanceof Act.TakeBack back) {
            ids.addAll(back.trace().visitIds());
        }
        return ids;
    }

    private static Optional<Function<Day, Object>> decidedBy(Act act) {
        return onVisit(act).or(() -> inBooks(act)).or(() -> onFloor(act));
    }

    private static Optional<Function<Day, Object>> onVisit(Act act) {
        if (act instanceof Act.SayPromise a) {
            return ofVisit(a.visitId(), Visit::promises);
        }
        if (act instanceof Act.HoldVisit a) {
            return ofVisit(a.visitId(), Visit::hold);
        }
        if (act instanceof Act.AddWork a) {
            return ofVisit(
                    a.visitId(), visit -> visit.lines().stream().map(Line::id).toList());
        }
        if (act instanceof Act.AgreeHours a) {
            return ofVisit(a.visitId(), visit -> visit.findLine(a.lineId()).map(Line::agreedMinutes));
        }
        if (act instanceof Act.FitPart a) {
            return ofVisit(a.visitId(), visit -> visit.findLine(a.lineId()).map(Line::parts));
        }
        if (act instanceof Act.Tick a) {
            return ofVisit(a.visitId(), visit -> visit.findingAt(a.pointId()));
        }
        if (act instanceof Act.OwnerSaid a) {
            return ofVisit(a.visitId(), visit -> visit.findingAt(a.pointId()));
        }
        if (act instanceof Act.PinTask a) {
            return ofVisit(a.visitId(), visit -> visit.findTask(a.taskId()).map(Task::pin));
        }
        if (act instanceof Act.LiftPin a) {
            return ofVisit(a.visitId(), visit -> visit.findTask(a.taskId()).map(Task::pin));
        }
        return act instanceof Act.LendMachine a
                ? decided(day -> day.books().register().loanOutFor(a.visitId()))
                : Optional.empty();
    }

    private static Optional<Function<Day, Object>> inBooks(Act act) {
        if (act instanceof Act.CorrectMachine a) {
            return decided(day -> day.books().findMachine(a.machineId()));
        }
        if (act instanceof Act.CorrectOwner a) {
            return decided(
                    day -> day.books().findOwner(a.ownerId()).map(owner -> List.of(owner.name(), owner.phone())));
        }
        if (act instanceof Act.SetWashDown a) {
            return decided(day -> day.books().findOwner(a.ownerId()).map(Owner::washDownFirst));
        }
        if (act instanceof Act.NoteRung a) {
            return decided(day -> rung(day, a.machineId()));
        }
        if (act instanceof Act.CountStock a) {
            return decided(day -> day.books().shelf().findStock(a.itemId()));
        }
        if (act instanceof Act.OrderStock a) {
            return decided(day -> day.books().shelf().openOrdersOf(a.itemId()));
        }
        if (act instanceof Act.SetHoursRules) {
            return decided(day -> day.books().hoursRules());
        }
        if (act instanceof Act.SetPackedPercent) {
            return decided(day -> day.books().foresight().packedPercent());
        }
        return act instanceof Act.SetNotices
                ? decided(day -> day.books().register().notices())
                : Optional.empty();
    }

    private static List<Rung> rung(Day day, String machineId) {
        return day.books().register().logbook().rung().stream()
                .filter(call -> call.machineId().equals(machineId))
                .toList();
    }

    private static Optional<Function<Day, Object>> onFloor(Act act) {
        if (act instanceof Act.CheckHoist a) {
            return ofOpening(opening -> opening.checkOf(a.checked().placeId()));
        }
        if (act instanceof Act.BeHere a) {
            return ofOpening(opening -> opening.attendanceOf(a.personId()));
        }
        return act instanceof Act.PlanErrand a ? decided(day -> day.errandsOf(a.personId())) : Optional.empty();
    }

    private static Optional<Function<Day, Object>> decided(Function<Day, Object> what) {
        return Optional.of(what);
    }

    private static Optional<Function<Day, Object>> ofVisit(String id, Function<Visit, Object> what) {
        return decided(day -> day.findVisit(id).map(what));
    }

    private static Optional<Function<Day, Object>> ofOpening(Function<Opening, Object> what) {
        return decided(day -> day.opening().map(what));
    }
}
