package org.shedboard.day;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.shedboard.register.MeterDoubt;
import org.shedboard.register.Reading;
import org.shedboard.register.Reading.Told;
import org.shedboard.register.Reading.Unit;
import org.shedboard.shop.Machine;

/** What is to be asked about a reading before it is believed: a misread one, another meter, or right as typed? */
public final class MeterQuestions {
    private MeterQuestions() {}

    /** The first doubt about what was read at the door, as the refusal that it comes to while nobody has answered it. */
    public static Optional<Refusal> of(Day day, Act.TakeIn act, Instant now) {
        Optional<Machine> machine = act.which().machineId().flatMap(day.books()::findMachine);
        if (machine.isEmpty() || act.dials().told() != Told.AS_EXPECTED) {
            return Optional.empty();
        }
        return MeterActs.Seen.of(act).stream()
                .flatMap(seen -> of(day, machine.get(), seen.unit(), seen.value(), now).stream())
                .findFirst();
    }

    static Optional<Refusal> of(Day day, Machine machine, Unit unit, double value, Instant now) {
        List<Reading> earlier = earlier(day, machine);
        Reading reading = new Reading("", machine.id(), now, unit, value, Told.AS_EXPECTED, "");
        return MeterDoubt.of(earlier, reading, day.books().upkeep().usualOf(machine.classId(), unit))
                .map(doubt -> refusal(day, doubt, reading, last(earlier, doubt, unit)));
    }

    /** A machine known from before readings were kept has shown its hours on some day, nobody knows which. */
    private static List<Reading> earlier(Day day, Machine machine) {
        List<Reading> kept = day.books().register().logbook().readingsOf(machine.id());
        List<Reading> all = new ArrayList<>(kept);
        if (kept.isEmpty()) {
            machine.meterHours()
                    .ifPresent(hours -> all.add(
                            new Reading("", machine.id(), Instant.EPOCH, Unit.HOURS, hours, Told.AS_EXPECTED, "")));
        }
        return all;
    }

    private static Reading last(List<Reading> earlier, MeterDoubt doubt, Unit unit) {
        return earlier.stream()
                .filter(reading -> (reading.unit() == unit) != (doubt == MeterDoubt.OTHER_UNIT))
                .max(Comparator.comparing(Reading::at))
                .orElseThrow();
    }

    private static Refusal refusal(Day day, MeterDoubt doubt, Reading reading, Reading last) {
        String when = last.at().equals(Instant.EPOCH)
                ? ""
                : " (" + Clocks.sayFullDate(LocalDate.ofInstant(last.at(), day.zone())) + ")";
        String before = last.shown() + when;
        return switch (doubt) {
            case BACKWARDS -> Refusal.of("meter_backwards", reading.shown(), before);
            case IMPOSSIBLE -> Refusal.of("meter_impossible", reading.shown(), before);
            case LEAP -> Refusal.of("meter_leap", reading.shown(), before);
            case OTHER_UNIT -> Refusal.of("meter_other_unit", reading.shown(), before);
        };
    }
}
