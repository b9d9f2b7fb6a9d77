package org.shedboard.term;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TextColor;
import java.util.EnumSet;
import java.util.Set;

/** What a terminal is told for a cell: both colours, always set together, and how the letters are drawn. */
record Paint(TextColor foreground, TextColor background, EnumSet<SGR> modifiers) {
    static Paint of(TextColor foreground, TextColor background, SGR... modifiers) {
        EnumSet<SGR> set = EnumSet.noneOf(SGR.class);
        set.addAll(Set.of(modifiers));
        return new Paint(foreground, background, set);
    }

    /** The terminal's own two colours. */
    static Paint plain(SGR... modifiers) {
        return of(TextColor.ANSI.DEFAULT, TextColor.ANSI.DEFAULT, modifiers);
    }
}
