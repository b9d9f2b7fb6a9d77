package org.shedboard.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.shedboard.register.Merged;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Owner;
import org.shedboard.shop.Promise;

/** Putting the register right. */
class RegisterActsTest {
    private final Shed shed = Shed.open();

    @Test
    void a_machine_is_put_right_as_a_whole() {
        shed.does(new Act.CorrectMachine("quad-1", "Trudge 500", OptionalInt.of(2010), "QF 7", 320));
        Machine quad = machine("quad-1");
        assertEquals("Trudge 500", quad.label());
        assertEquals(OptionalInt.of(2010), quad.modelYear());
        assertEquals("QF 7", quad.number());
        assertEquals(320, quad.massKg());
    }

    @Test
    void an_owner_is_put_right_and_keeps_a_name() {
        shed.does(new Act.CorrectOwner("O-a", "Tarn & Son", "0000 2"));
        assertEquals(
                new Owner("O-a", "Tarn & Son", "0000 2"), shed.day().books().expectOwner("O-a"));
        shed.assertRefused("owner_missing", new Act.CorrectOwner("O-a", " ", ""));
        shed.assertRefused("owner_unknown", new Act.CorrectOwner("O-z", "Tarn", ""));
    }

    @Test
    void of_two_records_the_one_kept_gets_what_it_lacks_and_the_other_stays_to_be_read() {
        shed.does(new Act.CorrectMachine("quad-1", "Trudge", OptionalInt.empty(), "", 300));
        shed.does(new Act.CorrectMachine("quad-2", "Trudge 500", OptionalInt.of(2010), "QF 7", 310));
        Machine other = machine("quad-2");
        shed.does(new Act.MergeMachines("quad-1", "quad-2"));
        Machine kept = machine("quad-1");
        assertEquals("Trudge", kept.label());
        assertEquals(OptionalInt.of(2010), kept.modelYear());
        assertEquals("QF 7", kept.number());
        assertEquals(300, kept.massKg());
        assertEquals(Optional.empty(), shed.day().books().findMachine("quad-2"));
        assertEquals(
                List.of(new Merged(other, "quad-1", shed.now())),
                shed.day().books().register().mergedInto("quad-1"));
    }

    @Test
    void a_visit_of_the_other_record_goes_on_as_one_of_the_record_kept() {
        String visit = shed.does(Shed.takeIn("quad-2", Shed.CLEAN, "oil")).orElseThrow();
        shed.does(new Act.MergeMachines("quad-1", "quad-2"));
        assertEquals("quad-1", shed.visit(visit).machineId());
        shed.worksThrough("ada", visit);
        shed.assertRefused("machine_unknown", new Act.MergeMachines("quad-1", "quad-2"));
    }

    @Test
    void what_was_merged_before_goes_along() {
        shed.does(new Act.MergeMachines("quad-2", "quad-1"));
        shed.does(new Act.MergeMachines("quad-3", "quad-2"));
        List<String> merged = shed.day().books().register().mergedInto("quad-3").stream()
                .map(each -> each.machine().id())
                .toList();
        assertEquals(List.of("quad-1", "quad-2"), merged);
    }

    @Test
    void a_forgotten_owner_is_an_id_and_nobody_was_told() {
        String visit = shed.does(Shed.booking("quad-1", "15:00", "oil")).orElseThrow();
        shed.does(Shed.promise(visit, "16:00", "", false));
        shed.does(new Act.CallOff(visit, false));
        shed.does(new Act.ForgetOwner("O-a"));
        assertEquals(new Owner("O-a", "O-a", ""), shed.day().books().expectOwner("O-a"));
        List<Promise> promises = shed.visit(visit).promises();
        assertEquals(1, promises.size());
        assertEquals("O-a", promises.get(0).to());
        assertTrue(shed.day().books().findMachine("quad-1").isPresent());
    }

    @Test
    void what_is_said_of_a_known_machine_at_the_door_is_what_it_has_from_then_on() {
        Act.TakeIn plain = Shed.takeIn("quad-1", Shed.CLEAN, "oil");
        shed.does(with(plain, Act.TakeIn.Which.known("quad-1", OptionalInt.of(2010), "1M8GDM9AXAP042788")));
        assertEquals(OptionalInt.of(2010), machine("quad-1").modelYear());
        assertEquals("1M8GDM9AXAP042788", machine("quad-1").number());
    }

    @Test
    void what_is_not_said_at_the_door_stays() {
        shed.does(new Act.CorrectMachine("quad-1", "Trudge", OptionalInt.of(2010), "QF 7", 300));
        shed.does(Shed.takeIn("quad-1", Shed.CLEAN, "oil"));
        assertEquals(OptionalInt.of(2010), machine("quad-1").modelYear());
        assertEquals("QF 7", machine("quad-1").number());
    }

    private static Act.TakeIn with(Act.TakeIn in, Act.TakeIn.Which which) {
        return new Act.TakeIn(
                in.whose(),
                which,
                in.mud(),
                in.depth(),
                in.condition(),
                in.wanted(),
                in.tag(),
                in.meterHours(),
                in.expected(),
                in.note(),
                in.said());
    }

    private Machine machine(String id) {
        return shed.day().books().expectMachine(id);
    }
}
