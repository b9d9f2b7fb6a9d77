package org.shedboard.day;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.shedboard.register.NextDue;
import org.shedboard.shop.Mud;

class DoorNotesTest {
    private final Shed shed = Shed.open();

    @Test
    void a_known_machine_without_a_model_year_is_noted() {
        assertEquals(List.of(DoorNote.of(DoorNote.Kind.YEAR_UNKNOWN)), notes(Shed.takeIn("quad-1", Shed.CLEAN, "oil")));
    }

    @Test
    void a_new_machine_is_noted_only_once_something_is_known_of_it() {
        assertEquals(List.of(), notes(fresh("", OptionalInt.empty())));
        assertEquals(
                List.of(DoorNote.of(DoorNote.Kind.YEAR_UNKNOWN)), notes(fresh("Drobbin Hauler", OptionalInt.empty())));
        assertEquals(List.of(), notes(fresh("Drobbin Hauler", OptionalInt.of(2019))));
    }

    @Test
    void a_number_that_allows_several_years_is_noted_until_one_is_said() {
        assertEquals(
                List.of(DoorNote.of(DoorNote.Kind.YEARS_POSSIBLE, "1980, 2010")),
                notes(numbered("1M8GDM9A1AP042788", OptionalInt.empty())));
        assertEquals(List.of(), notes(numbered("1M8GDM9A1AP042788", OptionalInt.of(2010))));
    }

    @Test
    void a_year_that_the_number_does_not_allow_is_noted() {
        assertEquals(
                List.of(DoorNote.of(DoorNote.Kind.YEAR_NOT_OF_NUMBER, "1980, 2010", 2011)),
                notes(numbered("1M8GDM9A1AP042788", OptionalInt.of(2011))));
    }

    @Test
    void what_is_wrong_with_a_number_is_noted() {
        assertEquals(
                List.of(DoorNote.of(DoorNote.Kind.CHECK_DIGIT_WRONG, "2", "1")),
                notes(numbered("1M8GDM9A2AP042788", OptionalInt.of(2010))));
        assertEquals(
                List.of(DoorNote.of(DoorNote.Kind.NUMBER_LETTER, 12, "O", "0")),
                notes(numbered("1M8GDM9A1APO42788", OptionalInt.of(2010))));
        assertEquals(
                List.of(DoorNote.of(DoorNote.Kind.NUMBER_NO_YEAR, "0")),
                notes(numbered("00000000000000000", OptionalInt.of(2010))));
        assertEquals(
                List.of(DoorNote.of(DoorNote.Kind.NUMBER_LENGTH, 16)),
                notes(numbered("1M8GDM9A1AP04278", OptionalInt.of(2010))));
    }

    @Test
    void a_product_number_and_a_serial_are_not_noted() {
        assertEquals(List.of(), notes(numbered("1M8GDM9AAAP042788", OptionalInt.of(2010))));
        assertEquals(List.of(), notes(numbered("QF-00417", OptionalInt.of(2010))));
    }

    @Test
    void the_number_of_a_known_machine_is_looked_at_too() {
        shed.does(new Act.CorrectMachine("quad-1", "Trudge", OptionalInt.of(2010), "1M8GDM9A2AP042788", 300));
        assertEquals(
                List.of(DoorNote.of(DoorNote.Kind.CHECK_DIGIT_WRONG, "2", "1")),
                notes(Shed.takeIn("quad-1", Shed.CLEAN, "oil")));
    }

    private static Act.TakeIn numbered(String number, OptionalInt year) {
        Act.TakeIn.Which which = new Act.TakeIn.Which(Optional.empty(), "quad", "Drobbin", year, number);
        Act.TakeIn.Whose whose = new Act.TakeIn.Whose(Optional.empty(), "Ruddock", "");
        return Shed.takeIn(which, whose, Shed.CLEAN, OptionalInt.empty(), Optional.empty(), "oil");
    }

    @Test
    void a_booking_on_a_day_that_is_full_is_told_of_what_and_the_next_day_with_room() {
        for (int i = 0; i < 12; i++) {
            shed.does(booked("quad", "2026-05-14T08:00", Mud.CAKED));
        }
        List<DoorNote> notes = named(notes(booked("quad", "2026-05-14T08:00", Mud.CAKED)));
        // ten of 3 to drive in, 20 to wash, 2 points to uncover at 6 on one wash pad that is open from 7 to 12 and
        // 12:30 to 16
        assertEquals(
                List.of(
                        DoorNote.of(DoorNote.Kind.PLACES_FULL, "Thu 14 May", "8.9", "8.5", "wash"),
                        DoorNote.of(DoorNote.Kind.ROOM_ON, "Fri 15 May")),
                notes);
    }

