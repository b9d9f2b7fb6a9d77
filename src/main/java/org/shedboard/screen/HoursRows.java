package org.shedboard.screen;

import java.util.List;
import java.util.Optional;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Column;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.hours.ClockEntry;
import org.shedboard.tally.HoursRow;
import org.shedboard.tally.SpanTally;
import org.shedboard.tally.Stamps;
import org.shedboard.tally.TallyWords;
import org.shedboard.words.When;
import org.shedboard.words.Words;

/** The rows that the hours of a day are counted from, with what was put right and by whom. */
final class HoursRows {
    private static final int NAME = 10;

    private final Canvas canvas;
    private final SpanTally tally;
    private final int chosen;

    HoursRows(Canvas canvas, SpanTally tally, int chosen) {
        this.canvas = canvas;
        this.tally = tally;
        this.chosen = chosen;
    }

    void draw(Region body) {
        List<HoursRow> rows = HoursRow.of(tally);
        canvas.headings(body, columns());
        Region rest = body.below(1);
        int first = Math.max(0, Math.min(chosen, rows.size() - 1) - rest.height() / 2);
        for (int i = first; i < rows.size(); i++) {
            Region below = row(rest, rows.get(i), i == chosen);
            Press.row(canvas, rest.top(rest.height() - below.height()), i, chosen);
            rest = below;
        }
    }

    private static List<Column> columns() {
        return List.of(
                Column.left(Words.say("tally.people"), NAME),
                Column.left(Words.say("rows.from"), TimeRoom.of(When.DATE_CLOCK)),
                Column.left(Words.say("rows.to"), TimeRoom.of(When.DATE_CLOCK)),
                Column.left(Words.say("rows.what"), 0));
    }

    private Region row(Region region, HoursRow row, boolean isChosen) {
        Style style = isChosen ? Style.SELECTED : row.counts() ? Style.NORMAL : Style.QUIET;
        ClockEntry entry = row.entry();
        canvas.entry(
                region.row(0),
                columns(),
                List.of(
                        tally.ledger().books().nameOf(entry.personId()),
                        Stamps.of(tally.ledger(), entry.from()),
                        entry.to().map(to -> Stamps.of(tally.ledger(), to)).orElse(Words.say("rows.goes_on")),
                        TallyWords.row(tally, row)),
                style);
        Region rest = region.below(1);
        Optional<String> note = TallyWords.correction(tally, row);
        note.ifPresent(text -> canvas.text(rest.row(0).rightOf(NAME + 1), text, Style.QUIET));
        return rest.below(note.isPresent() ? 1 : 0);
    }
}
