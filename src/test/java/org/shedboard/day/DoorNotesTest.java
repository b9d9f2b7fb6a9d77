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
    void a_service_that_is_due_is_noted_until_it_is_wanted() {
        Day day = Demonstration.day();
        RingList.Call call = RingList.of(day, Demonstration.opens(), 1).calls().get(0);
        assertEquals(List.of(call.work().name()), dueWorks(day, call, "electrics"));
        assertEquals(List.of(), dueWorks(day, call, call.work().id()));
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
