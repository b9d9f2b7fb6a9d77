package org.shedboard.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Span;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Person;

/** Everybody in the shed works from seven to twelve and from half past twelve to four, and may be asked to stay till five. */
class CrewDayTest {
    private static final int SHIFT_MINUTES = 5 * 60 + 210;

    private final Shed shed = Shed.open();

    private CrewDay crew(String personId) {
        Outlook outlook = shed.outlook();
        return CrewDay.of(outlook, outlook.day().shop().expectPerson(personId));
    }

    private static int clock(int hour, int minute) {
        return hour * 60 + minute;
    }

    @ParameterizedTest
    @CsvSource({"07:00, 420, 720, 510", "11:44, 704, 720, 226", "12:00, 750, 960, 210", "15:40, 940, 960, 20"})
    void who_has_nothing_planned_is_free_in_all_of_the_shifts_that_are_left(
            String now, int from, int until, int minutes) {
        shed.at(now);
        CrewDay ada = crew("ada");
        assertEquals(OptionalInt.of(from), ada.freeFrom());
        assertEquals(until, ada.freeUntil(from));
        assertEquals(minutes, ada.freeMinutes());
    }

    @Test
    void after_knock_off_nobody_is_free() {
        shed.at("16:00");
        assertEquals(OptionalInt.empty(), crew("ada").freeFrom());
        assertEquals(0, crew("ada").freeMinutes());
        assertEquals(OptionalInt.of(clock(16, 0)), crew("ada").knockOff());
    }

    @Test
    void who_is_on_a_task_is_free_when_it_ends() {
        String quad = shed.quad();
        shed.does(Shed.start("ada", quad, "in-underside"));
        CrewDay ada = crew("ada");
        int end = ada.outlook().timeOf(quad, "in-underside").orElseThrow().end();
        assertTrue(end > clock(7, 0));
        assertTrue(ada.freeFrom().orElseThrow() >= end);
    }

    @Test
    void what_is_free_and_what_is_planned_add_up_to_the_shifts() {
        shed.quad();
        shed.does(Shed.takeIn("quad-2", Mud.CAKED, "oil", "brakes"));
        Outlook outlook = shed.outlook();
        int planned = 0;
        int free = 0;
        for (Person person : outlook.day().shop().people()) {
            CrewDay crew = CrewDay.of(outlook, person);
            free += crew.freeMinutes();
            planned +=
                    crew.tasks().stream().mapToInt(time -> inShifts(crew, time)).sum();
        }
        assertTrue(planned > 0);
        assertEquals(3 * SHIFT_MINUTES, free + planned);
    }

    private static int inShifts(CrewDay crew, Plan.TaskTime time) {
        return crew.shifts().stream()
                .filter(shift -> shift.to() <= clock(24, 0))
                .mapToInt(shift -> Math.max(0, Math.min(shift.to(), time.end()) - Math.max(shift.from(), time.start())))
                .sum();
    }

    @Test
    void a_task_that_runs_on_after_knock_off_goes_over_the_shift_minute_by_minute() {
        String quad = shed.quad();
        shed.at("15:58");
        shed.does(Shed.start("ada", quad, "in-underside"));
        assertEquals(0, crew("ada").minutesOver());
        shed.at("16:25");
        assertEquals(25, crew("ada").minutesOver());
        assertEquals(0, crew("bo").minutesOver());
    }

    @Test
    void a_gap_too_short_to_be_of_use_is_not_called_free() {
        shed.at("15:45");
        assertEquals(OptionalInt.of(clock(15, 45)), crew("ada").freeFrom());
        shed.at("15:46");
        assertEquals(OptionalInt.empty(), crew("ada").freeFrom());
        assertEquals(14, crew("ada").freeMinutes());
    }

    @Test
    void next_is_the_first_task_of_theirs_that_nobody_is_on() {
        String quad = shed.quad();
        shed.does(Shed.start("ada", quad, "in-underside"));
        CrewDay ada = crew("ada");
        assertTrue(ada.tasks().stream().anyMatch(time -> time.task().equals("in-underside")));
        assertTrue(ada.next().filter(time -> time.task().equals("in-underside")).isEmpty());
    }

    @Test
    void before_the_day_is_opened_all_hours_beyond_the_shift_may_be_asked_for() {
        Outlook unopened = Shed.closed().outlook();
        CrewDay ada = CrewDay.of(unopened, unopened.day().shop().expectPerson("ada"));
        assertTrue(ada.mayBeAsked(clock(16, 0)));
        assertFalse(ada.isOnShift(clock(16, 0)));
        assertFalse(ada.mayBeAsked(clock(17, 0)));
        assertFalse(ada.mayBeAsked(clock(15, 59)));
        assertEquals(new Span(clock(7, 0), clock(12, 0)), ada.shifts().get(0));
    }

    @Test
    void who_said_they_leave_at_knock_off_may_not_be_asked_for_more() {
        assertFalse(crew("ada").mayBeAsked(clock(16, 0)));
    }
}
