package org.shedboard.register;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.shedboard.shop.Fit;

/**
 * What the shop remembers of its machines from one visit to the next.
 *
 * @param carried findings to be looked at again
 * @param notices what makers ask for
 * @param taken which of that became work
 * @param loans machines of ours that were lent
 * @param merged records of machines that were merged into others
 * @param measured values read off in earlier visits and this one of the machines of the day, the oldest first
 * @param logbook what was read, done and said of machines over time
 */
public record Register(
        List<Carried> carried,
        List<Notice> notices,
        List<NoticeTaken> taken,
        List<Loan> loans,
        List<Merged> merged,
        List<Measured> measured,
        Logbook logbook) {
    public static final Register EMPTY =
            new Register(List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), Logbook.EMPTY);

    public Register {
        carried = List.copyOf(carried);
        notices = List.copyOf(notices);
        taken = List.copyOf(taken);
        loans = List.copyOf(loans);
        merged = List.copyOf(merged);
        measured = List.copyOf(measured);
    }

    /** What a machine took home. */
    public List<Carried> carriedBy(String machineId) {
        return carried.stream()
                .filter(each -> each.machineId().equals(machineId))
                .toList();
    }

    /** What was found at a point of a machine and taken home. */
    public Optional<Carried> carriedAt(String machineId, String pointId) {
        return carriedBy(machineId).stream()
                .filter(each -> each.finding().pointId().equals(pointId))
                .findFirst();
    }

    /** With all that a machine takes home now in the place of what it took home before. */
    public Register carrying(String machineId, List<Carried> now) {
        List<Carried> all = new ArrayList<>(carried);
        all.removeIf(each -> each.machineId().equals(machineId));
        all.addAll(now);
        return new Register(all, notices, taken, loans, merged, measured, logbook);
    }

    /** With another name in the place of whoever was asked about what this machine took home. */
    public Register unnamed(String machineId, String instead) {
        return carrying(
                machineId,
                carriedBy(machineId).stream().map(each -> each.unnamed(instead)).toList());
    }

    /** With these values read off. */
    public Register with(List<Measured> next) {
        return new Register(carried, notices, taken, loans, merged, next, logbook);
    }

    /** The values read off at a point of a machine, the oldest first. */
    public List<Measured> measuredAt(String machineId, String pointId) {
        return measured.stream()
                .filter(each -> each.machineId().equals(machineId) && each.isAt(pointId))
                .toList();
    }

    /** The records that were merged into this machine. */
    public List<Merged> mergedInto(String machineId) {
        return merged.stream().filter(each -> each.into().equals(machineId)).toList();
    }

    /** With this record merged; what was merged into it before goes along. */
    public Register plus(Merged latest) {
        List<Merged> next = new ArrayList<>();
        merged.forEach(each -> next.add(each.into().equals(latest.machine().id()) ? each.into(latest.into()) : each));
        next.add(latest);
        String from = latest.machine().id();
        return new Register(
                carried,
                notices,
                taken.stream().map(each -> each.moved(from, latest.into())).toList(),
                loans.stream().map(each -> each.moved(from, latest.into())).toList(),
                next,
                measured,
                logbook.moved(from, latest.into()));
    }

    /** The notices that may concern a machine and were not taken up on it, in their order. */
    public List<Notice> openNotices(
            Optional<String> machineId, String classId, String label, OptionalInt year, String number) {
        return notices.stream()
                .filter(notice -> notice.fit(classId, label, year, number) != Fit.NO)
                .filter(notice -> machineId.isEmpty() || !isTaken(notice.id(), machineId.get()))
                .toList();
    }

    /** Whether a notice is, or was, carried out on a machine. */
    public boolean isTaken(String noticeId, String machineId) {
        return taken.stream()
                .anyMatch(each -> each.stands()
                        && each.noticeId().equals(noticeId)
                        && each.machineId().equals(machineId));
    }

    public Optional<Notice> findNotice(String id) {
        return notices.stream().filter(notice -> notice.id().equals(id)).findFirst();
    }

    public List<NoticeTaken> takenOn(String visitId) {
        return taken.stream().filter(each -> each.visitId().equals(visitId)).toList();
    }

    /** What became of notices on a machine, those of bookings that were called off left out. */
    public List<NoticeTaken> takenFor(String machineId) {
        return taken.stream()
                .filter(each -> each.stands() && each.machineId().equals(machineId))
                .toList();
    }

    /** Machines of ours that are out. */
    public List<Loan> loansOut() {
        return loans.stream().filter(Loan::isOut).toList();
    }

    /** What was lent while a machine was here, and whom it was lent to itself where it is one of ours; the oldest first. */
    public List<Loan> loansAbout(History history) {
        return loans.stream()
                .filter(loan -> loan.isOf(history.machineId()) || history.has(loan.visitId()))
                .toList();
    }

    public Optional<Loan> findLoan(String id) {
        return loans.stream().filter(loan -> loan.id().equals(id)).findFirst();
    }

    public Optional<Loan> loanOutFor(String visitId) {
        return loansOut().stream()
                .filter(loan -> loan.visitId().equals(visitId))
                .findFirst();
    }

    public Register withNotices(List<Notice> next) {
        return new Register(carried, next, taken, loans, merged, measured, logbook);
    }

    public Register with(NoticeTaken next) {
        List<NoticeTaken> all = new ArrayList<>(taken);
        all.removeIf(
                each -> each.visitId().equals(next.visitId()) && each.noticeId().equals(next.noticeId()));
        all.add(next);
        return new Register(carried, notices, all, loans, merged, measured, logbook);
    }

    public Register with(Loan next) {
        List<Loan> all = new ArrayList<>(loans);
        all.removeIf(loan -> loan.id().equals(next.id()));
        all.add(next);
        return new Register(carried, notices, taken, all, merged, measured, logbook);
    }

    public Register with(Logbook next) {
        return new Register(carried, notices, taken, loans, merged, measured, next);
    }
}
