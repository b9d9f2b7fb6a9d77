package org.shedboard.register;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What the shop remembers of its machines from one visit to the next.
 *
 * @param carried findings to be looked at again
 * @param notices what makers ask for
 * @param taken which of that became work
 * @param loans machines of ours that were lent
 * @param merged records of machines that were merged into others
 */
public record Register(
        List<Carried> carried, List<Notice> notices, List<NoticeTaken> taken, List<Loan> loans, List<Merged> merged) {
    public static final Register EMPTY = new Register(List.of(), List.of(), List.of(), List.of(), List.of());

    public Register {
        carried = List.copyOf(carried);
        notices = List.copyOf(notices);
        taken = List.copyOf(taken);
        loans = List.copyOf(loans);
        merged = List.copyOf(merged);
    }

    /** The records that were merged into this machine. */
    public List<Merged> mergedInto(String machineId) {
        return merged.stream().filter(each -> each.into().equals(machineId)).toList();
    }

    public Register withMerged(List<Merged> next) {
        return new Register(carried, notices, taken, loans, next);
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
                next);
    }

    /** The notices that may concern a machine and were not taken up on it, in their order. */
    public List<Notice> openNotices(
            Optional<String> machineId, String classId, String label, OptionalInt year, String number) {
        return notices.stream()
                .filter(notice -> notice.fit(classId, label, year, number) != Notice.Fit.NO)
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

    /** Machines of ours that are out. */
    public List<Loan> loansOut() {
        return loans.stream().filter(Loan::isOut).toList();
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
        return new Register(carried, next, taken, loans, merged);
    }

    public Register with(NoticeTaken next) {
        List<NoticeTaken> all = new ArrayList<>(taken);
        all.removeIf(
                each -> each.visitId().equals(next.visitId()) && each.noticeId().equals(next.noticeId()));
        all.add(next);
        return new Register(carried, notices, all, loans, merged);
    }

    public Register with(Loan next) {
        List<Loan> all = new ArrayList<>(loans);
        all.removeIf(loan -> loan.id().equals(next.id()));
        all.add(next);
        return new Register(carried, notices, taken, all, merged);
    }
}
