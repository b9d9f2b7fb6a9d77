package org.shedboard.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class TypingTest {
    @Test
    void characters_go_in_where_the_cursor_stands() {
        Typing typing = typed(Typing.EMPTY, Key.of('a'), Key.of('c'), Key.LEFT, Key.of('b'));
        assertEquals(new Typing("abc", 2), typing);
        assertEquals(new Typing("xabc", 1), typed(typing, Key.HOME, Key.of('x')));
        assertEquals(new Typing("abcx", 4), typed(typing, Key.END, Key.of('x')));
    }

    @Test
    void backspace_takes_what_is_before_the_cursor_and_delete_what_is_behind_it() {
        assertEquals(new Typing("ac", 1), typed(new Typing("abc", 2), Key.BACKSPACE));
        assertEquals(new Typing("ab", 2), typed(new Typing("abc", 2), Key.DELETE));
        assertEquals(new Typing("abc", 0), typed(new Typing("abc", 0), Key.BACKSPACE));
        assertEquals(new Typing("abc", 3), typed(new Typing("abc", 3), Key.DELETE));
    }

    @Test
    void the_cursor_stays_within_the_text() {
        assertEquals(new Typing("a", 0), typed(Typing.of("a"), Key.LEFT, Key.LEFT));
        assertEquals(new Typing("a", 1), typed(Typing.of("a"), Key.RIGHT));
    }

    @Test
    void keys_that_do_not_type_and_control_characters_change_nothing() {
        Typing typing = Typing.of("abc");
        for (Key key :
                new Key[] {Key.ENTER, Key.TAB, Key.UP, Key.control('a'), Key.OTHER, Key.of('\t'), Key.of('\u001b')}) {
            assertEquals(typing, typing.with(key), key.toString());
        }
    }

    @Test
    void a_text_has_an_end() {
        Typing typing = Typing.EMPTY;
        for (int i = 0; i < 1000; i++) {
            typing = typing.with(Key.of('x'));
        }
        assertEquals(200, typing.text().length());
        assertTrue(typed(typing, Key.BACKSPACE).text().length() < 200);
    }

    private static Typing typed(Typing start, Key... keys) {
        Typing typing = start;
        for (Key key : keys) {
            typing = typing.with(key);
        }
        return typing;
    }
}
