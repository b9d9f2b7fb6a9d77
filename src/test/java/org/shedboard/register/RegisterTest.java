package org.shedboard.register;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.shedboard.shop.Machine;

class RegisterTest {
    @Test
    void what_was_read_done_and_said_of_a_merged_record_is_the_other_machines() {
        Readings readings = new Readings().hours("2026-01-01", 10);
        Rung rung = new Rung("G1", "M1", Readings.at("2026-01-03"), "P1", Rung.Said.BOOKED, Optional.empty(), "");
        Logbook logbook = new Logbook(readings.all(), List.of(Readings.serviced("2026-01-02", "oil")), List.of(rung));
        Machine other = new Machine("M1", "O1", "quad", "", OptionalInt.empty(), "", 300, OptionalInt.empty());
        Logbook moved = Register.EMPTY
                .with(logbook)
                .plus(new Merged(other, "M2", Readings.at("2026-02-01")))
                .logbook();
        assertEquals("M2", moved.readings().get(0).machineId());
        assertEquals("M2", moved.serviced().get(0).machineId());
        assertEquals("M2", moved.rung().get(0).machineId());
        assertEquals(List.of(), moved.readingsOf("M1"));
    }
}
