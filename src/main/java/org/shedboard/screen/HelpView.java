package org.shedboard.screen;

import java.util.ArrayList;
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
import org.shedboard.grid.TextWidth;
import org.shedboard.words.Words;

/** The keys of a screen, what each does, and why one is off just now. */
final class HelpView {
    /** Columns of the key column, more where a key is longer. */
    private static final int KEY = 7;

    private static final int NAME = 14;
    /** Moving up and down, and this page: who reads it knows them, and a low screen has no row for them. */
    private static final Set<Deed> TELLS_ITSELF = EnumSet.of(Deed.UP, Deed.DOWN, Deed.HELP);

    private HelpView() {}

    static void draw(Canvas canvas, Region page, Screen.Help help) {
        canvas.fill(page.row(0), Style.TITLE);
        canvas.text(page.row(0).inside(1, 0), Words.say("help.title"), Style.TITLE);
        List<Line> foot = foot(page.width() - 2);
        list(canvas, page.below(1).above(foot.size() + 1).inside(1, 0), help);
        for (int row = 0; row < foot.size(); row++) {
            Region line = page.bottom(foot.size()).row(row).inside(1, 0);
            canvas.text(line, foot.get(row).text(), foot.get(row).style());
        }
    }

    /** A line at the foot. */
    private record Line(String text, Style style) {}

    /** What stands on every page; where the bay board has no room, its glyphs need not be told. */
    private static List<Line> foot(int width) {
        List<Line> lines = new ArrayList<>();
        if (TextWidth.of(PlacesView.legend()) <= width) {
            lines.add(new Line(PlacesView.legend(), Style.QUIET));
        }
        for (String line : TextWidth.wrap(Words.say("help.caution"), Math.max(1, width))) {
            lines.add(new Line(line, Style.CAUTION));
        }
        for (String line : TextWidth.wrap(Words.say("help.tag"), Math.max(1, width))) {
            lines.add(new Line(line, Style.QUIET));
        }
        return lines;
    }

    /** Moved up no further than until the last key is seen; the last row says how many are below it. */
    private static void list(Canvas canvas, Region region, Screen.Help help) {
        List<Entry> told = help.bindings().stream()
                .filter(each -> !TELLS_ITSELF.contains(each.deed()))
                .map(each -> Entry.of(each, region.width() - keyWidth(help) - NAME))
                .toList();
        int first = Math.min(help.scroll(), firstOfLastPage(told, region.height()));
        int shown = fitting(told.subList(first, told.size()), region.height());
        boolean isMore = first + shown < told.size();
        if (isMore) {
            shown = fitting(told.subList(first, told.size()), region.height() - 1);
            int below = told.size() - first - shown;
            canvas.text(region.bottom(1), Words.say("help.more", Glyphs.DOWN, below), Style.STRONG);
        }
        Region room = region;
        for (Entry entry : told.subList(first, first + shown)) {
            entry.draw(canvas, room, keyWidth(help));
            room = room.below(entry.lines().size());
        }
    }

    /** From which key on all that follow have room. */
    private static int firstOfLastPage(List<Entry> told, int rows) {
        int first = told.size();
        int used = 0;
        while (first > 0 && used + told.get(first - 1).lines().size() <= rows) {
            first--;
            used += told.get(first).lines().size();
        }
        return first;
    }

    /** How many of them have room, from the first on. */
    private static int fitting(List<Entry> told, int rows) {
        int count = 0;
        int used = 0;
        while (count < told.size() && used + told.get(count).lines().size() <= rows) {
            used += told.get(count).lines().size();
            count++;
        }
        return count;
    }

    /** So wide that no key is cut. */
    private static int keyWidth(Screen.Help help) {
        return help.bindings().stream()
                .mapToInt(each -> TextWidth.of(each.label()) + 1)
                .reduce(KEY, Math::max);
    }

    /** A key, and the lines that say what it does, or why it does nothing just now. */
    private record Entry(Binding binding, List<String> lines) {
        static Entry of(Binding binding, int width) {
            String text = binding.off().map(off -> Words.say("help.off", off)).orElse(binding.help());
            return new Entry(binding, TextWidth.wrap(text, Math.max(1, width)));
        }

        void draw(Canvas canvas, Region room, int keyWidth) {
            Style key = binding.isOn() ? Style.KEY : Style.KEY_OFF;
            canvas.text(room.row(0).left(keyWidth), binding.label(), key);
            Style name = binding.isOn() ? Style.STRONG : Style.KEY_OFF;
            canvas.text(room.row(0).rightOf(keyWidth).left(NAME), binding.name(), name);
            Style style = binding.isOn() ? Style.NORMAL : Style.KEY_OFF;
            for (int i = 0; i < lines.size(); i++) {
                canvas.text(room.row(i).rightOf(keyWidth + NAME), lines.get(i), style);
            }
        }
    }
}
