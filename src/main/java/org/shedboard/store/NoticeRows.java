package org.shedboard.store;

import java.util.Collection;
import java.util.List;
import org.shedboard.register.Loan;
import org.shedboard.register.Notice;
import org.shedboard.register.NoticeTaken;
import org.shedboard.shop.NumberRange;

/** What makers ask for, what became of it, and what is lent, in the tables notice, notice_taken and loan. */
final class NoticeRows {
    private static final Table NOTICE = Table.named("notice")
            .text("id", "title", "classes", "label")
            .number("year_from", "year_to")
            .text("prefix")
            .wide("number_from", "number_to")
            .text("work_id")
            .keyed("id");
    private static final Table TAKEN = Table.named("notice_taken")
            .text("id", "visit_id", "notice_id", "machine_id", "line_id", "state")
            .keyed("id")
            .scoped("id");
    private static final Table LOAN = Table.named("loan")
            .text("id", "machine_id", "label", "visit_id", "owner_id")
            .instant("out_at", "back_at")
            .keyed("id")
            .scoped("id");

    private NoticeRows() {}

    static List<Notice> notices(Sql sql) {
        return sql.select(NOTICE, "ORDER BY id").stream()
                .map(row -> row.map(NoticeRows::toNotice))
                .toList();
    }

    private static Notice toNotice(Cells row) {
        return new Notice(
                row.text("id"),
                row.text("title"),
                Listed.split(row.text("classes")),
                row.text("label"),
                row.findNumber("year_from"),
                row.findNumber("year_to"),
                new NumberRange(row.text("prefix"), row.findWide("number_from"), row.findWide("number_to")),
                row.text("work_id"));
    }

    static Share shareOfNotices(Collection<Notice> notices) {
        return Share.whole(NOTICE, notices.stream().map(NoticeRows::cells).toList());
    }

    private static Cells cells(Notice notice) {
        return Cells.in(NOTICE)
                .set("id", notice.id())
                .set("title", notice.title())
                .set("classes", notice.classes())
                .set("label", notice.label())
                .set("year_from", notice.yearFrom())
                .set("year_to", notice.yearTo())
                .set("prefix", notice.numbers().prefix())
                .set("number_from", notice.numbers().from())
                .set("number_to", notice.numbers().to())
                .set("work_id", notice.workId());
    }

    static List<NoticeTaken> taken(Sql sql) {
        return sql.select(TAKEN, "ORDER BY id").stream()
                .map(row -> row.map(each -> new NoticeTaken(
                        each.text("notice_id"),
                        each.text("machine_id"),
                        each.text("visit_id"),
                        each.text("line_id"),
                        each.one(NoticeTaken.State.class, "state"))))
                .toList();
    }

    static Share shareOfTaken(Collection<NoticeTaken> taken) {
        return Share.of(
                TAKEN,
                taken.stream().map(NoticeRows::idOf).toList(),
                taken.stream()
                        .map(each -> Cells.in(TAKEN)
                                .set("id", idOf(each))
                                .set("visit_id", each.visitId())
                                .set("notice_id", each.noticeId())
                                .set("machine_id", each.machineId())
                                .set("line_id", each.lineId())
                                .set("state", each.state()))
                        .toList());
    }

    /** A notice is taken up once on a visit. */
    private static String idOf(NoticeTaken taken) {
        return taken.visitId() + " " + taken.noticeId();
    }

    static List<Loan> loans(Sql sql) {
        return sql.select(LOAN, "ORDER BY out_at, id").stream()
                .map(row -> row.map(NoticeRows::toLoan))
                .toList();
    }

    private static Loan toLoan(Cells row) {
        return new Loan(
                row.text("id"),
                row.findText("machine_id"),
                row.text("label"),
                row.text("visit_id"),
                row.text("owner_id"),
                row.instant("out_at"),
                row.findInstant("back_at"));
    }

    static Share shareOfLoans(Collection<Loan> loans) {
        return Share.of(
                LOAN,
                loans.stream().map(Loan::id).toList(),
                loans.stream()
                        .map(loan -> Cells.in(LOAN)
                                .set("id", loan.id())
                                .set("machine_id", loan.machineId())
                                .set("label", loan.label())
                                .set("visit_id", loan.visitId())
                                .set("owner_id", loan.ownerId())
                                .set("out_at", loan.out())
                                .set("back_at", loan.back()))
                        .toList());
    }
}
