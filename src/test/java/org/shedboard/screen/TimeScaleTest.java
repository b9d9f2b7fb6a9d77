package org.shedboard.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Region;
import org.shedboard.grid.Size;

/** What stands over an axis, on a Tuesday at 09:40 unless another minute is said. */
class TimeScaleTest {
    private static final ZoneId BRISBANE = ZoneId.of("Australia/Brisbane");
    private static final LocalDate TUESDAY = LocalDate.of(2026, 5, 12);
    private static final int NOW = 580;
    private static final int DAY = 24 * 60;

    private static String over(int columns, int from, int to, int now) {
        return over(TUESDAY, BRISBANE, columns, from, to, now);
    }

    private static String over(LocalDate date, ZoneId zone, int columns, int from, int to, int now) {
        Size size = new Size(columns, 1);
        Canvas canvas = Canvas.of(size);
        Region row = size.region();
        new TimeScale(TimeAxis.over(row, from, to), date, zone, now).drawWithNow(canvas, row);
        return canvas.grid().lines().get(0).stripTrailing();
    }

    @Test
    void an_hour_stands_at_the_column_it_begins_in() {
        assertEquals("09 ▼ 10   11   12   13   14   15   16", over(40, 540, 1020, NOW));
    }

    @Test
    void where_there_is_plenty_of_room_parts_of_an_hour_stand_too() {
        assertEquals("09             :30  ▼         10             :30", over(60, 540, 660, NOW));
    }

    @Test
    void at_each_midnight_stands_the_date() {
        assertEquals("Tue 12  12  ▼   Wed 13  12  18  Thu 14  12  18", over(48, 0, 3 * DAY, 18 * 60));
    }

    @Test
    void a_date_that_now_would_cut_is_said_shorter() {
        assertEquals("Tue  ▼  12  18  Wed 13  12  18  Thu 14  12  18", over(48, 0, 3 * DAY, 450));
    }

    @Test
    void an_hour_that_now_would_cut_is_left_away() {
        assertEquals("09   ▼    11   12   13   14   15   16", over(40, 540, 1020, 605));
    }

    @Test
    void where_a_day_has_few_columns_its_date_goes_before_its_hours() {
        assertEquals("Tue▼    Wed 13  Thu 14", over(42, 0, 5 * DAY, NOW).substring(0, 22));
    }

    @Test
    void an_axis_that_begins_on_another_day_says_which() {
        assertEquals("← now Wed 13 May", over(40, DAY + 420, DAY + 900, NOW).substring(0, 16));
    }

    @Test
    void now_is_said_to_be_to_the_right_where_it_comes_later() {
        String shown = over(40, 0, 480, NOW);
        assertEquals("now →", shown.substring(35));
    }

    /** The clocks of New South Wales go back at 03:00 on 5 April 2026 (from memory), so that day has 25 hours. */
    @Test
    void on_a_day_with_an_hour_more_midnight_comes_an_hour_later() {
        ZoneId sydney = ZoneId.of("Australia/Sydney");
        String shown = over(LocalDate.of(2026, 4, 5), sydney, 48, 0, 2 * DAY, 0);
        assertEquals(25, shown.indexOf("Mon 6 Apr"));
    }
}
