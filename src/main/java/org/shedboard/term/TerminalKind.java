package org.shedboard.term;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.shedboard.look.Scheme;

/**
 * What a terminal tells of itself in the environment of the programs that run in it.
 *
 * @param environment what is looked at: TERM, COLORTERM, NO_COLOR and WT_SESSION for colours, COLORFGBG for the scheme, LC_ALL, LC_CTYPE and
 *     LANG for letters, SHEDBOARD_SCHEME for what the people of the shop want
 */
public record TerminalKind(Map<String, String> environment) {
    /** How the names of terminals with sixteen colours begin (common practice, no source). */
    private static final List<String> COLOURED =
            List.of("xterm", "linux", "screen", "tmux", "rxvt", "konsole", "putty", "cygwin", "ansi");

    /** Backgrounds that are light, as the last number of COLORFGBG: white and bright white (common practice, no source). */
    private static final Set<String> LIGHT_GROUNDS = Set.of("7", "15");

    public TerminalKind {
        environment = Map.copyOf(environment);
    }

    /** The one that the program was started in. */
    static TerminalKind ofProcess() {
        return new TerminalKind(System.getenv());
    }

    /** How many colours may be used. Any value of NO_COLOR that is not empty asks for none (no-color.org). */
    public Colours colours() {
        String term = said("TERM");
        if (!said("NO_COLOR").isEmpty()) return Colours.TWO;
        if (Set.of("truecolor", "24bit").contains(said("COLORTERM")) || term.endsWith("-direct")) return Colours.TRUE;
        if (!said("WT_SESSION").isEmpty()) return Colours.TRUE;
        if (term.contains("256color")) return Colours.FIXED;
        if (term.endsWith("-mono") || term.endsWith("-m")) return Colours.TWO;
        boolean coloured = term.contains("color") || COLOURED.stream().anyMatch(term::startsWith);
        return coloured ? Colours.SIXTEEN : Colours.TWO;
    }

    /** How it calls itself. */
    public String name() {
        return said("TERM");
    }

    /** The scheme that was asked for in the environment, else light where the terminal says that it is light, else dark. */
    public Scheme scheme() {
        String asked = said("SHEDBOARD_SCHEME").toUpperCase(Locale.ROOT);
        String ground = said("COLORFGBG");
        boolean isLight = LIGHT_GROUNDS.contains(ground.substring(ground.lastIndexOf(';') + 1));
        return Stream.of(Scheme.values())
                .filter(scheme -> scheme.name().equals(asked))
                .findFirst()
                .orElse(isLight ? Scheme.LIGHT : Scheme.DARK);
    }

    /**
     * Whether its locale writes UTF-8. The first of three variables that is not empty decides (POSIX, "Internationalization
     * Variables", from memory); where none says anything, it is the locale C, which has ASCII alone.
     */
    public boolean isUtf8() {
        String locale = Stream.of("LC_ALL", "LC_CTYPE", "LANG")
                .map(this::said)
                .filter(value -> !value.isEmpty())
                .findFirst()
                .orElse("C");
        return locale.toUpperCase(Locale.ROOT).replace("-", "").contains("UTF8");
    }

    private String said(String variable) {
        return environment.getOrDefault(variable, "");
    }
}
