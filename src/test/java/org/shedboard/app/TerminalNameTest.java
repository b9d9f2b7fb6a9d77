package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class TerminalNameTest {
    @Test
    void a_name_is_read_as_it_was_written_and_no_two_are_the_same() {
        TerminalName one = TerminalName.next("board");
        assertEquals(one, TerminalName.parse(one.toString()));
        assertNotEquals(one, TerminalName.next("board"));
    }

    @Test
    void what_earlier_programs_wrote_is_a_kind_alone() {
        assertEquals(new TerminalName("board", "", ""), TerminalName.parse("board"));
        assertEquals(new TerminalName("set-up", "", ""), TerminalName.parse("set-up"));
    }

    @Test
    void another_machine_is_named_and_this_one_is_not() {
        TerminalName here = TerminalName.parse("board@office#12.1");
        assertEquals(
                Optional.of("washpad"), TerminalName.parse("board@washpad#9.1").machineElsewhere(here));
        assertEquals(Optional.empty(), TerminalName.parse("command@office#13.1").machineElsewhere(here));
        assertEquals(Optional.empty(), TerminalName.parse("board").machineElsewhere(here));
    }
}
