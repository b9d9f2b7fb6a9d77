package org.shedboard.register;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.shedboard.register.Reading.Told;
import org.shedboard.register.Reading.Unit;
import org.shedboard.shop.Mud;

/** The readings of machine M1 as a test tells them, and when it was serviced. */
final class Readings {
    private final List<Reading> all = new ArrayList<>();

    Readings hours(String date, double value) {
        return with(date, Unit.HOURS, value, Told.AS_EXPECTED);
    }

    Readings kilometres(String date, double value) {
        return with(date, Unit.KILOMETRES, value, Told.AS_EXPECTED);
    }

    Readings newMeter(String date, double value) {
        return with(date, Unit.HOURS, value, Told.NEW_METER);
    }

    Readings right(String date, double value) {
        return with(date, Unit.HOURS, value, Told.RIGHT_AS_TYPED);
    }

    private Readings with(String date, Unit unit, double value, Told told) {
        all.add(new Reading("R" + all.size(), "M1", at(date), unit, value, told, "P1"));
        return this;
    }

    List<Reading> all() {
        return all;
    }

    Reading last() {
        return all.get(all.size() - 1);
    }

    Meter meter() {
        return Meter.of(all).orElseThrow();
    }

    static Instant at(String date) {
        return LocalDate.parse(date).atStartOfDay(ZoneOffset.UTC).toInstant();
    }

    static double day(String date) {
        return LocalDate.parse(date).toEpochDay();
    }

    static Serviced serviced(String date, String... works) {
        return new Serviced("M1", "V" + date, at(date), at(date), Mud.DUSTY, List.of(works));
    }
}
