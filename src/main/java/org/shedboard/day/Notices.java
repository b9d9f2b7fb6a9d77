package org.shedboard.day;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.shedboard.register.Notice;
import org.shedboard.register.NoticeTaken;
import org.shedboard.shop.Fit;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Visit;

/** Which makers' notices concern a machine at the door, or one that is here. */
public final class Notices {
    private Notices() {}

    /** Those that may concern the machine and were not taken up on it, if the catalogue has their work for its class. */
    public static List<Notice> openOn(Day day, Act.TakeIn.Which which) {
        Named machine = Named.of(day, which);
        return day
                .books()
                .register()
                .openNotices(which.machineId(), machine.classId(), machine.label(), machine.year(), machine.number())
                .stream()
                .filter(notice -> day.books().catalogue().findWork(notice.workId()).stream()
                        .anyMatch(work -> work.isFor(machine.classId())))
                .toList();
    }

    public static List<Notice> openOn(Day day, Visit visit) {
        return openOn(day, Act.TakeIn.Which.known(visit.machineId()));
    }

    /** Whether it concerns the machine beyond doubt: otherwise somebody must look at the number. */
    public static boolean isSure(Day day, Act.TakeIn.Which which, Notice notice) {
        Named machine = Named.of(day, which);
        return notice.fit(machine.classId(), machine.label(), machine.year(), machine.number()) == Fit.YES;
    }

    /** A notice, and how it stands with one machine. */
    public record Standing(Notice notice, State state) {}

    /** How a notice stands with a machine that it concerns. */
    public enum State {
        OPEN,
        /** Somebody must look whether the machine is one of those it is about. */
        TO_CHECK,
        /** It is to be carried out on a visit. */
        WANTED,
        DONE
    }

    /** All that concern a machine of the books, what is still to be done first. */
    public static List<Standing> on(Day day, Machine machine) {
        Act.TakeIn.Which which = Act.TakeIn.Which.known(machine.id());
        List<Standing> all = new ArrayList<>();
        openOn(day, which)
                .forEach(notice ->
                        all.add(new Standing(notice, isSure(day, which, notice) ? State.OPEN : State.TO_CHECK)));
        for (NoticeTaken taken : day.books().register().takenFor(machine.id())) {
            State state = taken.state() == NoticeTaken.State.DONE ? State.DONE : State.WANTED;
            day.books()
                    .register()
                    .findNotice(taken.noticeId())
                    .ifPresent(notice -> all.add(new Standing(notice, state)));
        }
        all.sort(Comparator.comparing(Standing::state));
        return all;
    }

    /** What is known of a machine, on the books or typed. */
    private record Named(String classId, String label, OptionalInt year, String number) {
        static Named of(Day day, Act.TakeIn.Which which) {
            Optional<Machine> known = which.machineId().flatMap(day.books()::findMachine);
            return known.map(machine -> new Named(
                            machine.classId(),
                            machine.label(),
                            which.modelYear().isPresent() ? which.modelYear() : machine.modelYear(),
                            which.number().isBlank() ? machine.number() : which.number()))
                    .orElse(new Named(which.classId(), which.label(), which.modelYear(), which.number()));
        }
    }
}
