package org.shedboard.day;

import java.util.ArrayList;
import java.util.List;
import org.shedboard.estimate.Catalogue;
import org.shedboard.estimate.Work;
import org.shedboard.forecast.Renewal;
import org.shedboard.pack.fault.Fault;
import org.shedboard.shop.Line;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Visit;

/** Whether a shop can go on with another catalogue. */
public final class CatalogueFit {
    private CatalogueFit() {}

    /** What the catalogue lacks: the class of a machine on the books, or work that is wanted on a machine here or expected. */
    public static List<Fault> faults(Day day, Catalogue next) {
        List<Fault> faults = new ArrayList<>();
        for (Machine machine : day.books().machines()) {
            if (next.findClass(machine.classId()).isEmpty()) {
                faults.add(new Fault(
                        "classes", "lacks \"%s\", the class of %s".formatted(machine.classId(), machine.label())));
            }
        }
        day.visits().stream().filter(visit -> visit.state().isOpen()).forEach(visit -> {
            visit.lines().stream()
                    .filter(line -> !isOffered(day, visit, line, next))
                    .map(line -> new Fault(
                            "works", "lacks \"%s\", wanted on %s".formatted(line.workId(), Names.of(day, visit))))
                    .forEach(faults::add);
        });
        return faults;
    }

    /** The open visits whose work has other minutes by the next catalogue, with these where it has not begun. */
    public static List<Visit> renewed(Day day, Catalogue next) {
        Catalogue before = day.books().catalogue();
        return day.visits().stream()
                .filter(visit -> visit.state().isOpen())
                .map(visit -> visit.withStays(
                        Renewal.of(before, next, day.machineOf(visit).classId(), visit)))
                .filter(visit -> !day.expectVisit(visit.id()).equals(visit))
                .toList();
    }

    private static boolean isOffered(Day day, Visit visit, Line line, Catalogue next) {
        return next.findWork(line.workId())
                .filter((Work work) -> work.isFor(day.machineOf(visit).classId()))
                .isPresent();
    }
}
