package org.shedboard.files;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.shedboard.day.Act;
import org.shedboard.day.Morning;
import org.shedboard.day.TimedAct;
import org.shedboard.estimate.Catalogue;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Shop;

/**
 * The morning of a demonstration.
 *
 * <p>The time of an act is a time of the morning's date, or of a working day before or after it: {@code "-1 15:10"}. Times inside an
 * act are counted from the act's own day in the same way.
 */
final class MorningFields {
    private final Shop shop;
    private final ActFields acts;
    private LocalDate date = LocalDate.EPOCH;
    private Instant latest = Instant.MIN;

    MorningFields(Shop shop, List<Machine> machines, Catalogue catalogue) {
        this.shop = shop;
        this.acts = new ActFields(shop, machines, catalogue);
    }

    Morning read(Fields fields) {
        int before = fields.faultCount();
        date = fields.parsed("date", "a date such as 2026-05-12", date, LocalDate::parse);
        if (fields.faultCount() == before && !shop.workdays().contains(date.getDayOfWeek())) {
            fields.fault("date", "is no workday of this shop");
        }
        LocalTime opensAt = fields.parsed("opensAt", "a time such as 09:40", LocalTime.MIN, LocalTime::parse);
        List<TimedAct> all = fields.objects("acts", this::timed).stream()
                .flatMap(List::stream)
                .toList();
        if (latest.isAfter(instant(date, opensAt))) {
            fields.fault("opensAt", "lies before the last act");
        }
        return new Morning(date, opensAt, all);
    }

    private List<TimedAct> timed(Fields fields) {
        int before = fields.faultCount();
        DayTime when = fields.parsed("at", DayTime.WANTED, DayTime.NONE, DayTime::parse);
        LocalDate day = dayOf(date, when);
        Instant at = instant(day, when.time());
        if (fields.faultCount() == before) {
            checkOrder(fields, at);
        }
        String by = fields.text("by");
        fields.known("by", by, acts.peopleIds(), "person");
        return acts.read(fields, by, wanted -> instant(dayOf(day, wanted), wanted.time())).stream()
                .map(act -> new TimedAct(at, by, handleOf(fields, act), act))
                .toList();
    }

    private void checkOrder(Fields fields, Instant at) {
        if (at.isBefore(latest)) {
            fields.fault("at", "lies before the act before it");
        } else {
            latest = at;
        }
    }

    private static Optional<String> handleOf(Fields fields, Act act) {
        return act instanceof Act.TakeIn ? Optional.of(fields.text("visit")) : Optional.empty();
    }

    private LocalDate dayOf(LocalDate from, DayTime when) {
        LocalDate day = from;
        for (int left = Math.abs(when.workdays()); left > 0; left--) {
            day = nextWorkday(day, Integer.signum(when.workdays()));
        }
        return day;
    }

    private LocalDate nextWorkday(LocalDate from, int direction) {
        LocalDate day = from.plusDays(direction);
        while (!shop.workdays().contains(day.getDayOfWeek())) {
            day = day.plusDays(direction);
        }
        return day;
    }

    private Instant instant(LocalDate day, LocalTime time) {
        return day.atTime(time).atZone(shop.zone()).toInstant();
    }
}
