package org.shedboard.hours;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.shedboard.hours.ClockCheck.Fault;
import org.shedboard.hours.ClockCheck.Kind;

class ClockCheckTest {
    private static final LocalDate DAY = LocalDate.of(2026, 5, 12);
    private static final Activity TRAINING = new Activity.OtherWork(Activity.OtherWork.Kind.TRAINING);

    private static Instant at(String time) {
        return Instant.parse("2026-05-12T" + time + ":00Z");
    }

    private static ClockEntry entry(String id, String person, String from, String to) {
        return new ClockEntry(id, person, TRAINING, at(from), to.isEmpty() ? Optional.empty() : Optional.of(at(to)));
    }

    private static List<Fault> faults(Set<LocalDate> closed, ClockEntry... rows) {
        return ClockCheck.of(List.of(rows), closed, ZoneOffset.UTC);
    }

    @Test
    void entries_that_touch_and_those_of_two_people_are_sound() {
        assertEquals(
                List.of(),
                faults(
                        Set.of(DAY),
                        entry("E1", "ada", "08:00", "09:00"),
                        entry("E2", "ada", "09:00", "10:00"),
                        entry("E3", "bo", "08:30", "09:30")));
    }

    @Test
    void two_of_one_person_that_share_a_minute_are_not() {
        assertEquals(
                List.of(new Fault(Kind.OVERLAP, "E2")),
                faults(Set.of(), entry("E2", "ada", "08:59", "10:00"), entry("E1", "ada", "08:00", "09:00")));
    }

    @Test
    void one_inside_a_long_one_is_found_behind_a_short_one() {
        assertEquals(
                List.of(new Fault(Kind.OVERLAP, "E2"), new Fault(Kind.OVERLAP, "E3")),
                faults(
                        Set.of(),
                        entry("E1", "ada", "08:00", "12:00"),
                        entry("E2", "ada", "08:10", "08:20"),
                        entry("E3", "ada", "11:00", "11:30")));
    }

    @Test
    void an_open_one_is_sound_until_its_day_is_closed() {
        ClockEntry open = entry("E1", "ada", "08:00", "");
        assertEquals(List.of(), faults(Set.of(DAY.minusDays(1)), open));
        assertEquals(List.of(new Fault(Kind.OPEN_ON_CLOSED_DAY, "E1")), faults(Set.of(DAY), open));
    }

    @Test
    void being_in_the_shop_shares_its_time_with_work() {
        ClockEntry here = new ClockEntry("E1", "ada", new Activity.AtWork(), at("07:00"), Optional.of(at("16:00")));
        assertEquals(List.of(), faults(Set.of(), here, entry("E2", "ada", "08:00", "09:00")));
    }
}
