package org.shedboard.screen;

import java.util.List;
import java.util.stream.Stream;
import org.shedboard.board.Key;
import org.shedboard.board.Overlay;
import org.shedboard.board.Typing;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Glyphs;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.grid.TextWidth;
import org.shedboard.words.Words;

/** A question, drawn over the screen it stands on. */
final class OverlayView {
    private static final int MARGIN = 4;
    /** The corners of a frame and a blank and a line at either side of its title. */
    private static final int TITLE_MARGIN = 6;

    private OverlayView() {}

    static void draw(Canvas canvas, Region page, Overlay overlay) {
        if (overlay instanceof Overlay.Choose choose) {
            choose(canvas, page, choose);
        } else if (overlay instanceof Overlay.TypeIn in) {
            type(canvas, page, in);
        }
    }

    private static void choose(Canvas canvas, Region page, Overlay.Choose choose) {
        int widest = Stream.concat(choose.choices().stream().map(OverlayView::line), choose.about().stream())
                .mapToInt(TextWidth::of)
                .max()
                .orElse(0);
        int width =
                Math.min(page.width() - MARGIN, Math.max(widest + MARGIN, TextWidth.of(choose.title()) + TITLE_MARGIN));
        List<String> about = choose.about().stream()
                .flatMap(line -> TextWidth.wrap(line, width - MARGIN).stream())
                .toList();
        int above = about.isEmpty() ? 0 : about.size() + 1;
        int rows = Math.max(1, Math.min(choose.choices().size(), page.height() - MARGIN - above));
        Region window = window(canvas, page, width, above + rows + 2, choose.title());
        for (int row = 0; row < about.size(); row++) {
            canvas.text(window.inside(1, 0), row, about.get(row), Style.NORMAL);
        }
        Region inside = window.below(above);
        int first = Math.max(0, choose.selected() - rows + 1);
        for (int row = 0; row < rows; row++) {
            Overlay.Choice choice = choose.choices().get(first + row);
            Region at = inside.row(row);
            boolean selected = first + row == choose.selected();
            Style style = selected ? Style.SELECTED : choice.off().isPresent() ? Style.KEY_OFF : Style.NORMAL;
            canvas.fill(at, style);
            if (selected) {
                canvas.fill(at.left(1), Glyphs.POINTER, style);
            }
            canvas.text(at.inside(1, 0), line(choice), style);
            Press.key(canvas, at, Key.of(choice.key()));
        }
    }

    private static String line(Overlay.Choice choice) {
        String label = choice.off()
                .map(why -> Words.say("ask.off", choice.label(), why))
                .orElse(choice.label());
        return choice.key() + "  " + label;
    }

    private static void type(Canvas canvas, Region page, Overlay.TypeIn in) {
        int width = Math.min(page.width() - MARGIN, Math.max(60, TextWidth.of(in.title()) + MARGIN));
        List<String> title = TextWidth.wrap(in.title(), width - MARGIN);
        Region inside = window(canvas, page, width, title.size() + 3, "");
        for (int row = 0; row < title.size(); row++) {
            canvas.text(inside.inside(1, 0), row, title.get(row), Style.STRONG);
        }
        Typing shown = in.isSecret() ? in.typing().hidden() : in.typing();
        field(canvas, inside.inside(1, 0).row(title.size()), shown, true);
    }

    private static Region window(Canvas canvas, Region page, int width, int height, String title) {
        Region window = page.centred(width, height);
        canvas.fill(window, Style.NORMAL);
        return title.isEmpty() ? canvas.frame(window, Style.FRAME) : canvas.frame(window, title, Style.FRAME);
    }

    /** A field with what is typed in it; the end of a long text is what stays in sight. */
    static void field(Canvas canvas, Region region, Typing typing, boolean active) {
        canvas.fill(region, Style.FIELD);
        int room = Math.max(1, region.width() - 1);
        String before = typing.text().substring(0, typing.cursor());
        while (TextWidth.of(before) > room) {
            before = before.substring(1);
        }
        Region rest = canvas.text(region, before, Style.FIELD);
        String after = typing.text().substring(typing.cursor());
        if (active) {
            String under = after.isEmpty() ? " " : after.substring(0, 1);
            rest = canvas.text(rest, under, Style.CURSOR);
            after = after.isEmpty() ? "" : after.substring(1);
        }
        canvas.text(rest, after, Style.FIELD);
    }
}
