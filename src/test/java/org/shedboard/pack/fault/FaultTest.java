package org.shedboard.pack.fault;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class FaultTest {
    @Test
    void a_fault_is_one_line_even_where_it_quotes_several() {
        assertEquals(
                "jobs[0].id: \"a·b·\" is there twice",
                new Fault("jobs[0].id", "\"a\nb\u0000\" is there twice").toString());
    }

    @Test
    void the_middle_of_a_long_quotation_is_left_out() {
        String line = new Fault("jobs[0]", "no place \"" + "x".repeat(3000) + "\" in this shop").toString();
        assertTrue(line.startsWith("jobs[0]: no place \"xxx") && line.endsWith("xxx\" in this shop"), line);
        assertTrue(line.length() < 300, line);
    }
}
