package org.shedboard.term;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shedboard.look.Scheme;

/** What is made of a terminal's environment. */
class TerminalKindTest {
    /** Source of the rule of NO_COLOR: no-color.org; any value that is not empty turns colour off. */
    @ParameterizedTest(name = "TERM={0} COLORTERM={1} NO_COLOR={2}: {3}")
    @CsvSource({
        "xterm-256color,'','',FIXED",
        "xterm-256color,'',0,TWO",
        "xterm-256color,truecolor,1,TWO",
        "xterm,'','',SIXTEEN",
        "xterm,truecolor,'',TRUE",
        "xterm,24bit,'',TRUE",
        "linux,'','',SIXTEEN",
        "tmux-256color,'','',FIXED",
        "screen,'','',SIXTEEN",
        "xterm-direct,'','',TRUE",
        "xterm-mono,'','',TWO",
        "xterm-16color,'','',SIXTEEN",
        "vt100,'','',TWO",
        "vt220,'','',TWO",
        "'','','',TWO"
    })
    void colours_are_used_where_they_are_and_are_wanted(String term, String told, String noColour, Colours colours) {
        Map<String, String> environment = Map.of("TERM", term, "COLORTERM", told, "NO_COLOR", noColour);
        assertEquals(colours, new TerminalKind(environment).colours());
    }

    @Test
    void a_windows_terminal_has_any_colour() {
        Map<String, String> environment = Map.of("TERM", "xterm-256color", "WT_SESSION", "0e1b");
        assertEquals(Colours.TRUE, new TerminalKind(environment).colours());
    }

    @Test
    void an_environment_that_says_nothing_has_two_colours_a_dark_scheme_and_plain_letters() {
        TerminalKind kind = new TerminalKind(Map.of());
        assertEquals(Colours.TWO, kind.colours());
        assertEquals(Scheme.DARK, kind.scheme());
        assertEquals(false, kind.isUtf8());
    }

    @ParameterizedTest(name = "SHEDBOARD_SCHEME={0} COLORFGBG={1}: {2}")
    @CsvSource({
        "'','',DARK",
        "light,'',LIGHT",
        "LIGHT,'',LIGHT",
        "dark,'0;15',DARK",
        "'','0;15',LIGHT",
        "'','0;default;15',LIGHT",
        "'','15;0',DARK",
        "'','0;7',LIGHT",
        "pink,'',DARK",
        "'','15',LIGHT",
        "'','15;default',DARK"
    })
    void the_scheme_is_as_asked_for_or_as_the_terminal_says(String asked, String ground, Scheme scheme) {
        Map<String, String> environment = Map.of("SHEDBOARD_SCHEME", asked, "COLORFGBG", ground);
        assertEquals(scheme, new TerminalKind(environment).scheme());
    }

    @ParameterizedTest(name = "LC_ALL={0} LC_CTYPE={1} LANG={2}: UTF-8 {3}")
    @CsvSource({
        "'','',en_AU.UTF-8,true", "'','',en_AU.utf8,true", "C,'',en_AU.UTF-8,false", "C.UTF-8,C,C,true",
        "'',C,en_AU.UTF-8,false", "'',UTF-8,'',true", "'','',en_AU,false", "'','',de_DE.ISO-8859-15@euro,false",
        "'','',C,false", "POSIX,'','',false"
    })
    void the_first_variable_that_says_something_decides_on_letters(
            String all, String letters, String language, boolean isUtf8) {
        Map<String, String> environment = Map.of("LC_ALL", all, "LC_CTYPE", letters, "LANG", language);
        assertEquals(isUtf8, new TerminalKind(environment).isUtf8());
    }
}
