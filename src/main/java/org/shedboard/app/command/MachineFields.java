package org.shedboard.app.command;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shedboard.day.Day;
import org.shedboard.day.Notices;
import org.shedboard.files.Fields;
import org.shedboard.register.Carried;
import org.shedboard.register.History;
import org.shedboard.register.Meter;
import org.shedboard.register.Reading;
import org.shedboard.register.Upkeep;
import org.shedboard.register.UsePerDay;
import org.shedboard.shop.Machine;

/** What is kept of a machine from visit to visit, as JSON: its meters, what is due, what it took home, makers' notices, loans. */
final class MachineFields {
    private final Day day;
    private final Instant now;
    private final Machine machine;
    private final History history;
    private final Upkeep upkeep;

    MachineFields(Day day, Instant now, Machine machine, History history) {
        this.day = day;
        this.now = now;
        this.machine = machine;
        this.history = history;
        this.upkeep = day.books().upkeep();
    }

    Tree onto(Tree tree) {
        return tree.put(
                        "meters",
                        upkeep.metersOf(machine.id()).stream().map(this::tree).toList())
                .put("nextDue", nextDue())
                .put("tookHome", tookHome())
                .put("notices", notices())
                .put("loans", loans());
    }

    private Object tree(Meter meter) {
        Reading last = meter.last();
        return new Tree()
                .put("unit", last.unit())
                .put("value", last.value())
                .put("at", Tree.time(day, last.at()))
                .put("usePerDay", upkeep.useOf(machine, last.unit()).map(MachineFields::tree))
                .put("isOwnUse", meter.use().isPresent())
                .put(
                        "readings",
                        meter.newestFirst().stream()
                                .map(reading -> tree(meter, reading))
                                .toList())
                .fields();
    }

    private static Object tree(UsePerDay use) {
        return new Tree()
                .put("likely", hundredths(use.likely()))
                .put("low", hundredths(use.low()))
                .put("high", hundredths(use.high()))
                .fields();
    }

    private static double hundredths(double value) {
        return Math.round(100 * value) / 100.0;
    }

    private Object tree(Meter meter, Reading reading) {
        return new Tree()
                .put("at", Tree.time(day, reading.at()))
                .put("value", reading.value())
                .put("newMeter", meter.isOfNewMeter(reading))
                .put("by", reading.by())
                .fields();
    }

    private Optional<Map<String, Object>> nextDue() {
        LocalDate today = LocalDate.ofInstant(now, day.zone());
        return upkeep.nextDue(machine, now)
                .map(due -> DueFields.onto(new Tree(), day, due, today).fields());
    }

    private List<Object> tookHome() {
        return day.books().register().carriedBy(machine.id()).stream()
                .map(this::tree)
                .toList();
    }

    private Object tree(Carried carried) {
        return MachineAnswer.of(carried.finding())
                .put("visit", carried.visitId())
                .put("by", carried.finding().by())
                .put("at", Tree.time(day, carried.finding().at()))
                .put("ownerSaid", carried.finding().word().map(word -> Fields.nameOf(word.answer())))
                .fields();
    }

    private List<Object> notices() {
        return Notices.on(day, machine).stream()
                .map(each -> (Object) new Tree()
                        .put("id", each.notice().id())
                        .put("title", each.notice().title())
                        .put("state", each.state())
                        .fields())
                .toList();
    }

    private List<Object> loans() {
        return day.books().register().loansAbout(history).stream()
                .map(loan -> LoanCommands.All.tree(day, loan))
                .toList();
    }
}
