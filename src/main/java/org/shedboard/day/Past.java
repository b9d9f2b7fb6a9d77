package org.shedboard.day;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.shedboard.estimate.Estimator;
import org.shedboard.estimate.MachineClass;
import org.shedboard.estimate.PastFinding;
import org.shedboard.estimate.PastVisit;
import org.shedboard.hours.Activity;
import org.shedboard.hours.ClockEntry;
import org.shedboard.register.Carried;
import org.shedboard.register.Measured;
import org.shedboard.register.Reading;
import org.shedboard.shop.Condition;
import org.shedboard.shop.Intake;
import org.shedboard.shop.Line;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Payer;
import org.shedboard.shop.Person;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;
import org.shedboard.shop.Window;

/**
 * Finished visits that another record tells of, told as ours: every task done, one clock entry a step.
 *
 * <p>The record gives minutes, not times of day: a visit is taken to begin at seven, and each of its steps as soon as the step
 * before is over and the person is off whatever they were on that day; the usual breaks are left out.
 */
final class Past {
    private static final LocalTime BEGINS = LocalTime.of(7, 0);

    private final Draft draft;
    /** Until when a person is taken on a date; the key is both. */
    private final Map<Busy, Instant> busy = new HashMap<>();

    private final List<Measured> measured = new ArrayList<>();

    private record Busy(LocalDate date, String personId) {}

    private Past(Day day) {
        this.draft = new Draft(day);
    }

    /** The outcome of telling these visits, in their order. */
    static Outcome.Done of(Day day, List<PastVisit> visits) {
        Past past = new Past(day);
        visits.forEach(past::tell);
        return past.done();
    }

    /** The values read off are saved with the visits; the day has them beside, as one that is read from the records does. */
    private Outcome.Done done() {
        Outcome.Done told = (Outcome.Done) draft.done();
        Books books = told.day().books();
        Day day = told.day().with(books.with(books.register().with(measured)));
        return new Outcome.Done(day, told.changes(), told.subject(), told.trace());
    }

    private void tell(PastVisit past) {
        Day day = draft.day();
        Machine machine = day.books().expectMachine(past.machineId());
        List<Line> lines = DoorActs.linesOf(
                draft,
                past.workIds().stream()
                        .map(id -> new Act.Wanted(id, Payer.OWNER))
                        .toList());
        Instant came = past.date().atTime(BEGINS).atZone(day.zone()).toInstant();
        Intake intake = intake(past, machine, came);
        read(past, came);
        String id = draft.newId("V");
        Instant at = came;
        List<Stay> stays = new ArrayList<>();
        for (Stay stay : new Estimator(day.books().catalogue())
                .estimate(machine.classId(), intake, lines)
                .stays()) {
            String person = past.people()
                    .getOrDefault(stay.step(), day.shop().people().get(0).id());
            Busy key = new Busy(past.date(), person);
            Instant from = latest(at, busy.getOrDefault(key, at));
            at = after(from, past.minutes().getOrDefault(stay.step(), 0), person);
            busy.put(key, at);
            stays.add(done(stay, person, from, at));
            clock(id, stay, person, from, at);
        }
        goesHome(withFindings(gone(id, machine, intake, lines, stays, at), past, came));
    }

    /** A point that was looked at although the depth does not ask for it is one that was to be looked at whatever the depth. */
    private Intake intake(PastVisit past, Machine machine, Instant came) {
        MachineClass machineClass = draft.day().books().catalogue().expectClass(machine.classId());
        List<String> deeper = past.findings().stream()
                .map(PastFinding::pointId)
                .filter(id -> machineClass
                        .findPoint(id)
                        .filter(point -> !past.depth().covers(point.due()))
                        .isPresent())
                .toList();
        return new Intake(came, past.mud(), past.depth(), Condition.SOUND, "")
                .withMeterHours(past.meters().hours())
                .alsoLookingAt(deeper);
    }

    /** All was found when it came, since the record does not tell when: so the work of the visit comes after, and mends it. */
    private static Visit withFindings(Visit visit, PastVisit past, Instant came) {
        Visit told = visit;
        for (PastFinding each : past.findings()) {
            told = told.plusFinding(each.at(came));
        }
        return told;
    }

    private void goesHome(Visit visit) {
        draft.put(visit);
        measured.addAll(Measured.in(visit));
        List<Carried> before = draft.day().books().register().carriedBy(visit.machineId());
        List<Carried> home = TakenHome.of(draft.day(), visit);
        if (!home.equals(before)) {
            draft.carry(visit.machineId(), home);
        }
    }

    private void read(PastVisit past, Instant came) {
        PastVisit.Meters meters = past.meters();
        read(past, came, Reading.Unit.HOURS, meters.hours());
        read(past, came, Reading.Unit.KILOMETRES, meters.kilometres());
    }

    private void read(PastVisit past, Instant came, Reading.Unit unit, OptionalInt value) {
        Reading.Told told = past.meters().isNew() ? Reading.Told.NEW_METER : Reading.Told.AS_EXPECTED;
        String by = draft.day().shop().people().get(0).id();
        value.ifPresent(
                number -> draft.put(new Reading(draft.newId("R"), past.machineId(), came, unit, number, told, by)));
    }

    /** When a person has worked so many minutes, their usual breaks left out. */
    private Instant after(Instant from, int minutes, String personId) {
        ZonedDateTime begin = from.atZone(draft.day().zone());
        ZonedDateTime end = begin.plusMinutes(minutes);
        List<Window> breaks =
                draft.day().shop().findPerson(personId).map(Person::breaks).orElse(List.of());
        for (Window free : breaks) {
            ZonedDateTime opens = latest(begin, begin.with(free.from()));
            ZonedDateTime closes = begin.with(free.to());
            if (opens.isBefore(closes) && opens.isBefore(end)) {
                end = end.plus(Duration.between(opens, closes));
            }
        }
        return end.toInstant();
    }

    private static ZonedDateTime latest(ZonedDateTime one, ZonedDateTime other) {
        return one.isAfter(other) ? one : other;
    }

    private static Instant latest(Instant one, Instant other) {
        return one.isAfter(other) ? one : other;
    }

    private void clock(String visitId, Stay stay, String person, Instant from, Instant to) {
        if (to.isAfter(from)) {
            Activity on = new Activity.OnStay(visitId, stay.step());
            draft.put(new ClockEntry(draft.newId("C"), person, on, from, Optional.of(to)));
        }
    }

    private static Stay done(Stay stay, String person, Instant from, Instant to) {
        return stay.withTasks(stay.tasks().stream()
                .map(task -> task.with(task.progress().started(person, from, 0).done(person, to)))
                .toList());
    }

    private static Visit gone(
            String id, Machine machine, Intake intake, List<Line> lines, List<Stay> stays, Instant finished) {
        return new Visit(
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
                Optional.of(finished));
    }
}
