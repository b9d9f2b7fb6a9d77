package org.shedboard.screen;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Glyphs;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.grid.TextWidth;
import org.shedboard.hours.Activity;
import org.shedboard.hours.PersonDay;
import org.shedboard.hours.Stretch;
import org.shedboard.tally.SpanTally;
import org.shedboard.tally.TallyWords;
import org.shedboard.words.Words;

/** One person's day on the time axis: a glyph for each sort of time, and over machines their tags. */
record PersonBar(Canvas canvas, SpanTally tally, TimeAxis axis) {
    private static final int HALF_HOUR = 30;

    /** An axis that holds everybody's stretches, in steps as fine as the columns allow. */
    static TimeAxis axis(Region region, SpanTally tally) {
        List<Stretch> all = tally.hours().days().stream()
                .flatMap(day -> day.stretches().stream())
                .toList();
        int first = all.stream()
                .mapToInt(stretch -> minuteOf(tally, stretch.from()))
                .min()
                .orElse(0);
        int last = all.stream()
                .mapToInt(stretch -> minuteOf(tally, stretch.to()))
                .max()
                .orElse(0);
        int from = Math.floorDiv(first, HALF_HOUR) * HALF_HOUR;
        return TimeAxis.over(new Region(region.left(), region.top(), region.width(), 1), from, last);
    }

    static int minuteOf(SpanTally tally, Instant at) {
        Instant midnight = tally.ledger()
                .from()
                .atStartOfDay(tally.ledger().books().shop().zone())
                .toInstant();
        return (int) Duration.between(midnight, at).toMinutes();
    }

    void draw(Region row, PersonDay day) {
        for (Stretch stretch : day.stretches()) {
            canvas.fill(between(row, stretch), glyph(stretch), style(stretch));
        }
        String last = "";
        for (int i = 0; i < day.stretches().size(); i++) {
            String tag = tagOf(day.stretches().get(i));
            if (!tag.isEmpty() && !tag.equals(last)) {
                label(row, day.stretches(), i, tag);
                last = tag;
            }
        }
    }

    private Region between(Region row, Stretch stretch) {
        return axis.between(row, minuteOf(tally, stretch.from()), minuteOf(tally, stretch.to()));
    }

    /** The tag where work on another machine begins, if it fits whole with a glyph to spare. */
    private void label(Region row, List<Stretch> stretches, int first, String tag) {
        int last = first;
        while (last + 1 < stretches.size() && tag.equals(tagOf(stretches.get(last + 1)))) {
            last++;
        }
        Region bar = axis.between(
                row,
                minuteOf(tally, stretches.get(first).from()),
                minuteOf(tally, stretches.get(last).to()));
        if (TextWidth.of(tag) < bar.width()) {
            canvas.text(bar, tag, Style.STRONG);
        }
    }

    private String tagOf(Stretch stretch) {
        return TallyWords.tag(tally, stretch);
    }

    private static char glyph(Stretch stretch) {
        return switch (stretch.use()) {
            case ON_MACHINE -> Glyphs.DARK;
            case OTHER_WORK -> letterOf(stretch);
            case REST -> Glyphs.HORIZONTAL;
            case REST_TO_SAY -> '?';
            case FREE -> Glyphs.DOT;
            case UNACCOUNTED -> Glyphs.LIGHT;
        };
    }

    /** Other work is told by the letter its word begins with. */
    private static char letterOf(Stretch stretch) {
        Activity.OtherWork work = (Activity.OtherWork) stretch.on().orElseThrow();
        return Words.say("otherWork." + work.kind()).charAt(0);
    }

    private static Style style(Stretch stretch) {
        return switch (stretch.use()) {
            case ON_MACHINE -> Style.HANDS_ON;
            case OTHER_WORK -> Style.NORMAL;
            case REST, FREE -> Style.BREAK;
            case REST_TO_SAY -> Style.LATE;
            case UNACCOUNTED -> Style.QUIET;
        };
    }

    static String legend() {
        return Words.say("tally.legend", Glyphs.DARK, Glyphs.HORIZONTAL, Glyphs.DOT, Glyphs.LIGHT);
    }
}
