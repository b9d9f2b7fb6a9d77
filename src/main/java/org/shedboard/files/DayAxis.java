package org.shedboard.files;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.IntSummaryStatistics;
import java.util.Locale;
import java.util.stream.IntStream;
import org.shedboard.hours.PersonDay;
import org.shedboard.hours.Stretch;
import org.shedboard.tally.SpanTally;

/**
 * The hours of the clock along the bars of a sheet, one scale for all its days.
 *
 * @param from its first minute of the day, a full hour
 * @param to the minute it ends, a full hour
 */
record DayAxis(ZoneId zone, int from, int to) {
    static final double WIDTH = 158;

    private static final double HEIGHT = 3.2;
    /** Room for the half of an hour's name that hangs over at either end. */
    private static final double MARGIN = 4;

    private static final int HOUR = 60;
    private static final int NOON = 12 * HOUR;
    /** More names than this would run into each other. */
    private static final int MOST_NAMES = 15;

    /** An axis that holds all stretches; an hour where there is none. */
    static DayAxis of(SpanTally tally) {
        ZoneId zone = tally.ledger().books().shop().zone();
        IntSummaryStatistics minutes = tally.hours().days().stream()
                .flatMapToInt(day -> day.stretches().stream().flatMapToInt(stretch -> minutes(zone, day, stretch)))
                .summaryStatistics();
        if (minutes.getCount() == 0) {
            return new DayAxis(zone, NOON, NOON + HOUR);
        }
        int first = Math.floorDiv(minutes.getMin(), HOUR) * HOUR;
        return new DayAxis(zone, first, Math.max(first + HOUR, -Math.floorDiv(-minutes.getMax(), HOUR) * HOUR));
    }

    private static IntStream minutes(ZoneId zone, PersonDay day, Stretch stretch) {
        return IntStream.of(minuteOf(zone, day.date(), stretch.from()), minuteOf(zone, day.date(), stretch.to()));
    }

    /**
     * Counted from noon, so that on a day on which the clocks are changed, which happens at night, all hours of work stand under
     * their names, and no minute is lost.
     */
    private static int minuteOf(ZoneId zone, LocalDate date, Instant at) {
        Instant noon = date.atTime(12, 0).atZone(zone).toInstant();
        return NOON + (int) Duration.between(noon, at).toMinutes();
    }

    double x(LocalDate date, Instant at) {
        return x(minuteOf(zone, date, at));
    }

    private double x(int minute) {
        return MARGIN + (WIDTH - 2 * MARGIN) * (minute - from) / (to - from);
    }

    /** The names of the hours, to stand above the bars. */
    Element names() {
        Picture picture = Picture.mute(WIDTH, HEIGHT);
        int step = (to - from) / HOUR < MOST_NAMES ? HOUR : 2 * HOUR;
        for (int minute = from; minute <= to; minute += step) {
            Box box = new Box(x(minute) - MARGIN, 0, 2 * MARGIN, HEIGHT - 1);
            picture.label(box, String.format(Locale.ROOT, "%02d:00", Math.floorMod(minute / HOUR, 24)));
            picture.upright(x(minute), HEIGHT - 0.6, HEIGHT, 0.2);
        }
        return picture.element();
    }

    /** A thin line down a bar at each full hour. */
    void rule(Picture picture, double height) {
        for (int minute = from; minute <= to; minute += HOUR) {
            picture.upright(x(minute), 0, height, 0.08);
        }
    }
}
