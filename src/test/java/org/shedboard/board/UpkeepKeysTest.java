package org.shedboard.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shedboard.day.RingList;
import org.shedboard.register.Reading;
import org.shedboard.register.Rung;

/** Ringing owners and asking about meters with the keys, on the demonstration day at 09:40. */
class UpkeepKeysTest {
    /** Its last reading is far above 12 hours. */
    private static final String MACHINE = "M36";

    private final FakeShell shell = FakeShell.demonstration();

    @Test
    void d_lists_whom_to_ring_and_one_notes_that_they_come() {
        onServices();
        RingList.Call first = ring().chosen().orElseThrow();
        int before = ring().list().calls().size();
        shell.press(Key.ENTER).types("1");
        shell.assertDone();
        assertEquals(before - 1, ring().list().calls().size());
        Rung rung = rung();
        assertEquals(first.machine().id(), rung.machineId());
        assertEquals(Rung.Said.BOOKED, rung.said());
    }

    /** The list of whom to ring, on the first service that is due. */
    private FakeShell onServices() {
        shell.types("d");
        while (ring().chosen().isEmpty()) {
            shell.press(Key.DOWN);
        }
        return shell;
    }

    @Test
    void two_asks_when_to_ring_again_and_keeps_what_cannot_be_read() {
        onServices().press(Key.ENTER).types("2soon").press(Key.ENTER);
        assertTrue(shell.board().overlay().isPresent());
        for (int i = 0; i < "soon".length(); i++) {
            shell.press(Key.BACKSPACE);
        }
        shell.types("+7").press(Key.ENTER);
        shell.assertDone();
        assertEquals(Optional.of(LocalDate.of(2026, 5, 19)), rung().again());
    }

    @Test
    void plus_looks_farther_ahead_and_minus_back_to_one_week_at_least() {
        shell.types("d");
        int one = ring().list().calls().size();
        shell.types("++");
        assertEquals(3, ring().weeks());
        assertTrue(ring().list().calls().size() > one);
        shell.types("----");
        assertEquals(1, ring().weeks());
        assertEquals(one, ring().list().calls().size());
    }

    @Test
    void the_arrows_stay_on_the_list_and_escape_leads_back() {
        shell.types("d").press(Key.UP).press(Key.DOWN).press(Key.DOWN);
        assertEquals(2, ring().row());
        shell.press(Key.ESCAPE);
        assertTrue(shell.board().screen() instanceof Screen.Places);
    }

    @Test
    void a_meter_that_goes_back_is_asked_about_and_nothing_is_saved_before_the_answer() {
        int visits = shell.day().visits().size();
        takeInWithMeter("12");
        assertTrue(shell.board().overlay().orElseThrow() instanceof Overlay.Choose);
        assertEquals(visits, shell.day().visits().size());
        shell.types("2");
        shell.assertDone();
        assertEquals(visits + 1, shell.day().visits().size());
        assertEquals(Reading.Told.NEW_METER, lastReading().told());
        assertEquals(12, lastReading().value());
    }

    @Test
    void a_misread_meter_is_typed_again_on_the_form() {
        takeInWithMeter("12");
        shell.types("1");
        TakeInForm form = ((Screen.TakeIn) shell.board().screen()).form();
        assertEquals(TakeInForm.Field.METER, form.field());
        assertEquals("", form.text(TakeInForm.Field.METER));
        assertFalse(form.workIds().isEmpty());
    }

    @Test
    void hours_and_kilometres_typed_in_one_field_are_two_readings() {
        takeInWithMeter("1150 9000 km");
        shell.types("3");
        shell.assertDone();
        List<Reading> readings = readings();
        assertEquals(Reading.Unit.KILOMETRES, readings.get(readings.size() - 1).unit());
        assertEquals(Reading.Unit.HOURS, readings.get(readings.size() - 2).unit());
    }

    private void takeInWithMeter(String typed) {
        shell.types("t")
                .types("nettlecroft pivot")
                .press(Key.ENTER)
                .types("o")
                .press(Key.ENTER)
                .types("1");
        for (int i = 0; i < 4; i++) {
            shell.press(Key.TAB);
        }
        shell.types(typed).press(Key.control('s'));
    }

    private Screen.Ring ring() {
        return (Screen.Ring) shell.board().screen();
    }

    private Rung rung() {
        List<Rung> all = shell.day().books().register().logbook().rung();
        return all.get(all.size() - 1);
    }

    private List<Reading> readings() {
        return shell.day().books().register().logbook().readingsOf(MACHINE);
    }

    private Reading lastReading() {
        return readings().get(readings().size() - 1);
    }
}
