package org.shedboard.screen;

import java.util.ArrayList;
import java.util.List;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.grid.TextWidth;
import org.shedboard.tally.LookBack;
import org.shedboard.tally.LookBackWords;
import org.shedboard.words.Words;

/** A month looked back upon: its people as a table, and below it all else there is to say, which can be moved up. */
final class MonthHours {
    private final Canvas canvas;
    private final LookBack back;
    private final int scroll;

    MonthHours(Canvas canvas, LookBack back, int scroll) {
        this.canvas = canvas;
        this.back = back;
        this.scroll = scroll;
    }

    void draw(Region body) {
        Region rest = new PeopleHours(canvas, back.tally(), 0).table(body).below(1);
        List<String> lines = new ArrayList<>();
        for (String line : all()) {
            lines.addAll(TextWidth.wrap(line, Math.max(1, rest.width())));
        }
        int first = Math.max(0, Math.min(scroll, lines.size() - 1));
        for (String line : lines.subList(first, lines.size())) {
            canvas.text(rest.row(0), line, Style.NORMAL);
            rest = rest.below(1);
        }
    }

    private List<String> all() {
        List<String> lines = new ArrayList<>();
        lines.addAll(LookBackWords.weeks(back));
        lines.addAll(LookBackWords.overruns(back));
        lines.add(LookBackWords.kinds(back));
        lines.addAll(owners());
        return lines;
    }

    private List<String> owners() {
        List<String> lines = new ArrayList<>();
        lines.add(Words.say("back.owners"));
        back.owners()
                .forEach(owner -> lines.add(Words.say(
                        "back.owner",
                        owner.owner().name(),
                        owner.visits(),
                        HoursView.hours(owner.worked()),
                        HoursView.hours(owner.chargeable()))));
        return lines;
    }
}
