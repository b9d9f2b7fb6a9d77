package org.shedboard.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OwnWordsTest {
    private static final LocalDateTime AFTERNOON = LocalDateTime.of(2026, 5, 12, 14, 5);

    @AfterEach
    void speakAsUsual() {
        Words.speak(OwnWords.none());
    }

    private static List<String> namesAtFault(Map<String, String> texts) {
        return OwnWords.faults(texts).stream().map(OwnWords.Wrong::name).toList();
    }

    @Test
    void a_text_of_the_shops_own_is_said_in_place_of_the_usual_one_and_the_others_stay() {
        String usual = Words.say("crew.people");
        Words.speak(OwnWords.of(Map.of("crew.hours", "{1} until {0}")));
        assertEquals("b until a", Words.say("crew.hours", "a", "b"));
        assertEquals(usual, Words.say("crew.people"));
    }

    @Test
    void times_and_dates_follow_the_shops_own_clock_order_and_language() {
        Words.speak(OwnWords.of(Map.of(
                "when.CLOCK", "h:mma", "when.WEEKDAY_DATE", "EEE MMM d", "when.WEEKDAY", "EEEE", "language", "fr")));
        assertEquals("mardi", When.WEEKDAY.say(AFTERNOON));
        assertEquals("2:05PM", When.CLOCK.say(AFTERNOON));
        assertEquals("mar. mai 12", When.WEEKDAY_DATE.say(LocalDate.of(2026, 5, 12)));
    }

    @Test
    void the_week_begins_on_the_shops_own_day() {
        assertEquals(DayOfWeek.MONDAY, When.firstOfWeek());
        Words.speak(OwnWords.of(Map.of("week.first", "SUNDAY")));
        assertEquals(DayOfWeek.SUNDAY, When.firstOfWeek());
    }

    @ParameterizedTest
    @CsvSource({
        "no.such.name, x",
        "when.CLOCK, no pattern",
        "when.CLOCK, '{'",
        "week.first, MONTAG",
        "language, '?'",
        "crew.hours, {0}-{2}",
    })
    void what_cannot_be_said_is_named(String name, String text) {
        assertEquals(List.of(name), namesAtFault(Map.of(name, text)));
        assertThrows(IllegalArgumentException.class, () -> OwnWords.of(Map.of(name, text)));
    }

    @Test
    void a_text_may_leave_a_value_out() {
        assertEquals(List.of(), namesAtFault(Map.of("crew.hours", "till {1}")));
    }
}
