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
    @CsvSource({"[15~", "[24~", "[I", "[O", "[99;7~", "[?62;c", "[<0;10;10M", "x", "OP", "[1;2R", "[[A"})
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
        InputDecoder decoder = new InputDecoder(new StringReader(bytes));
        decoder.addProfile(new BoardKeys());
        List<Key> keys = new ArrayList<>();
        for (KeyStroke stroke = decoder.getNextCharacter(true);
                stroke.getKeyType() != KeyType.EOF;
                stroke = decoder.getNextCharacter(true)) {
            keys.add(KeyTranslation.toKey(stroke));
        }
        return keys;
    }
}