    @Test
    void a_booking_on_a_day_with_room_is_told_nothing_of_it() {
        assertEquals(List.of(), named(notes(booked("quad", "2026-05-14T08:00", Mud.CAKED))));
    }

    @Test
    void a_booking_on_a_day_on_which_the_shop_is_closed_is_told_the_next_day_with_room() {
        assertEquals(
                List.of(
                        DoorNote.of(DoorNote.Kind.DAY_SHUT, "Sat 16 May"),
                        DoorNote.of(DoorNote.Kind.ROOM_ON, "Mon 18 May")),
                named(notes(booked("quad", "2026-05-16T08:00", Mud.CLEAN))));
    }

    @Test
    void a_booking_in_half_a_year_is_looked_at_too() {
        assertEquals(
                List.of(
                        DoorNote.of(DoorNote.Kind.DAY_SHUT, "Sat 14 Nov"),
                        DoorNote.of(DoorNote.Kind.ROOM_ON, "Mon 16 Nov")),
                named(notes(booked("quad", "2026-11-14T08:00", Mud.CLEAN))));
    }

    /** Less that the year is not known. */
    private static List<DoorNote> named(List<DoorNote> notes) {
        return notes.stream()
                .filter(note -> note.kind() != DoorNote.Kind.YEAR_UNKNOWN)
                .toList();
    }

    private static Act.TakeIn booked(String classId, String expected, Mud mud) {
        Act.TakeIn.Which which = new Act.TakeIn.Which(Optional.empty(), classId, "one more", OptionalInt.of(2019), "");
        Instant at = LocalDateTime.parse(expected).atZone(Shed.ZONE).toInstant();
        return Shed.takeIn(
                which,
                new Act.TakeIn.Whose(Optional.of("O-a"), "", ""),
                mud,
                OptionalInt.empty(),
                Optional.of(at),
                "oil");
    }

    @Test
    void a_service_that_is_due_is_noted_until_it_is_wanted() {
        Day day = Demonstration.day();
        RingList.Call call = RingList.of(day, Demonstration.opens(), 1).calls().get(0);
        assertEquals(List.of(call.work().name()), dueWorks(day, call, "electrics"));
        assertEquals(List.of(), dueWorks(day, call, call.work().id()));
    }

    @Test
    void a_meter_that_is_read_says_itself_whether_a_service_is_due() {
        Day day = Demonstration.day();
        RingList.Call call = RingList.of(day, Demonstration.opens(), 1).calls().stream()
                .filter(each -> each.due().dial().isPresent())
                .findFirst()
                .orElseThrow();
        NextDue.Dial dial = call.due().dial().orElseThrow();
        int due = (int) Math.ceil(dial.due());
        assertEquals(
                List.of(List.of(call.work().name(), dial.sayDue(), dial.unit().say(due))), readings(day, call, due));
        assertEquals(List.of(), readings(day, call, due - 1));
    }

    private static List<List<String>> readings(Day day, RingList.Call call, int hours) {
        Act.TakeIn plain = Shed.takeIn(call.machine().id(), Shed.CLEAN, "electrics");
        Act.TakeIn read = new Act.TakeIn(
                plain.whose(),
                plain.which(),
                plain.mud(),
                plain.depth(),
                plain.condition(),
                plain.wanted(),
                plain.tag(),
                OptionalInt.of(hours),
                plain.expected(),
                plain.note(),
                plain.said());
        return DoorNotes.of(day, read, Demonstration.opens()).stream()
                .filter(note -> note.kind().name().startsWith("SERVICE"))
                .map(DoorNote::values)
                .toList();
    }

    /** The works that the notes on this machine say are due. */
    private static List<String> dueWorks(Day day, RingList.Call call, String wanted) {
        Act.TakeIn act = Shed.takeIn(call.machine().id(), Shed.CLEAN, wanted);
        return DoorNotes.of(day, act, Demonstration.opens()).stream()
                .filter(note ->
                        note.kind() == DoorNote.Kind.SERVICE_BY_METER || note.kind() == DoorNote.Kind.SERVICE_BY_DATE)
                .map(note -> note.values().get(0))
                .toList();
    }

    private List<DoorNote> notes(Act.TakeIn wanted) {
        return DoorNotes.of(shed.day(), wanted, shed.now());
    }

    private static Act.TakeIn fresh(String label, OptionalInt year) {
        Act.TakeIn.Which which = new Act.TakeIn.Which(Optional.empty(), "quad", label, year, "");
        Act.TakeIn.Whose whose = new Act.TakeIn.Whose(Optional.empty(), "Ruddock", "");
        return Shed.takeIn(which, whose, Shed.CLEAN, OptionalInt.empty(), Optional.empty(), "oil");
    }
}
