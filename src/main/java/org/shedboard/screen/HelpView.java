package org.shedboard.screen;

import java.util.EnumSet;
import java.util.Set;
import org.shedboard.board.Binding;
import org.shedboard.board.Deed;
import org.shedboard.board.Screen;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.words.Words;

/** The keys of a screen, what each does, and why one is off just now. */
final class HelpView {
    private static final int KEY = 7;
    private static final int NAME = 14;

    /** Moving up and down, and this page: who reads it knows them, and a low screen has no row for them. */
    private static final Set<Deed> TELLS_ITSELF = EnumSet.of(Deed.UP, Deed.DOWN, Deed.HELP);

    private HelpView() {}

    static void draw(Canvas canvas, Region page, Screen.Help help) {
        canvas.fill(page.row(0), Style.TITLE);
        canvas.text(page.row(0).inside(1, 0), Words.say("help.title"), Style.TITLE);
        Region rest = page.below(1).inside(1, 0);
        for (Binding binding : help.bindings().stream()
                .filter(each -> !TELLS_ITSELF.contains(each.deed()))
                .toList()) {
            Region row = rest.row(0);
            canvas.text(row.left(KEY), binding.label(), binding.isOn() ? Style.KEY : Style.KEY_OFF);
            canvas.text(row.rightOf(KEY).left(NAME), binding.name(), binding.isOn() ? Style.STRONG : Style.KEY_OFF);
            canvas.text(
                    row.rightOf(KEY + NAME),
                    binding.off().map(off -> Words.say("help.off", off)).orElse(binding.help()),
                    binding.isOn() ? Style.NORMAL : Style.KEY_OFF);
            rest = rest.below(1);
        }
        canvas.text(page.bottom(2).row(0).inside(1, 0), Words.say("help.caution"), Style.CAUTION);
        canvas.text(page.bottom(1).inside(1, 0), Words.say("help.tag"), Style.QUIET);
    }
}
