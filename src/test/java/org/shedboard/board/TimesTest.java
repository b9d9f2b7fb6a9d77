package org.shedboard.board;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Times as people type them, on a Tuesday at 09:40. */
class TimesTest {
    private static final ZoneId ZONE = ZoneId.of("Australia/Brisbane");
    private static final Instant NOW = at("2026-05-12T09:40");

    /** The 12-hour clock: 12:00 AM is 00:00, 12:30 AM 00:30, 12:00 PM 12:00, 12:59 PM 12:59, 1:00 PM 13:00. */
    @ParameterizedTest
    @CsvSource({
        "1430, 14:30", "14:30, 14:30", "14.30, 14:30", "9, 09:00", "0, 00:00", "00:00, 00:00", "930, 09:30",
        "0930, 09:30", "23:59, 23:59", "2:30p, 14:30", "2:30 PM, 14:30", "230pm, 14:30", "9a, 09:00", "12a, 00:00",
        "12:30am, 00:30", "12p, 12:00", "12:59 pm, 12:59", "1:00pm, 13:00", "11:59p, 23:59", "'  7 ', 07:00"
    })
    void a_time_of_day_is_read_as_people_type_it(String typed, LocalTime expected) {
        assertEquals(Optional.of(expected), Times.time(typed));
        assertEquals(
                Optional.of(NOW.atZone(ZONE)
                        .toLocalDate()
                        .atTime(expected)
                        .atZone(ZONE)
                        .toInstant()),
                Times.parse(typed, NOW, ZONE));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "24",
                "2400",
                "24:00",
                "12:60",
                "1290",
                "0a",
                "13p",
                "13:30pm",
                "-1",
                "12345",
                "1:2",
                "noon",
                "p",
                ":30",
                "2:30x",
                "9m",
                "+",
                "+x",
                "fri",
                "fri x",
                "x fri 10",
                "zz 10",
                "t 10",
                "10 fri",
                "1 4 30",
                "+99999"
            })
    void nonsense_is_no_time(String typed) {
        assertEquals(Optional.empty(), Times.parse(typed, NOW, ZONE));
    }

    @ParameterizedTest
    @CsvSource({
        "+45, 2026-05-12T10:25",
        "+0, 2026-05-12T09:40",
        "+900, 2026-05-13T00:40",
        "fri 10, 2026-05-15T10:00",
        "FRI 2:30p, 2026-05-15T14:30",
        "friday 1430, 2026-05-15T14:30",
        "mon 8, 2026-05-18T08:00",
        "wed 9, 2026-05-13T09:00",
        "tue 9, 2026-05-19T09:00",
        "th 9, 2026-05-14T09:00",
        "tom 9, 2026-05-13T09:00",
        "tomorrow 9, 2026-05-13T09:00"
    })
    void a_time_of_another_day_has_the_day_before_it(String typed, String expected) {
        assertEquals(Optional.of(at(expected)), Times.parse(typed, NOW, ZONE));
    }

    @Test
    void what_is_filled_in_for_any_minute_of_the_week_can_be_read_back() {
        FakeShell shell = FakeShell.demonstration();
        for (int minute = 0; minute < 7 * 24 * 60 - 9 * 60 - 40; minute += 7) {
            Instant at = shell.now().plusSeconds(60L * minute);
            String typed = Moments.typed(shell.day(), at);
            assertEquals(
                    Optional.of(at), Times.parse(typed, shell.now(), shell.day().zone()), typed);
        }
    }

    private static Instant at(String local) {
        return LocalDateTime.parse(local).atZone(ZONE).toInstant();
    }
}
