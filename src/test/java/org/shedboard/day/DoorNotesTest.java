package org.shedboard.day;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

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

    private List<DoorNote> notes(Act.TakeIn wanted) {
        return DoorNotes.of(shed.day(), wanted, shed.now());
    }

    private static Act.TakeIn fresh(String label, OptionalInt year) {
        Act.TakeIn.Which which = new Act.TakeIn.Which(Optional.empty(), "quad", label, year, "");
        Act.TakeIn.Whose whose = new Act.TakeIn.Whose(Optional.empty(), "Ruddock", "");
        return Shed.takeIn(which, whose, Shed.CLEAN, OptionalInt.empty(), Optional.empty(), "oil");
    }
}
