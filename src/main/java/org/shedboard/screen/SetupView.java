package org.shedboard.screen;

import org.shedboard.board.SetupForm;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Glyphs;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.words.Words;

/** One's own shop being set up. */
final class SetupView {
    private static final int LABEL = 20;
    private static final int WIDTH = 60;

    private SetupView() {}

    static void draw(Canvas canvas, Region page, SetupForm form) {
        canvas.text(page.row(1).inside(2, 0), Words.say("setup.title"), Style.TITLE);
        Region body = page.below(3).inside(2, 0).left(WIDTH + LABEL);
        int row = 0;
        for (SetupForm.Field field : SetupForm.Field.values()) {
            boolean active = field == form.field();
            Region line = body.row(row);
            Press.field(canvas, line, row, form.field().ordinal());
            if (active) {
                canvas.fill(new Region(line.left() - 1, line.top(), 1, 1), Glyphs.POINTER, Style.STRONG);
            }
            canvas.text(line.left(LABEL), Words.say("setup.field." + field), active ? Style.STRONG : Style.NORMAL);
            OverlayView.field(canvas, line.rightOf(LABEL), form.typing(field), active);
            row++;
        }
        canvas.text(body.row(row + 1), Words.say("setup.hint." + form.field()), Style.QUIET);
    }
}
