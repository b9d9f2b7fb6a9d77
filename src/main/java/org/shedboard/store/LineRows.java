package org.shedboard.store;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.shedboard.shop.Line;
import org.shedboard.shop.Part;
import org.shedboard.shop.Payer;
import org.shedboard.shop.Visit;

/** The lines of visits and the parts they need, in the tables visit_line and line_part. */
final class LineRows {
    private static final Table LINE = Table.named("visit_line")
            .text("visit_id", "id")
            .number("ordinal")
            .text("work_id", "name", "payer")
            .number("agreed_minutes")
            .keyed("visit_id", "id")
            .scoped("visit_id");
    private static final Table PART = Table.named("line_part")
            .text("visit_id", "line_id")
            .number("ordinal")
            .text("name", "quantity", "fitted_item_id", "fitted_by")
            .instant("fitted_at")
            .keyed("visit_id", "line_id", "ordinal")
            .scoped("visit_id");

    private static final String OF_VISITS = "WHERE visit_id = ANY (?) ORDER BY visit_id, ordinal";

    private final Children lines;
    private final Children parts;

    private LineRows(Children lines, Children parts) {
        this.lines = lines;
        this.parts = parts;
    }

    static LineRows of(Sql sql, List<String> visitIds) {
        return new LineRows(
                Children.of(sql.select(LINE, OF_VISITS, visitIds), "visit_id"),
                Children.of(sql.select(PART, OF_VISITS, visitIds), "visit_id"));
    }

    List<Line> linesOf(String visitId) {
        return lines.map(visitId, this::toLine);
    }

    private Line toLine(Cells row) {
        String id = row.text("id");
        List<Part> own = parts.of(row.text("visit_id")).stream()
                .filter(part -> part.text("line_id").equals(id))
                .map(part -> part.map(LineRows::toPart))
                .toList();
        return new Line(
                id,
                row.text("work_id"),
                row.text("name"),
                row.one(Payer.class, "payer"),
                own,
                row.findNumber("agreed_minutes"));
    }

    private static Part toPart(Cells row) {
        Optional<Part.Fitted> fitted = row.findText("fitted_item_id")
                .map(item -> new Part.Fitted(item, row.text("fitted_by"), row.instant("fitted_at")));
        return new Part(row.text("name"), row.text("quantity"), fitted);
    }

    static List<Share> shares(List<String> visitIds, Collection<Visit> visits) {
        List<Cells> lineRows = new ArrayList<>();
        List<Cells> partRows = new ArrayList<>();
        for (Visit visit : visits) {
            for (int i = 0; i < visit.lines().size(); i++) {
                Line line = visit.lines().get(i);
                lineRows.add(cells(visit.id(), line, i));
                addParts(partRows, visit.id(), line);
            }
        }
        return List.of(Share.of(LINE, visitIds, lineRows), Share.of(PART, visitIds, partRows));
    }

    private static Cells cells(String visitId, Line line, int ordinal) {
        return Cells.in(LINE)
                .set("visit_id", visitId)
                .set("id", line.id())
                .set("ordinal", ordinal)
                .set("work_id", line.workId())
                .set("name", line.name())
                .set("payer", line.payer())
                .set("agreed_minutes", line.agreedMinutes());
    }

    private static void addParts(List<Cells> rows, String visitId, Line line) {
        for (int i = 0; i < line.parts().size(); i++) {
            Part part = line.parts().get(i);
            rows.add(Cells.in(PART)
                    .set("visit_id", visitId)
                    .set("line_id", line.id())
                    .set("ordinal", i)
                    .set("name", part.name())
                    .set("quantity", part.quantity())
                    .set("fitted_item_id", part.fitted().map(Part.Fitted::itemId))
                    .set("fitted_by", part.fitted().map(Part.Fitted::by))
                    .set("fitted_at", part.fitted().map(Part.Fitted::at)));
        }
    }
}
