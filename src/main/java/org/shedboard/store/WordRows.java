package org.shedboard.store;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.shedboard.shop.Finding;
import org.shedboard.shop.Mark;
import org.shedboard.shop.OwnersWord;
import org.shedboard.shop.Promise;
import org.shedboard.shop.Visit;

/** What people said of visits: what owners were told and what was found, in the tables promise and finding. */
final class WordRows {
    private static final Table PROMISE = Table.named("promise")
            .text("visit_id")
            .number("ordinal")
            .instant("ready_at")
            .text("said_by", "said_to")
            .instant("said_at")
            .text("why")
            .flag("owners_wish")
            .keyed("visit_id", "ordinal")
            .scoped("visit_id");
    static final Table FINDING = Table.named("finding")
            .text("visit_id", "point_id")
            .number("ordinal")
            .text("mark")
            .real("measured")
            .text("note", "found_by")
            .instant("found_at")
            .text("owner_answer", "asked_work", "asked_by", "asked_of")
            .instant("asked_at")
            .keyed("visit_id", "point_id")
            .scoped("visit_id");

    private static final String OF_VISITS = "WHERE visit_id = ANY (?) ORDER BY visit_id, ordinal";

    private final Children promises;
    private final Children findings;

    private WordRows(Children promises, Children findings) {
        this.promises = promises;
        this.findings = findings;
    }

    static WordRows of(Sql sql, List<String> visitIds) {
        return new WordRows(
                Children.of(sql.select(PROMISE, OF_VISITS, visitIds), "visit_id"),
                Children.of(sql.select(FINDING, OF_VISITS, visitIds), "visit_id"));
    }

    List<Promise> promisesOf(String visitId) {
        return promises.map(visitId, WordRows::toPromise);
    }

    List<Finding> findingsOf(String visitId) {
        return findings.map(visitId, WordRows::toFinding);
    }

    private static Promise toPromise(Cells row) {
        return new Promise(
                row.instant("ready_at"),
                row.text("said_by"),
                row.text("said_to"),
                row.instant("said_at"),
                row.text("why"),
                row.flag("owners_wish"));
    }

    /** The finding in a row of this table, or of the one of findings that machines took home. */
    static Finding toFinding(Cells row) {
        return new Finding(
                row.text("point_id"),
                row.one(Mark.class, "mark"),
                row.findReal("measured"),
                row.text("note"),
                row.text("found_by"),
                row.instant("found_at"),
                row.findInstant("asked_at").map(at -> toWord(row, at)));
    }

    private static OwnersWord toWord(Cells row, Instant at) {
        return new OwnersWord(
                row.one(OwnersWord.Answer.class, "owner_answer"),
                row.text("asked_work"),
                row.text("asked_by"),
                row.text("asked_of"),
                at);
    }

    static List<Share> shares(List<String> visitIds, Collection<Visit> visits) {
        List<Cells> promiseRows = new ArrayList<>();
        List<Cells> findingRows = new ArrayList<>();
        for (Visit visit : visits) {
            for (int i = 0; i < visit.promises().size(); i++) {
                promiseRows.add(cells(visit.id(), visit.promises().get(i), i));
            }
            for (int i = 0; i < visit.findings().size(); i++) {
                findingRows.add(cells(visit.id(), visit.findings().get(i), i));
            }
        }
        return List.of(Share.of(PROMISE, visitIds, promiseRows), Share.of(FINDING, visitIds, findingRows));
    }

    private static Cells cells(String visitId, Promise promise, int ordinal) {
        return Cells.in(PROMISE)
                .set("visit_id", visitId)
                .set("ordinal", ordinal)
                .set("ready_at", promise.at())
                .set("said_by", promise.by())
                .set("said_to", promise.to())
                .set("said_at", promise.saidAt())
                .set("why", promise.why())
                .set("owners_wish", promise.ownersWish());
    }

    private static Cells cells(String visitId, Finding finding, int ordinal) {
        Cells cells = Cells.in(FINDING).set("visit_id", visitId).set("ordinal", ordinal);
        return withFinding(cells, finding);
    }

    static Cells withFinding(Cells cells, Finding finding) {
        Optional<OwnersWord> word = finding.word();
        return cells.set("point_id", finding.pointId())
                .set("mark", finding.mark())
                .set("measured", finding.measured())
                .set("note", finding.note())
                .set("found_by", finding.by())
                .set("found_at", finding.at())
                .set("owner_answer", word.map(OwnersWord::answer))
                .set("asked_work", word.map(OwnersWord::workId))
                .set("asked_by", word.map(OwnersWord::by))
                .set("asked_of", word.map(OwnersWord::of))
                .set("asked_at", word.map(OwnersWord::at));
    }
}
