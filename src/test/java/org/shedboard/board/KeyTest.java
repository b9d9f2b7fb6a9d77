package org.shedboard.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class KeyTest {
    @Test
    void a_typed_letter_is_not_the_letter_with_the_control_key() {
        assertTrue(Key.of('q').is('q'));
        assertFalse(Key.of('q').is('Q'));
        assertFalse(Key.control('q').is('q'));
        assertTrue(Key.control('Q').isControl('q'));
        assertFalse(Key.of('q').isControl('q'));
    }

    @Test
    void keys_that_say_the_same_are_equal() {
        assertEquals(Key.of('7'), Key.of('7'));
        assertEquals(new Key(Key.Kind.ENTER, ' '), Key.ENTER);
        assertFalse(Key.ENTER.is(' '));
    }
}
