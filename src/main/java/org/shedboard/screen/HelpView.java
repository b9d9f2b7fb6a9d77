package org.shedboard.screen;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.shedboard.board.Binding;
import org.shedboard.board.Deed;
import org.shedboard.board.Screen;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Glyphs;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.words.Words;

/** The keys of a screen, what each does, and why one is off just now. */
final class HelpView {
    private static final int KEY = 7;
    private static final int NAME = 14;
    /** Rows at the foot that stand on every page. */
    private static final int CAUTIONS = 2;

    /** Moving up and down, and this page: who reads it knows them, and a low screen has no row for them. */
    private static final Set<Deed> TELLS_ITSELF = EnumSet.of(Deed.UP, Deed.DOWN, Deed.HELP);

    private HelpView() {}

    static void draw(Canvas canvas, Region page, Screen.Help help) {
        canvas.fill(page.row(0), Style.TITLE);
        canvas.text(page.row(0).inside(1, 0), Words.say("help.title"), Style.TITLE);
        list(canvas, page.below(1).above(CAUTIONS).inside(1, 0), help);
        canvas.text(page.bottom(CAUTIONS).row(0).inside(1, 0), Words.say("help.caution"), Style.CAUTION);
        canvas.text(page.bottom(1).inside(1, 0), Words.say("help.tag"), Style.QUIET);
    }

    /** Moved up no further than until the last key is seen; the last row says how many are below it. */
    private static void list(Canvas canvas, Region region, Screen.Help help) {
        List<Binding> told = help.bindings().stream()
                .filter(each -> !TELLS_ITSELF.contains(each.deed()))
                .toList();
        int first = Math.max(0, Math.min(help.scroll(), told.size() - region.height()));
        boolean isMore = first + region.height() < told.size();
        int shown = isMore ? region.height() - 1 : region.height();
        for (int row = 0; row < shown && first + row < told.size(); row++) {
            key(canvas, region.row(row), told.get(first + row));
        }
        if (isMore) {
            canvas.text(
                    region.bottom(1), Words.say("help.more", Glyphs.DOWN, told.size() - first - shown), Style.STRONG);
        }
    }

    private static void key(Canvas canvas, Region row, Binding binding) {
        canvas.text(row.left(KEY), binding.label(), binding.isOn() ? Style.KEY : Style.KEY_OFF);
        canvas.text(row.rightOf(KEY).left(NAME), binding.name(), binding.isOn() ? Style.STRONG : Style.KEY_OFF);
        canvas.text(
                row.rightOf(KEY + NAME),
                binding.off().map(off -> Words.say("help.off", off)).orElse(binding.help()),
                binding.isOn() ? Style.NORMAL : Style.KEY_OFF);
    }
}
