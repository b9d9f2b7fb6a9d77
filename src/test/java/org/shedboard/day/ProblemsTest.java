package org.shedboard.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shedboard.pack.Problem;
import org.shedboard.pack.check.PlanCheck;
import org.shedboard.pack.fault.ProblemCheck;
import org.shedboard.pack.search.Packing;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Task;

/** A day written as a packing problem. */
class ProblemsTest {
    private final Shed shed = Shed.open();

    /** Ten minutes of draining are unattended, and everybody goes on at once. */
    @Test
    void a_machine_that_is_worked_on_while_it_should_still_drain_is_not_in_its_own_way() {
        shed.does(Shed.takeIn("quad-1", Mud.CLEAN, "oil"));
        String visit = shed.day().visits().get(0).id();
        int checked = 0;
        for (Task task : shed.visit(visit).tasks()) {
            shed.does(Shed.start("ada", visit, task.id()));
            assertSound();
            shed.does(Shed.finish("ada", visit, task.id()));
            assertSound();
            checked++;
        }
        assertTrue(checked > 5);
    }

    private void assertSound() {
        Problem problem = Problems.of(shed.day(), shed.now());
        assertEquals(List.of(), ProblemCheck.faults(problem));
        assertEquals("", PlanCheck.of(problem, Planning.settled(problem)).toString());
        assertEquals("", PlanCheck.of(problem, Packing.of(problem, 1).plan()).toString());
    }
}
