package org.shedboard.term;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.googlecode.lanterna.input.InputDecoder;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.shedboard.board.Key;
import org.shedboard.board.Key.Kind;

class KeyTranslationTest {
    @Test
    void letters_digits_and_signs_are_themselves() throws IOException {
        assertEquals(
                List.of(Key.of('q'), Key.of('Q'), Key.of('7'), Key.of('?'), Key.of(' '), Key.of('é')), typed("qQ7? é"));
    }

    @ParameterizedTest(name = "ESC {0} is {1}")
    @CsvSource({
        "[A,UP",
        "[B,DOWN",
        "[C,RIGHT",
        "[D,LEFT",
        "OA,UP",
        "OB,DOWN",
        "OC,RIGHT",
        "OD,LEFT",
        "[1;5A,UP",
        "[1;2C,RIGHT",
        "[H,HOME",
        "[F,END",
        "OH,HOME",
        "OF,END",
        "[1~,HOME",
        "[4~,END",
        "[2~,INSERT",
        "[3~,DELETE",
        "[5~,PAGE_UP",
        "[6~,PAGE_DOWN",
        "[Z,BACK_TAB",
        "OM,ENTER",
        "[200~,PASTE_START",
        "[201~,PASTE_END"
    })
    void a_sequence_is_the_key_that_sends_it(String sequence, Kind kind) throws IOException {
        assertEquals(List.of(new Key(kind, ' ')), typed("\033" + sequence));
    }

    @ParameterizedTest(name = "ESC O {0} is {1}")
    @CsvSource({
        "p,0", "q,1", "r,2", "s,3", "t,4", "u,5", "v,6", "w,7", "x,8", "y,9", "k,+", "m,-", "n,.", "o,/", "j,*", "l,','"
    })
    void the_number_pad_types_what_is_printed_on_it(char code, char printed) throws IOException {
        assertEquals(List.of(Key.of(printed), Key.of('x')), typed("\033O" + code + "x"));
    }

    @Test
    void enter_tab_and_backspace_have_two_spellings() throws IOException {
        assertEquals(List.of(Key.ENTER, Key.of('a'), Key.ENTER, Key.of('b')), typed("\na\rb"));
        assertEquals(List.of(Key.TAB, Key.BACKSPACE, Key.BACKSPACE), typed("\t\u007F\b"));
    }

    @Test
    void control_letters_are_told_apart_from_letters() throws IOException {
        assertEquals(
                List.of(Key.control('c'), Key.control('z'), Key.control('l'), Key.control('s')),
                typed("\u0003\u001A\u000C\u0013"));
    }

    @ParameterizedTest(name = "ESC {0} does nothing, and nothing is left of it")
    @CsvSource({"[15~", "[24~", "[I", "[O", "[99;7~", "[?62;c", "x", "OP", "[1;2R", "[[A"})
    void unknown_keys_do_nothing(String sequence) throws IOException {
        assertEquals(List.of(Key.OTHER, Key.of('y')), typed("\033" + sequence + "y"));
    }

    @Test
    void the_escape_key_alone_is_itself() throws IOException {
        assertEquals(List.of(Key.ESCAPE), typed("\033"));
    }

    @Test
    void a_pasted_text_stands_between_its_marks() throws IOException {
        assertEquals(
                List.of(Key.PASTE_START, Key.of('a'), Key.ENTER, Key.of('b'), Key.PASTE_END),
                typed("\033[200~a\nb\033[201~"));
    }

    @Test
    void control_characters_never_count_as_typed_text() {
        assertEquals(Key.OTHER, KeyTranslation.toKey(new KeyStroke('\u009B', false, false)));
        assertEquals(Key.OTHER, KeyTranslation.toKey(new KeyStroke(' ', true, false)));
        assertEquals(Key.OTHER, KeyTranslation.toKey(new KeyStroke('x', false, true)));
    }

    /** Every key that the library knows is one of ours. */
    @Test
    void no_key_is_without_a_translation() {
        for (KeyType type : KeyType.values()) {
            if (type != KeyType.Character) KeyTranslation.toKey(new KeyStroke(type));
        }
    }

    private static List<Key> typed(String bytes) throws IOException {
        return told(bytes).stream().map(event -> ((Event.Pressed) event).key()).toList();
    }

    private static List<Event> told(String bytes) throws IOException {
        InputDecoder decoder = new InputDecoder(new StringReader(bytes));
        decoder.addProfile(new BoardKeys());
        List<Event> events = new ArrayList<>();
        for (KeyStroke stroke = decoder.getNextCharacter(true);
                stroke.getKeyType() != KeyType.EOF;
                stroke = decoder.getNextCharacter(true)) {
            events.add(KeyTranslation.toEvent(stroke));
        }
        return events;
    }

    @ParameterizedTest(name = "ESC [ < {0} points at column {1}, row {2}")
    @CsvSource({"0;1;1M,0,0", "0;80;24M,79,23", "0;223;500M,222,499", "4;7;3M,6,2", "16;7;3M,6,2"})
    void a_press_of_the_first_button_points_at_a_cell(String report, int column, int row) throws IOException {
        assertEquals(List.of(new Event.Pointed(column, row)), told("\033[<" + report));
    }

    @Test
    void the_wheel_is_the_arrows() throws IOException {
        assertEquals(List.of(Key.UP, Key.DOWN, Key.DOWN), typed("\033[<64;5;5M\033[<65;5;5M\033[<69;5;5M"));
    }

    @ParameterizedTest(name = "ESC [ < {0} is nothing")
    @ValueSource(
            strings = {
                "0;1;1m",
                "1;1;1M",
                "2;1;1M",
                "32;4;4M",
                "35;4;4M",
                "66;1;1M",
                "128;1;1M",
                "0;0;1M",
                "0;1M",
                "M",
                ";;M",
                "0;1;1;1M",
                "0;123456;1M",
                "9999;1;1M"
            })
    void other_buttons_moves_releases_and_garbage_press_no_key(String report) throws IOException {
        assertEquals(List.of(Key.OTHER, Key.of('x')), typed("\033[<" + report + "x"));
    }

    @Test
    void keys_typed_between_presses_of_the_mouse_are_not_lost() throws IOException {
        assertEquals(
                List.of(
                        new Event.Pressed(Key.of('a')),
                        new Event.Pointed(1, 2),
                        new Event.Pressed(Key.OTHER),
                        new Event.Pressed(Key.of('b'))),
                told("a\033[<0;2;3M\033[<0;2;3mb"));
    }
}
