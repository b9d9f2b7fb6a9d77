package org.shedboard.day;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.shedboard.register.Reading;
import org.shedboard.register.Reading.Told;
import org.shedboard.register.Reading.Unit;
import org.shedboard.register.Rung;
import org.shedboard.shop.Machine;

/** What is read on meters and said by owners between two services. */
final class MeterActs {
    private final Draft draft;
    private final Instant now;

    MeterActs(Draft draft, Instant now) {
        this.draft = draft;
        this.now = now;
    }

    Outcome read(Act.ReadMeter act) {
        Optional<Machine> machine = draft.day().books().findMachine(act.machineId());
        if (machine.isEmpty()) {
            return new Outcome.Refused(Refusal.of("machine_unknown", act.machineId()));
        }
        Optional<Refusal> no = personRefusal(act.by())
                .or(() -> act.told() == Told.AS_EXPECTED
                        ? MeterQuestions.of(draft.day(), machine.get(), act.unit(), act.value(), now)
                        : Optional.empty());
        if (no.isPresent()) {
            return new Outcome.Refused(no.get());
        }
        note(machine.get(), act.unit(), act.value(), act.told(), act.by());
        return draft.done();
    }

    private Optional<Refusal> personRefusal(String by) {
        return draft.day().shop().findPerson(by).isEmpty()
                ? Optional.of(Refusal.of("person_unknown", by))
                : Optional.empty();
    }

    private void note(Machine machine, Unit unit, double value, Told told, String by) {
        draft.put(new Reading(draft.newId("R"), machine.id(), now, unit, value, told, by));
        if (unit == Unit.HOURS) {
            draft.put(draft.day().books().expectMachine(machine.id()).withMeterHours((int) value));
        }
    }

    /** What is read at the door; what was said of it is said of what is doubtful, of all of it where nothing is. */
    void atTheDoor(Machine machine, Act.TakeIn act) {
        List<Seen> seen = Seen.of(act);
        boolean anyDoubt = seen.stream().anyMatch(each -> isDoubtful(machine, each));
        for (Seen each : seen) {
            boolean isMeant = !anyDoubt || isDoubtful(machine, each);
            note(machine, each.unit(), each.value(), isMeant ? act.dials().told() : Told.AS_EXPECTED, by(act));
        }
    }

    private String by(Act.TakeIn act) {
        return act.said().map(Act.TakeIn.Said::by).orElseGet(draft.day()::inCharge);
    }

    private boolean isDoubtful(Machine machine, Seen seen) {
        return MeterQuestions.of(draft.day(), machine, seen.unit(), seen.value(), now)
                .isPresent();
    }

    /** A value that stands on a meter at the door. */
    record Seen(Unit unit, int value) {
        static List<Seen> of(Act.TakeIn act) {
            List<Seen> seen = new ArrayList<>();
            add(seen, Unit.HOURS, act.meterHours());
            add(seen, Unit.KILOMETRES, act.dials().kilometres());
            return seen;
        }

        private static void add(List<Seen> seen, Unit unit, OptionalInt value) {
            value.ifPresent(number -> seen.add(new Seen(unit, number)));
        }
    }

    Outcome rung(Act.NoteRung act) {
        if (draft.day().books().findMachine(act.machineId()).isEmpty()) {
            return new Outcome.Refused(Refusal.of("machine_unknown", act.machineId()));
        }
        Optional<Refusal> no = personRefusal(act.by()).or(() -> dateRefusal(act));
        if (no.isPresent()) {
            return new Outcome.Refused(no.get());
        }
        draft.put(new Rung(
                draft.newId("G"),
                act.machineId(),
                now,
                act.by(),
                act.said(),
                act.again(),
                act.note().strip()));
        return draft.done();
    }

    private Optional<Refusal> dateRefusal(Act.NoteRung act) {
        if (act.again().isPresent() != (act.said() == Rung.Said.AGAIN)) {
            return Optional.of(Refusal.of("ring_again_when"));
        }
        LocalDate today = LocalDate.ofInstant(now, draft.day().zone());
        return act.again()
                .filter(date -> !date.isAfter(today))
                .map(date -> Refusal.of("ring_again_later", Clocks.sayFullDate(date)));
    }
}
