package org.shedboard.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.shedboard.register.Reading;
import org.shedboard.register.Reading.Told;
import org.shedboard.register.Reading.Unit;
import org.shedboard.register.Rung;

/** Readings at the door and between visits. */
class MeterActsTest {
    private final Shed shed = Shed.open();

    @Test
    void a_meter_read_at_the_door_is_a_reading_and_the_newest_of_the_machine() {
        shed.does(Shed.withMeter(takeIn(), 120));
        assertEquals(List.of("120 h AS_EXPECTED"), readings());
        assertEquals(
                OptionalInt.of(120), shed.day().books().expectMachine("quad-1").meterHours());
    }

    @Test
    void a_meter_told_to_be_new_is_believed_and_said_to_be_new() {
        shed.does(read(Unit.HOURS, 900, Told.AS_EXPECTED));
        shed.days(3).does(Shed.withMeter(takeIn(), 2).told(Told.NEW_METER));
        assertEquals(List.of("900 h AS_EXPECTED", "2 h NEW_METER"), readings());
    }

    @Test
    void with_both_meters_read_only_the_doubtful_one_is_said_to_be_new() {
        shed.does(read(Unit.HOURS, 900, Told.AS_EXPECTED));
        shed.does(read(Unit.KILOMETRES, 9000, Told.RIGHT_AS_TYPED));
        Act.TakeIn both = Shed.withKilometres(Shed.withMeter(takeIn(), 2), 9010).told(Told.NEW_METER);
        shed.days(3).does(both);
        assertEquals(
                List.of("900 h AS_EXPECTED", "9000 km RIGHT_AS_TYPED", "2 h NEW_METER", "9010 km AS_EXPECTED"),
                readings());
    }

    @Test
    void a_refused_reading_leaves_nothing_behind() {
        shed.does(read(Unit.HOURS, 900, Told.AS_EXPECTED));
        shed.refuses(read(Unit.HOURS, 899, Told.AS_EXPECTED));
        assertEquals(List.of("900 h AS_EXPECTED"), readings());
    }

    @Test
    void a_refusal_says_both_values_and_the_date_of_the_earlier() {
        shed.does(read(Unit.HOURS, 900, Told.AS_EXPECTED));
        assertEquals(
                List.of("899 h", "900 h (12 May 2026)"),
                shed.refuses(read(Unit.HOURS, 899, Told.AS_EXPECTED)).values());
    }

    /** The records of a shop may be older than its readings; then nobody knows the date. */
    @Test
    void a_machine_without_readings_is_asked_about_below_the_hours_it_is_known_to_have() {
        Day day = shed.day();
        Day known =
                day.with(day.books().with(day.books().expectMachine("quad-1").withMeterHours(500)));
        Outcome refused = Acts.apply(known, read(Unit.HOURS, 400, Told.AS_EXPECTED), shed.now());
        assertEquals(new Outcome.Refused(Refusal.of("meter_backwards", "400 h", "500 h")), refused);
        assertTrue(Acts.apply(known, read(Unit.HOURS, 9_000, Told.AS_EXPECTED), shed.now()) instanceof Outcome.Done);
    }

    @Test
    void a_new_machine_brings_its_first_reading() {
        Act.TakeIn.Which which =
                new Act.TakeIn.Which(Optional.empty(), "quad", "Drobbin Hauler", OptionalInt.empty(), "");
        Act.TakeIn.Whose whose = new Act.TakeIn.Whose(Optional.empty(), "Ruddock", "");
        Act.TakeIn act = Shed.takeIn(which, whose, Shed.CLEAN, OptionalInt.empty(), Optional.empty(), "oil");
        shed.does(Shed.withMeter(act, 55));
        assertEquals(List.of("55 h AS_EXPECTED"), readings());
    }

    @Test
    void what_an_owner_said_is_noted_with_the_date_to_ring_again() {
        LocalDate again = Shed.DATE.plusDays(7);
        shed.does(new Act.NoteRung("quad-1", Rung.Said.AGAIN, Optional.of(again), " shearing ", "bo"));
        Rung rung = shed.day().books().register().logbook().rung().get(0);
        assertEquals(Optional.of(again), rung.again());
        assertEquals("shearing", rung.note());
        assertEquals("bo", rung.by());
    }

    private static Act.TakeIn takeIn() {
        return Shed.takeIn("quad-1", Shed.CLEAN, "oil");
    }

    private static Act read(Unit unit, double value, Told told) {
        return new Act.ReadMeter("quad-1", unit, value, told, "ada");
    }

    private List<String> readings() {
        return shed.day().books().register().logbook().readings().stream()
                .map(MeterActsTest::said)
                .toList();
    }

    private static String said(Reading reading) {
        return reading.shown() + " " + reading.told();
    }
}
